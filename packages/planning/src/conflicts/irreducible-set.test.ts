import fc from 'fast-check';
import { expect, test } from 'vitest';
import { irreducibleSet } from './irreducible-set.ts';

/** Demands clash when all of some hidden set are there. */
const meets =
  (clashes: readonly (readonly number[])[]) =>
  (demands: readonly number[]): Promise<boolean> =>
    Promise.resolve(!clashes.some((clash) => clash.every((d) => demands.includes(d))));

test('what is left clashes, and without any one of it no longer', async () => {
  const demand = fc.integer({ min: 0, max: 7 });
  const clash = fc.uniqueArray(demand, { minLength: 1, maxLength: 4 });
  await fc.assert(
    fc.asyncProperty(fc.array(clash, { minLength: 1, maxLength: 4 }), async (clashes) => {
      const canBeMet = meets(clashes);
      const set = await irreducibleSet([0, 1, 2, 3, 4, 5, 6, 7], canBeMet);
      expect(await canBeMet(set)).toBe(false);
      for (const one of set) expect(await canBeMet(set.filter((d) => d !== one))).toBe(true);
    }),
  );
});

test('hand-worked: of two clashes the later-named is found, since the earlier is taken out first', async () => {
  expect(
    await irreducibleSet(
      [1, 2, 3, 4],
      meets([
        [1, 2],
        [3, 4],
      ]),
    ),
  ).toEqual([3, 4]);
});
