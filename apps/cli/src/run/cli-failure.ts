/** A sentence for people and an exit code: 1 errors in the file or the run, 2 wrong use. Caught in main only. */
export class CliFailure extends Error {
  readonly exitCode: 1 | 2;
  /** The bare cause, for a sentence that says the rest itself. */
  readonly problem: string | null;
  constructor(sentence: string, exitCode: 1 | 2 = 1, problem: string | null = null) {
    super(sentence);
    this.problem = problem;
    this.exitCode = exitCode;
  }
}

/** Names of system errors in words. */
export function systemProblem(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const known: Readonly<Record<string, string>> = {
    ENOENT: 'it is not there',
    EISDIR: 'it is a folder, not a file',
    ENOTDIR: 'part of the path is a file, not a folder',
    EACCES: 'this user is not allowed to',
    EPERM: 'this user is not allowed to',
    EROFS: 'the disk cannot be written',
    ENOSPC: 'the disk is full',
    EEXIST: 'something else of that name is there',
    ENAMETOOLONG: 'the name is too long',
    EMFILE: 'too many files are open',
  };
  return known[code] ?? (code === '' ? 'for an unknown reason' : code);
}
