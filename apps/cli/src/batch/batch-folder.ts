import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { tablesVersion } from '@twelvemonth/workflows';
import { CliFailure, systemProblem } from '../run/cli-failure.ts';
import { changedAtMs, readTextFile, writeWholeFile } from '../run/files.ts';
import { batchStampSchema } from '../schema/batch-schema.ts';
import { noSuchFolder } from '../words/batch-words.ts';
import type { BatchOptions, BatchRow, BatchStamp } from './batch-records.ts';

export const stampName = 'batch.json';
export const summaryName = 'summary.json';
/** What this program itself writes is no garden. */
const ownFiles = new Set(['plan.json', stampName, summaryName]);

export interface GardenFile {
  readonly name: string;
  readonly path: string;
  /** Folder for its plan: the file's name without its ending, whole where two would share it. */
  readonly folderName: string;
}

const stemOf = (name: string): string => name.replace(/\.jsonc?$/, '');

/** Garden files of a folder, by name. Folders within it are not looked into. */
export function gardenFilesIn(folder: string): GardenFile[] {
  let names: string[];
  try {
    names = readdirSync(folder).filter((name) => /\.jsonc?$/.test(name) && !name.startsWith('.'));
  } catch (error) {
    throw new CliFailure(noSuchFolder(folder, systemProblem(error)));
  }
  const gardens = names.filter((name) => !ownFiles.has(name) && statSync(join(folder, name)).isFile()).sort();
  const stems = gardens.map(stemOf);
  return gardens.map((name, i) => ({
    name,
    path: join(folder, name),
    folderName: stems.filter((stem) => stem === stems[i]).length > 1 ? name : stems[i]!,
  }));
}

/** The result that is there already, if it is whole, of the same options and tables, and newer than what it was made from. */
export function finishedRow(outFolder: string, garden: GardenFile, options: BatchOptions): BatchRow | null {
  const stampPath = join(outFolder, garden.folderName, stampName);
  const stampedAt = changedAtMs(stampPath);
  if (stampedAt === null || changedAtMs(join(outFolder, garden.folderName, 'plan.json')) === null)
    return null;
  let stamp: BatchStamp;
  try {
    stamp = batchStampSchema.parse(JSON.parse(readTextFile(stampPath, 'record of a batch')));
  } catch {
    return null;
  }
  if (stamp.tables !== tablesVersion || JSON.stringify(stamp.options) !== JSON.stringify(options))
    return null;
  if (stamp.row.garden !== garden.name) return null;
  for (const input of [garden.path, ...stamp.inputs]) {
    const changedAt = changedAtMs(input);
    if (changedAt === null || changedAt >= stampedAt) return null;
  }
  return { ...stamp.row, state: 'skipped' };
}

const partName = (folderName: string): string => `.${folderName}.${process.pid}.part`;

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

/**
 * What a run that was cut off left behind: half a folder goes, and an old one that had just been put aside comes back.
 * What another run is writing is left alone.
 */
export function sweepParts(outFolder: string): void {
  if (!existsSync(outFolder)) return;
  for (const name of readdirSync(outFolder)) {
    const found = /^\.(.+)\.(\d+)\.(part|old)$/.exec(name);
    if (found === null) continue;
    const [, folderName = '', pid = '', kind] = found;
    if (Number(pid) !== process.pid && isRunning(Number(pid))) continue;
    const place = join(outFolder, folderName);
    if (kind === 'old' && !existsSync(place)) renameSync(join(outFolder, name), place);
    else rmSync(join(outFolder, name), { recursive: true, force: true });
  }
}

/** A whole folder or none: filled under another name, then put in the place of the old one. */
export function writeWholeFolder(
  outFolder: string,
  folderName: string,
  fill: (folder: string) => void,
): void {
  const [part, place] = [join(outFolder, partName(folderName)), join(outFolder, folderName)];
  const old = part.replace(/part$/, 'old');
  try {
    rmSync(part, { recursive: true, force: true });
    mkdirSync(part, { recursive: true });
    fill(part);
    if (existsSync(place)) renameSync(place, old);
    renameSync(part, place);
  } catch (error) {
    if (existsSync(old) && !existsSync(place)) renameSync(old, place);
    if (error instanceof CliFailure) throw error;
    throw new CliFailure(
      `${place}: cannot be written: ${systemProblem(error)}. Choose another place with --out.`,
    );
  } finally {
    rmSync(part, { recursive: true, force: true });
    if (existsSync(place)) rmSync(old, { recursive: true, force: true });
  }
}

export const writeStamp = (folder: string, stamp: BatchStamp): void =>
  writeWholeFile(join(folder, stampName), `${JSON.stringify(stamp, null, 2)}\n`);
