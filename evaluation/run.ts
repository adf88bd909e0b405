// npm run evaluate: plans the cases, measures them beside the rivals, prints or writes the table (docs/evaluation.md).
import { setMaxListeners } from 'node:events';
import { commitDate, readResults, readSmall, writeRun, writeSmall } from './files.ts';
import { changedSince, madeWithNow } from './hashes.ts';
import { helpText, readWishes, type Wishes, WishRefused } from './options.ts';
import { type RunReport, runCases } from './run-cases.ts';
import { compareSmall } from './small-set.ts';
import { summaryOf } from './summary.ts';
import { ratioLines, summaryLines } from './tables.ts';

const say = (line: string): void => console.error(line);

async function runWished(wishes: Wishes): Promise<RunReport> {
  const stop = new AbortController();
  setMaxListeners(wishes.names.length + 5, stop.signal);
  const onInterrupt = (): void => {
    say('Stopping: what is finished is given.');
    stop.abort();
  };
  process.once('SIGINT', onInterrupt);
  let finished = 0;
  const steps = new Map<string, string>();
  const show = (): void => {
    if (!process.stderr.isTTY) return;
    const text = [...steps].map(([name, step]) => `${name}: ${step}`).join('   ');
    process.stderr.write(`\r\x1b[K${text.slice(0, (process.stderr.columns ?? 80) - 1)}`);
  };
  try {
    return await runCases(
      wishes.names,
      wishes.settings,
      wishes.atOnce,
      {
        step: (name, { step, bestGapShare }) => {
          steps.set(name, bestGapShare === null ? step : `${step}, gap ${(bestGapShare * 100).toFixed(1)} %`);
          show();
        },
        finished: (name, seconds) => {
          steps.delete(name);
          finished++;
          if (process.stderr.isTTY) process.stderr.write('\r\x1b[K');
          say(`${finished} of ${wishes.names.length}: ${name}, planned in ${seconds.toFixed(1)} s`);
        },
      },
      stop.signal,
    );
  } finally {
    process.off('SIGINT', onInterrupt);
  }
}

/** True when the small set is as good as agreed. */
function holdSmall(report: RunReport, wishes: Wishes): boolean {
  const small = readSmall();
  const ran = Object.entries(small?.cases ?? {}).filter(([name]) => wishes.names.includes(name));
  const { failures, notes } = compareSmall(report.cases, Object.fromEntries(ran));
  for (const note of notes) say(note);
  for (const failure of failures) say(`WORSE  ${failure}`);
  say(`small evaluation: ${report.cases.length} cases, ${failures.length} findings`);
  return failures.length === 0;
}

/** True when the table is about the cases that are there. */
function tellStale(): boolean {
  const results = readResults();
  if (results === null) {
    say('docs/evaluation.md has no table yet: npm run evaluate -- --update');
    return true;
  }
  const changed = changedSince(results.madeWith, madeWithNow());
  if (changed.length > 0)
    say(
      `docs/evaluation.md of ${results.date} was made with other ${changed.join(', ')}: npm run evaluate -- --update`,
    );
  return !changed.includes('cases');
}

function print(report: RunReport, wishes: Wishes): void {
  if (wishes.json) {
    console.log(
      JSON.stringify({ cases: report.cases, failed: report.failed, stopped: report.stopped }, null, 2),
    );
    return;
  }
  for (const line of ratioLines(report.cases)) console.log(line);
  console.log();
  for (const line of summaryLines(summaryOf(report.cases))) console.log(line);
}

async function evaluate(wishes: Wishes): Promise<boolean> {
  const report = await runWished(wishes);
  for (const { name, reason } of report.failed) say(`FAILED ${name}: ${reason}`);
  print(report, wishes);
  const sound =
    !report.stopped &&
    report.failed.length === 0 &&
    report.cases.every((each) => each.violations.length === 0);
  if (!wishes.small) {
    if (wishes.update && report.stopped) say('Nothing was written: not every case was finished.');
    else if (wishes.update) {
      const { settings, date } = wishes;
      const { cases, failed } = report;
      writeRun({ date: date ?? commitDate(), settings, madeWith: madeWithNow(), cases, failed });
    }
    return sound;
  }
  if (wishes.update) {
    if (sound) writeSmall(report.cases);
    else say('Nothing was written: not every case could be planned.');
    return sound;
  }
  const held = holdSmall(report, wishes);
  return tellStale() && held && sound;
}

try {
  const wishes = readWishes(process.argv.slice(2));
  if (wishes === null) console.log(helpText);
  else process.exitCode = (await evaluate(wishes)) ? 0 : 1;
} catch (error) {
  if (!(error instanceof WishRefused)) throw error;
  say(error.message);
  process.exitCode = 1;
}
