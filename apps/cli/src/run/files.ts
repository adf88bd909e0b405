import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
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
    throw new CliFailure(`${path}: the ${what} cannot be read: ${systemProblem(error)}. Check the path.`);
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

export function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    throw new CliFailure(
      `${path}: the folder cannot be made: ${systemProblem(error)}. Choose another with --out.`,
    );
  }
}

/** Time of the last change, or null when there is no such file. */
export function changedAtMs(path: string): number | null {
  try {
    const stat = statSync(path);
    return stat.isFile() ? stat.mtimeMs : null;
  } catch {
    return null;
  }
}
