import { dayFromIso, isoOfWeek, weekOfDay } from '@twelvemonth/basis';
import { type CropType, kindById } from '@twelvemonth/growing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallProblem } from '../verdict/fixture/small-problem.ts';
import { independentCheck } from '../verdict/independent-check.ts';
import { practisedGardener } from '../verdict/rivals/practised-gardener.ts';
import { type FedSowing, feedingOf } from './feeding.ts';
import { handoversOf } from './handovers.ts';
import { kitNeeds } from './kit-needs.ts';
import { kitLedger, lendKit } from './lend-kit.ts';

const problem = { ...smallProblem(52), protection: ['mesh', 'net'] as const };
const kind = (id: string): CropType => kindById(id)!;
const week = (iso: string): number => weekOfDay(dayFromIso(iso)!);
const owned = { mesh: 10, net: 10, fleece: 0, canes: 20 };
const open = problem.ground[0]!;
const needs = (id: string, from: string, to: string) =>
  kitNeeds(kind(id), open, owned, false, false, week(from), week(to)).map((use) => ({
    kit: use.kit,
    from: isoOfWeek(use.fromWeek),
    to: isoOfWeek(use.toWeek),
    amount: use.amount,
  }));

describe('kit by date', () => {
  it('lies on carrots through both flights of the fly, in one piece over the fortnight between', () => {
    expect(needs('carrot-maincrop', '2027-05-17', '2027-11-22')).toEqual([
      { kit: 'mesh', from: '2027-05-17', to: '2027-11-01', amount: 0.5 },
    ]);
    expect(needs('carrot-maincrop', '2027-11-15', '2028-03-20')).toEqual([]);
  });

  it('asks for canes from planting to clearing, by the square metre', () => {
    const canes = needs('bean-climbing', '2027-05-17', '2027-10-04').filter((use) => use.kit === 'canes');
    expect(canes).toEqual([{ kit: 'canes', from: '2027-05-17', to: '2027-10-04', amount: 3 }]);
  });

  const sowings = practisedGardener(problem).placed.map((sowing, i) => ({
    ...sowing,
    id: `${i}`,
    plan: {
      ...sowing.plan,
      id: i === 0 ? sowing.plan.id : `${sowing.plan.id}-${i}`,
      protection: problem.protection,
    },
  }));

  it('is never lent beyond what is owned, and the second count agrees', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 }), (mesh, net) => {
        const short = { ...problem, standing: [], ownedKit: { mesh, net, fleece: 0, canes: 3 } };
        const { lent, refused } = lendKit(short, kitLedger(short), sowings);
        const placed = sowings.map((sowing) => ({
          ...sowing,
          kit: lent.get(sowing.id) ?? [],
          plan: {
            ...sowing.plan,
            protection: sowing.plan.protection.filter(
              (kit) => refused.get(sowing.id)?.includes(kit) !== true,
            ),
          },
        }));
        const found = independentCheck(short, placed).filter((code) => code.startsWith('kit-'));
        expect(found).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  it('is missed by the second count where a sowing counts on mesh that does not lie on it', () => {
    const short = { ...problem, standing: [], ownedKit: { mesh: 1, net: 0, fleece: 0, canes: 0 } };
    const bare = sowings.map((sowing) => ({ ...sowing, kit: [] }));
    expect(independentCheck(short, bare).some((code) => code.startsWith('kit-missing'))).toBe(true);
    const use = {
      kit: 'mesh' as const,
      fromWeek: problem.fromWeek,
      toWeek: problem.fromWeek + 1,
      amount: 1.5,
      why: [],
    };
    const over = sowings.map((sowing, i) => ({ ...sowing, kit: i === 0 ? [use] : [] }));
    expect(independentCheck(short, over)).toContain(`kit-over:mesh:${isoOfWeek(problem.fromWeek)}:1.5/1`);
  });
});

const placed = (id: string, bed: number, fromWeek: number, toWeek: number, strips: [number, number]) => ({
  id,
  groundFromWeek: fromWeek,
  groundToWeek: toWeek,
  placements: [
    { booking: id, bed: open.beds[bed]!, stripsFrom: strips[0], stripsCount: strips[1], follows: [] },
  ],
});

describe('feeding', () => {
  const fed = (id: string, of: string, from: number, to: number, left = 0): FedSowing => ({
    ...placed(id, 0, from, to, [1, 2]),
    kind: kind(of),
    stripM2: 0.5,
    standing: false,
    nitrogenLeftGPerM2: left,
  });

  it('gives the hungry crop its compost, and the next one only what is not there yet', () => {
    const found = feedingOf([fed('squash', 'squash-winter', 0, 18), fed('kale', 'kale', 20, 50)]);
    expect(found.map(({ before, compostL, savedL }) => ({ before, compostL, savedL }))).toEqual([
      { before: 'squash', compostL: 15, savedL: 0 },
      { before: 'kale', compostL: 0, savedL: 8 },
    ]);
    expect(found[1]!.lime).toBe(true);
  });

  it('counts what legumes left', () => {
    const found = feedingOf([fed('beans', 'broad-bean-hardy', 0, 30, 3), fed('kale', 'kale', 31, 60)]);
    expect(found[1]).toMatchObject({ before: 'kale', compostL: 5, savedL: 3, residueOf: ['beans'] });
  });
});

describe('handovers', () => {
  it('gathers the passes in which one crop goes and the next comes', () => {
    const found = handoversOf([
      { ...placed('tomato', 0, 0, 20, [1, 6]), kind: 'tomato-cordon' },
      { ...placed('a', 0, 20, 40, [1, 2]), kind: 'lettuce-winter' },
      { ...placed('b', 0, 21, 40, [3, 2]), kind: 'lettuce-winter' },
      { ...placed('late', 0, 30, 40, [5, 2]), kind: 'kale' },
    ]);
    expect(found).toEqual([
      {
        from: 'tomato',
        toKind: 'lettuce-winter',
        passes: [
          { week: 20, strips: 2, to: 'a' },
          { week: 21, strips: 2, to: 'b' },
        ],
      },
    ]);
  });
});
