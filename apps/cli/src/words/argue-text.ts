import { plainSpaces, wrapText } from '@twelvemonth/workflows';
import { capital } from './number-words.ts';

const width = 80;
const leastWordWidth = 12;
const mostWordWidth = 20;

/** A title, and paragraphs under their words, hung so that the words stand in a column of their own. */
export function partsText(title: string, parts: readonly (readonly [word: string, text: string])[]): string {
  const longest = Math.max(...parts.map(([word]) => word.length + 2));
  const wordWidth = Math.min(mostWordWidth, Math.max(leastWordWidth, longest));
  const lines = parts.flatMap(([word, text]) => {
    const words = wrapText(capital(word), wordWidth - 2);
    const texts = wrapText(text, width - wordWidth);
    return Array.from({ length: Math.max(words.length, texts.length) }, (_, i) =>
      `${(words[i] ?? '').padEnd(wordWidth)}${texts[i] ?? ''}`.trimEnd(),
    );
  });
  return plainSpaces(`${wrapText(title, width).join('\n')}\n\n${lines.join('\n')}\n`);
}
