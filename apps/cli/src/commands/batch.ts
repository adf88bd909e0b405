import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { Day } from '@twelvemonth/basis';
import type { Command } from 'commander';
import type { BatchOptions, BatchRow, BatchSummary } from '../batch/batch-records.ts';
import { CliFailure } from '../run/cli-failure.ts';
import { checkFolder, makeFolder, writeWholeFile } from '../run/files.ts';
import { dayOption, wholeOption } from '../run/option-values.ts';
import { withPlanSize } from '../run/plan-size-options.ts';
import type { Terminal } from '../run/terminal.ts';
import {
  batchHelp,
  batchTable,
  endedText,
  noGardens,
  stoppingText,
  underWayText,
} from '../words/batch-words.ts';
import { optionHelp } from '../words/help-words.ts';

interface BatchFlags {
  readonly out: string;
  readonly workers?: number;
  readonly from?: Day;
  readonly weeks: number;
  readonly members: number;
  readonly seed: number;
  readonly effort: number;
  readonly time?: number;
  readonly json?: true;
}

/** First Ctrl-C: finish with what there is. Second: leave at once; nothing half-written is left in the plans' places. */
function listenForStop(stop: () => void, terminal: Terminal): () => void {
  let asked = false;
  const onInterrupt = (): void => {
    if (asked) process.exit(130);
    asked = true;
    stop();
    terminal.say(stoppingText);
  };
  process.on('SIGINT', onInterrupt);
  return () => process.off('SIGINT', onInterrupt);
}

const countOf = (rows: readonly BatchRow[], state: BatchRow['state']): number =>
  rows.filter((row) => row.state === state).length;

async function runBatch(folder: string, flags: BatchFlags, terminal: Terminal): Promise<number> {
  const began = performance.now();
  const seconds = (): number => Math.round((performance.now() - began) / 100) / 10;
  const { gardenFilesIn, summaryName, sweepParts } = await import('../batch/batch-folder.ts');
  const gardens = gardenFilesIn(folder);
  if (gardens.length === 0) throw new CliFailure(noGardens(folder));
  checkFolder(flags.out);
  makeFolder(flags.out);
  sweepParts(flags.out);
  const workers = Math.min(gardens.length, flags.workers ?? availableParallelism());
  const options: BatchOptions = {
    weeks: flags.weeks,
    memberCount: flags.members,
    effort: flags.effort,
    timeLimitSeconds: flags.time ?? null,
    seed: flags.seed,
    fromDay: flags.from ?? null,
  };
  const { startBatch } = await import('../batch/run-batch.ts');
  const ended = (row: BatchRow, count: number): void => {
    terminal.say(endedText(row, count, gardens.length));
    if (terminal.sayIsTty) terminal.status(underWayText(count, gardens.length, seconds()));
  };
  const batch = startBatch({ gardens, outFolder: flags.out, options, workers, ended });
  const endListening = listenForStop(batch.stop, terminal);
  const rows = await batch.rows.finally(endListening);
  sweepParts(flags.out);
  terminal.status(null);
  const summary: BatchSummary = {
    schemaVersion: 1,
    options,
    workers,
    seconds: seconds(),
    planned: countOf(rows, 'planned'),
    skipped: countOf(rows, 'skipped'),
    failed: countOf(rows, 'failed'),
    stopped: countOf(rows, 'stopped'),
    gardens: rows,
  };
  writeWholeFile(join(flags.out, summaryName), `${JSON.stringify(summary, null, 2)}\n`);
  terminal.out(flags.json === true ? `${JSON.stringify(summary, null, 2)}\n` : batchTable(summary));
  return summary.failed + summary.stopped > 0 ? 1 : 0;
}

export function addBatch(program: Command, terminal: Terminal, exit: (code: number) => void): void {
  const command = program
    .command('batch')
    .summary(batchHelp.about)
    .description(batchHelp.about)
    .argument('<dir>', batchHelp.dir)
    .requiredOption('--out <dir>', batchHelp.out)
    .option('--workers <n>', batchHelp.workers, wholeOption(1, 64))
    .option('--from <date>', optionHelp.from, dayOption);
  withPlanSize(command)
    .option('--json', optionHelp.json)
    .addHelpText('after', batchHelp.example)
    .action(async (folder: string, flags: BatchFlags) => exit(await runBatch(folder, flags, terminal)));
}
