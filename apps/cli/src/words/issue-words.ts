import type { Issue } from '@twelvemonth/basis';
import { gardenIssueSentences, type IssueSentence, type SentenceOf } from './garden-issue-sentences.ts';
import { plainCode } from './garden-words.ts';
import { dailyIssueSentences, workflowIssueSentences } from './other-issue-sentences.ts';
import { ownKindSentences } from './own-kind-sentences.ts';

const sentences: Readonly<Record<string, SentenceOf>> = {
  ...workflowIssueSentences,
  ...dailyIssueSentences,
  ...gardenIssueSentences,
  ...ownKindSentences,
};

export const hasSentence = (code: string): boolean => Object.hasOwn(sentences, code);

/** A code that nobody has put into words yet still says what it knows. */
function plainSentence(issue: Issue): IssueSentence {
  const values = Object.entries(issue.detail).map(([name, value]) => `${plainCode(name)} ${value}`);
  const shown = values.length === 0 ? '' : ` (${values.join(', ')})`;
  return {
    wrong: `Something is not right here: ${plainCode(issue.code)}${shown}.`,
    mend: 'Look at this line again.',
  };
}

const severityWords = { error: 'error', warning: 'warning', note: 'note' } as const;

/** One finding as people read it: where, what is wrong, how to mend it. */
export function issueText(issue: Issue, file: string): string {
  const { wrong, mend } = hasSentence(issue.code)
    ? sentences[issue.code]!(issue.detail)
    : plainSentence(issue);
  const where = issue.where === '' || issue.where === 'file' ? file : `${file}, ${issue.where}`;
  return `${severityWords[issue.severity]}: ${where}: ${wrong} ${mend}`;
}

export function issueCountText(issues: readonly Issue[]): string {
  const parts = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = issues.filter((issue) => issue.severity === severity).length;
    return count === 0 ? [] : [`${count} ${severity}${count === 1 ? '' : 's'}`];
  });
  return parts.length === 0 ? 'nothing to mend' : parts.join(', ');
}
