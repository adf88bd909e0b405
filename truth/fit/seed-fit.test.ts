import { expect, test } from 'vitest';
import { kindById } from '../../packages/growing/src/index.ts';
import { patternSearch } from './pattern-search.ts';
import { fitSeed } from './seed-fit.ts';

test('the search finds the bottom of a bent valley', () => {
  const { at, cost } = patternSearch(
    ([x, y]) => (1 - x!) ** 2 + 20 * (y! - x! * x!) ** 2,
    [-1, 2],
    [0.5, 0.5],
  );
  expect(cost).toBeLessThan(0.01);
  expect(Math.abs(at[0]! - 1)).toBeLessThan(0.1);
});

test.each([
  ['carrot', 'carrot-maincrop'],
  ['lettuce', 'lettuce-leaf'],
  ['tomato', 'tomato-cordon'],
  ['onion', 'spring-onion'],
])('the tables hold what the fit finds: %s', (crop, id) => {
  const kind = kindById(id)!;
  expect(fitSeed(crop).values).toEqual({
    'emergence-base-c': kind.emergenceBaseC,
    'emergence-sum-c-days': kind.emergenceSumCDays,
    'emergence-optimum-c': kind.emergenceOptimumC,
    'emergence-plateau-c': kind.emergencePlateauC,
    'emergence-ceiling-c': kind.emergenceCeilingC,
    'germination-cold-none-c': kind.germinationColdNoneC,
    'germination-cold-full-c': kind.germinationColdFullC,
    'germination-warm-full-c': kind.germinationWarmFullC,
    'germination-warm-none-c': kind.germinationWarmNoneC,
  });
});
