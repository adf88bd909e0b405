import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { CliFailure, systemProblem } from './cli-failure.ts';

const mostBytes = 60_000_000;

export function readTextFile(path: string, what: string): string {
  try {
    const { size } = statSync(path);
    if (size > mostBytes)
      throw new CliFailure(
        `${path}: ${what} of ${Math.round(size / 1e6)} MB is more than can be one. Give the file itself, not an export or a log.`,
      );
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof CliFailure) throw error;
    const problem = systemProblem(error);
    throw new CliFailure(`${path}: the ${what} cannot be read: ${problem}. Check the path.`, 1, problem);
  }
}

/** Written beside and then renamed: nobody ever sees half a file. */
export function writeWholeFile(path: string, text: string): void {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    const file = openSync(beside, 'w');
    try {
      const bytes = Buffer.from(text, 'utf8');
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new CliFailure(
      `${path}: cannot be written: ${systemProblem(error)}. Choose another place with --out.`,
    );
  }
}

const cannotBeMade = (path: string, problem: string): CliFailure =>
  new CliFailure(`${path}: the folder cannot be made: ${problem}. Choose another with --out.`);

const notAFolder = 'it is a file, not a folder';

/** Step by step: mkdir with `recursive` never comes back from places like /proc. */
export function makeFolder(path: string): void {
  try {
    const missing: string[] = [];
    for (let at = resolve(path); !existsSync(at); at = dirname(at)) missing.unshift(at);
    for (const folder of missing) mkdirSync(folder);
    if (!statSync(path).isDirectory()) throw cannotBeMade(path, notAFolder);
  } catch (error) {
    if (error instanceof CliFailure) throw error;
    throw cannotBeMade(path, systemProblem(error));
  }
}

/** Asked before the long work begins, so that nobody waits for a plan that cannot be written. Makes nothing. */
export function checkFolder(path: string): void {
  let at = resolve(path);
  while (!existsSync(at)) at = dirname(at);
  if (!statSync(at).isDirectory()) throw cannotBeMade(path, notAFolder);
  try {
    accessSync(at, constants.W_OK);
  } catch (error) {
    throw cannotBeMade(path, systemProblem(error));
  }
}

export function checkFileCanBeWritten(path: string): void {
  const problem =
    existsSync(path) && statSync(path).isDirectory()
      ? 'it is a folder, not a file'
      : existsSync(dirname(resolve(path)))
        ? ''
        : 'its folder is not there';
  if (problem !== '')
    throw new CliFailure(`${path}: cannot be written: ${problem}. Choose another with --out.`);
}

/** False too when there is nothing of that name. */
export const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** Time of the last change, or null when there is no such file. */
export function changedAtMs(path: string): number | null {
  try {
    const stat = statSync(path);
    return stat.isFile() ? stat.mtimeMs : null;
  } catch {
    return null;
  }
}
