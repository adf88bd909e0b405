/** A golden case on disk: which garden, how it is planned, and what came out when it was last agreed to. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ExpectedFigures } from './compare-figures.ts';
import type { GoldenInput } from './plan-figures.ts';

export interface GoldenCase {
  readonly input: GoldenInput;
  readonly expected: ExpectedFigures;
}

export const goldenFiles = (): string[] =>
  readdirSync(import.meta.dirname)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(import.meta.dirname, name));

export const readCase = (file: string): GoldenCase => JSON.parse(readFileSync(file, 'utf8'));
