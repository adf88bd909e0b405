import { basename } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { compareFigures } from './compare-figures.ts';
import { goldenFiles, readCase } from './golden-case.ts';
import { figuresOf, planInput } from './plan-figures.ts';

describe.each(goldenFiles())('golden case %s', (file) => {
  const { input, expected } = readCase(file);

  let report: Awaited<ReturnType<typeof planInput>>;
  beforeAll(async () => {
    report = await planInput(input);
  });

  it(`${basename(file)} gives what was agreed to`, () => {
    expect(compareFigures(expected, figuresOf(report))).toEqual([]);
  });

  it(`${basename(file)} gives the same plan twice, to the last bit`, async () => {
    expect(JSON.stringify(await planInput(input))).toBe(JSON.stringify(report));
  });

  it(`${basename(file)} has tolerances tight enough to tell another seed apart`, async () => {
    const other = figuresOf(await planInput({ ...input, seed: input.seed + 1 }));
    expect(compareFigures(expected, other)).not.toEqual([]);
  });
});

it('there is a golden case', () => {
  expect(goldenFiles().length).toBeGreaterThan(0);
});

describe('comparing figures', () => {
  const expected = { hours: { value: 10, tolerance: 0.5 }, violations: { value: 0, tolerance: 0 } };

  it('lets a figure move as far as its tolerance and no further', () => {
    expect(compareFigures(expected, { hours: 10.5, violations: 0 })).toEqual([]);
    expect(compareFigures(expected, { hours: 9.4, violations: 0 })).toEqual([
      'hours: 9.4, expected 10 ± 0.5',
    ]);
    expect(compareFigures(expected, { hours: 10, violations: 1 })).toHaveLength(1);
  });

  it('names figures that are missing, and figures that nobody agreed to', () => {
    expect(compareFigures(expected, { hours: 10, weeks: 52 })).toEqual([
      'violations: missing, expected 0',
      'weeks: 52, not expected',
    ]);
  });

  it('takes a figure that is not a number for wrong', () => {
    expect(compareFigures(expected, { hours: Number.NaN, violations: 0 })).toHaveLength(1);
  });
});
