import { streamFor } from '@twelvemonth/basis';
import { expect, it } from 'vitest';
import { allRoles } from '../crops/index.ts';
import { eatAgain, eatMarked } from './eat-again.ts';
import { type Appetite, eat } from './kitchen-rule.ts';
import type { Lot } from './sowing-plan.ts';

const weekCount = 60;
const roles = ['cooked-greens', 'salad-leaves', 'cabbages', 'onions'] as const;
const appetite: Appetite = {
  fromWeek: 100,
  weekCount,
  roles,
  garden: roles.map(() => new Float64Array(weekCount).fill(3)),
  bought: roles.map(() => new Float64Array(weekCount)),
  kindCap: [2, Number.POSITIVE_INFINITY, 2, Number.POSITIVE_INFINITY],
  roomG: new Map([['dry', 900]]),
};

function someLots(seed: number, index: number): Lot[] {
  const stream = streamFor(seed, 'eat-again', index);
  const whole = (most: number): number => Math.floor(stream.uniform() * most);
  return Array.from({ length: 1 + whole(4) }, () => {
    const fromWeek = 95 + whole(60);
    const kept = stream.uniform() < 0.3;
    return {
      source: `s${index}`,
      kind: `k${index % 3}`,
      role: roles[whole(4)]!,
      fromWeek,
      toWeek: fromWeek + whole(14),
      servings: 6 * stream.uniform(),
      lossPerWeekShare: kept ? 0.02 : 0,
      form: kept ? ('store' as const) : stream.uniform() < 0.5 ? ('fresh' as const) : ('standing' as const),
      store: kept ? ('dry' as const) : null,
      storeFromWeek: kept ? fromWeek + 1 : null,
      keptGPerServing: 80,
      putBy:
        stream.uniform() < 0.3 ? { store: 'freezer' as const, lifeWeeks: 20, lossPerWeekShare: 0 } : null,
      bolted: false,
    };
  });
}

it('eaten again after a change is the same as eaten anew, in every table', () => {
  const tables = ['offered', 'eaten', 'fromStock', 'stockLeft', 'wasted'] as const;
  let sooner = 0;
  for (let seed = 0; seed < 40; seed++) {
    const sources = Array.from({ length: 14 }, (_, i) => someLots(seed, i));
    const base = eatMarked(sources, appetite, allRoles());
    expect(base.eaten.eaten).toEqual(eat(sources.flat(), appetite, allRoles()).eaten);
    const rank = seed % sources.length;
    const changed = seed % 5 === 0 ? [] : someLots(seed + 1000, rank);
    const again = eatAgain(base, rank, changed);
    const anew = eat(
      sources.flatMap((lots, i) => (i === rank ? changed : lots)),
      appetite,
      allRoles(),
    );
    for (const table of tables)
      anew[table].forEach((row, r) => {
        row.forEach((value, w) => {
          expect(again.eaten[table][r]![w], `${seed} ${table} ${r} ${w}`).toBeCloseTo(value, 6);
        });
      });
    if (again.to - again.from < weekCount) sooner++;
  }
  expect(sooner).toBeGreaterThan(10);
});
