import { readFileSync } from 'node:fs';
import type { Terminal } from '../run/terminal.ts';
import { planSchema } from '../schema/plan-schema.ts';

/** A terminal that remembers, for tests. */
export function recordingTerminal(): Terminal & {
  readonly shown: () => string;
  readonly said: () => string;
} {
  const shown: string[] = [];
  const said: string[] = [];
  return {
    sayIsTty: false,
    out: (text) => shown.push(text),
    say: (line) => said.push(`${line}\n`),
    status: () => {},
    shown: () => shown.join(''),
    said: () => said.join(''),
  };
}

const repository = new URL('../../../../', import.meta.url);
export const inRepository = (path: string): string => new URL(path, repository).pathname;

export const inventedPlanPath = inRepository(
  'packages/workflows/src/sheets/fixture/generated/invented-plan.json',
);
export const inventedPlan = () => planSchema.parse(JSON.parse(readFileSync(inventedPlanPath, 'utf8')));
