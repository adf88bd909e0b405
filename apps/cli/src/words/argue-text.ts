import { plainSpaces, wrapText } from '@twelvemonth/workflows';
import { capital } from './number-words.ts';

const width = 80;
const wordWidth = 12;

/** A title, and paragraphs under their words, hung so that the words stand in a column of their own. */
export function partsText(title: string, parts: readonly (readonly [word: string, text: string])[]): string {
  const lines = parts.flatMap(([word, text]) => {
    const [first = '', ...rest] = wrapText(text, width - wordWidth);
    return [
      `${capital(word).padEnd(wordWidth)}${first}`,
      ...rest.map((line) => ' '.repeat(wordWidth) + line),
    ];
  });
  return plainSpaces(`${wrapText(title, width).join('\n')}\n\n${lines.join('\n')}\n`);
}
