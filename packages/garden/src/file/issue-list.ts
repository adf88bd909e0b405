import type { Issue } from '@twelvemonth/basis';
import { type FilePath, gardenIssue, gardenIssueCodes, type Report } from './issue-codes.ts';

/** Not more issues than people can read; errors stay first. Finding a line costs a walk, so the rest is only counted. */
export const mostIssues = 200;

export interface IssueList {
  readonly report: Report;
  readonly failed: () => boolean;
  readonly issues: () => readonly Issue[];
}

export function issueList(where: (path: FilePath) => string): IssueList {
  const errors: Issue[] = [];
  const others: Issue[] = [];
  const inOrder: Issue[] = [];
  let [errorsCount, othersCount] = [0, 0];
  const report: Report = (code, path, detail) => {
    const isError = gardenIssueCodes[code].severity === 'error';
    if (isError) errorsCount += 1;
    else othersCount += 1;
    const like = isError ? errors : others;
    if (like.length >= mostIssues) return;
    const issue = gardenIssue(code, where(path), detail);
    like.push(issue);
    inOrder.push(issue);
  };
  const issues = (): readonly Issue[] => {
    if (errorsCount + othersCount <= mostIssues) return inOrder;
    const kept = [...errors, ...others].slice(0, mostIssues);
    const count = errorsCount + othersCount - mostIssues;
    const code = errorsCount > 0 ? 'errors-left-out' : 'warnings-left-out';
    return [...kept, gardenIssue(code, 'file', { count })];
  };
  return { report, failed: () => errorsCount > 0, issues };
}
