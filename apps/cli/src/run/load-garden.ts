import { dirname, resolve } from 'node:path';
import type { Day, Issue } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather } from '@twelvemonth/growing';
import { issueText } from '../words/issue-words.ts';
import { CliFailure, systemProblem } from './cli-failure.ts';
import { readTextFile } from './files.ts';
import type { Terminal } from './terminal.ts';
import { todayByTheClock } from './today.ts';
import { workflowFunction } from './workflow-functions.ts';

export interface LocatedIssue {
  readonly file: string;
  readonly issue: Issue;
}

export interface GardenRead {
  readonly garden: Garden | null;
  readonly daily: DailyWeather | null;
  readonly fromDay: Day;
  readonly findings: readonly LocatedIssue[];
}

const isError = ({ issue }: LocatedIssue): boolean => issue.severity === 'error';

/** The file's own findings know their line, the others only the path. */
const withoutLine = (where: string): string => where.replace(/^line \d+: /, '');

async function readDaily(
  garden: Garden,
  file: string,
  findings: LocatedIssue[],
): Promise<DailyWeather | null> {
  const { climate } = garden.site;
  if (climate.kind !== 'daily-csv') return null;
  const path = resolve(dirname(file), climate.path);
  let text: string;
  try {
    text = readTextFile(path, 'weather file');
  } catch (error) {
    const problem = error instanceof CliFailure ? (error.problem ?? error.message) : systemProblem(error);
    findings.push({
      file,
      issue: {
        code: 'weather-file-missing',
        severity: 'error',
        where: 'site.climate',
        detail: { path: climate.path, problem },
      },
    });
    return null;
  }
  const { readDailyCsv } = await import('@twelvemonth/growing');
  const { record, issues } = readDailyCsv(text, garden.site);
  findings.push(...issues.map((issue) => ({ file: path, issue })));
  return record;
}

/** Everything that can be found in a garden file and the weather file that it names. */
export async function readGarden(file: string, from: Day | null): Promise<GardenRead> {
  const today = todayByTheClock();
  const { parseGarden } = await import('@twelvemonth/garden');
  const { garden, issues } = parseGarden(readTextFile(file, 'garden file'), { today: from ?? today, from });
  const findings: LocatedIssue[] = issues.map((issue) => ({ file, issue }));
  const fromDay = from ?? garden?.planFrom ?? today;
  if (garden === null) return { garden, daily: null, fromDay, findings };
  const daily = await readDaily(garden, file, findings);
  const issuesOfGarden = await workflowFunction('issuesOfGarden');
  for (const issue of issuesOfGarden(garden, fromDay)) {
    const known = findings.some(
      (f) => f.issue.code === issue.code && withoutLine(f.issue.where) === withoutLine(issue.where),
    );
    if (!known) findings.push({ file, issue });
  }
  return { garden, daily, fromDay, findings };
}

export interface SoundGarden {
  readonly garden: Garden;
  readonly daily: DailyWeather | null;
  readonly fromDay: Day;
  /** Said again, as a count, when the run is over. */
  readonly warningsCount: number;
}

/** The garden, or a failure after every finding has been said. Warnings let the run go on. */
export async function soundGarden(file: string, from: Day | null, terminal: Terminal): Promise<SoundGarden> {
  const { garden, daily, fromDay, findings } = await readGarden(file, from);
  for (const { file: where, issue } of findings)
    if (issue.severity !== 'note') terminal.say(issueText(issue, where));
  const errors = findings.filter(isError).length;
  if (errors > 0 || garden === null)
    throw new CliFailure(`${file}: ${errors} ${errors === 1 ? 'error' : 'errors'}: nothing was done.`);
  const warningsCount = findings.filter(({ issue }) => issue.severity === 'warning').length;
  return { garden, daily, fromDay, warningsCount };
}

export function sayWarnings(count: number, file: string, terminal: Terminal): void {
  if (count > 0)
    terminal.say(
      `${count} ${count === 1 ? 'warning' : 'warnings'} about ${file} (see: twelvemonth check ${file}).`,
    );
}
