/** One garden of a batch, from its file to its folder, in a thread of the pool. Never throws: a failure is a row too. */
import { dirname, resolve } from 'node:path';
import { tablesVersion } from '@twelvemonth/workflows';
import { CliFailure } from '../run/cli-failure.ts';
import { soundGarden } from '../run/load-garden.ts';
import { planDefaults } from '../run/plan-defaults.ts';
import { writePlanFiles } from '../run/plan-files.ts';
import { failureOf, planWithSolver } from '../run/plan-with-solver.ts';
import type { Terminal } from '../run/terminal.ts';
import { workflowFunction } from '../run/workflow-functions.ts';
import { cannotText } from '../words/plan-words.ts';
import { writeStamp, writeWholeFolder } from './batch-folder.ts';
import { type BatchRow, type BatchTask, unfinished } from './batch-records.ts';

/** Findings of a garden file, kept for the summary instead of being said. */
function listeningTerminal(): Terminal & { readonly said: string[] } {
  const said: string[] = [];
  return { said, sayIsTty: false, out: () => {}, say: (line) => said.push(line), status: () => {} };
}

async function plannedRow(task: BatchTask, garden: string, seconds: () => number): Promise<BatchRow> {
  const { gardenPath, folderName, outFolder, options } = task;
  const terminal = listeningTerminal();
  const { fromDay: wanted, ...wishes } = options;
  let sound: Awaited<ReturnType<typeof soundGarden>>;
  try {
    sound = await soundGarden(gardenPath, wanted, terminal);
  } catch (error) {
    if (error instanceof CliFailure && terminal.said.length > 0) {
      const first = terminal.said.find((line) => line.startsWith('error')) ?? error.message;
      return unfinished(garden, 'failed', first, seconds());
    }
    throw error;
  }
  const { fromDay } = sound;
  const outcome = await planWithSolver(
    sound.garden,
    sound.daily,
    { ...planDefaults, ...wishes, fromDay },
    { progress: () => {}, stopRequested: () => false },
  );
  if (outcome.kind === 'cannot')
    return unfinished(garden, 'failed', cannotText(outcome.reason, outcome.detail), seconds());
  const report = outcome.value;
  const seedListOf = await workflowFunction('seedListOf');
  const row: BatchRow = {
    garden,
    state: 'planned',
    sentence: null,
    folder: folderName,
    household: report.garden.household,
    warnings: sound.warningsCount,
    leanWeeks: report.proof.leanWeeksCheck,
    servingsMissing: report.proof.servingsMissingCheck,
    gapShare: report.proof.gapShare,
    seconds: seconds(),
  };
  const { climate } = sound.garden.site;
  const weather = climate.kind === 'daily-csv' ? [resolve(dirname(gardenPath), climate.path)] : [];
  writeWholeFolder(outFolder, folderName, (folder) => {
    writePlanFiles(folder, report, seedListOf(report, sound.garden), fromDay);
    const inputs = [resolve(gardenPath), ...weather];
    writeStamp(folder, { schemaVersion: 1, options, tables: tablesVersion, inputs, row });
  });
  return row;
}

export default async function planOne(task: BatchTask): Promise<BatchRow> {
  const began = performance.now();
  const seconds = (): number => Math.round((performance.now() - began) / 100) / 10;
  const garden = task.gardenPath.split(/[\\/]/).at(-1)!;
  try {
    return await plannedRow(task, garden, seconds);
  } catch (error) {
    const { sentence } = failureOf(error, error instanceof CliFailure);
    return unfinished(garden, 'failed', sentence, seconds());
  }
}
