import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { issuesOfGarden } from '../packages/workflows/src/index.ts';
import { casesFolder, evaluationCases, readCaseGarden } from './cases.ts';

describe('the invented gardens', () => {
  it('are at least twelve, and every file is listed', () => {
    const files = readdirSync(casesFolder).map((file) => file.replace(/\.jsonc$/, ''));
    expect(evaluationCases.map((each) => each.name).sort()).toEqual(files.sort());
    expect(files.length).toBeGreaterThanOrEqual(12);
  });

  it('cover the climates, appetites and cover that the evaluation promises; two are short of ground', () => {
    const kindsOf = <T>(read: (each: (typeof evaluationCases)[number]) => T): number =>
      new Set(evaluationCases.map(read)).size;
    expect(kindsOf((each) => each.climate)).toBe(4);
    expect(kindsOf((each) => each.appetite)).toBe(3);
    expect(kindsOf((each) => each.cover)).toBe(2);
    expect(evaluationCases.filter((each) => each.shortOfGround)).toHaveLength(2);
    const small = evaluationCases.filter((each) => each.small);
    expect(small.length).toBeGreaterThanOrEqual(2);
  });

  it.each(evaluationCases.map((each) => each.name))(
    '%s is invented, and there is nothing to mend',
    (name) => {
      const { garden, fromDay, issues } = readCaseGarden(name);
      expect(garden.invented).toBe(true);
      expect([...issues, ...issuesOfGarden(garden, fromDay)]).toEqual([]);
    },
  );
});
