import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createHighsSolver, type HighsSolver } from '../adapters/solver-highs/src/index.ts';
import { dayFromIso, mondayOf, weekOfDay } from '../packages/basis/src/index.ts';
import { kindById } from '../packages/growing/src/index.ts';
import type { Candidate, PlanningProblem } from '../packages/planning/src/index.ts';
import { cutRows } from '../packages/planning/src/program/cut-rows.ts';
import { kitRows } from '../packages/planning/src/program/kit-rows.ts';
import { programBuilder } from '../packages/planning/src/program/program-builder.ts';
import { rotationRows } from '../packages/planning/src/program/rotation-rows.ts';
import { smallProblem } from '../packages/planning/src/verdict/fixture/small-problem.ts';

/** Rows of the program held to sums worked by hand: open ground of the fixture has 72 strips of 0.6 m². */

let solver: HighsSolver;
beforeAll(async () => {
  solver = await createHighsSolver();
});
afterAll(() => solver.dispose());

const problem = { ...smallProblem(52), standing: [] };
const week = (iso: string): number => weekOfDay(dayFromIso(iso)!);
const grown = (kind: string, from: string, to: string): Candidate =>
  ({
    plan: {
      id: `${kind}/${from}`,
      kind: kindById(kind)!,
      route: 'direct',
      startDay: mondayOf(week(from)),
      startSpreadDays: 0,
      stages: [],
      exposure: 'open',
      plantDay: null,
      clearDay: null,
      plantsCount: 1,
      protection: ['net', 'mesh'],
    },
    ground: 0,
    stripsPerBatch: 1,
    groundFromWeek: week(from),
    groundToWeek: week(to),
    bench: [],
    group: null,
    lots: [],
  }) as unknown as Candidate;

type Rows = typeof cutRows;

async function costOf(
  rows: Rows,
  of: PlanningProblem,
  taken: readonly (readonly [Candidate, number])[],
): Promise<number | null> {
  const builder = programBuilder();
  const columns = taken.map(([, batches]) => builder.column(0, batches, batches, false));
  rows(
    builder,
    of,
    taken.map(([candidate]) => candidate),
    columns,
  );
  return (await solver.relax(builder.build(), () => false)).objective;
}

describe('rotation rows', () => {
  const first = grown('kale', '2026-09-07', '2026-12-28');
  const again = grown('calabrese-early', '2026-12-28', '2027-01-04');
  const next = grown('cabbage-winter', '2027-06-07', '2027-12-06');

  it('lets a family have what a rotation over two years leaves, and prices the strips beyond', async () => {
    expect(
      await costOf(rotationRows, problem, [
        [first, 36],
        [next, 36],
      ]),
    ).toBeCloseTo(0, 6);
    const broken = await costOf(rotationRows, problem, [
      [first, 50],
      [next, 36],
    ]);
    expect(broken).toBeCloseTo((50 + 36 - 72) * 0.6 * 0.6, 6);
  });

  it('counts two crops of one year once', async () => {
    const sum = await costOf(rotationRows, problem, [
      [first, 36],
      [again, 36],
      [next, 36],
    ]);
    expect(sum).toBeCloseTo(0, 6);
  });

  it('is steep where the disease is on record, and reckons with what grew before', async () => {
    const [open, ...rest] = problem.ground;
    const sick = { ...problem, ground: [{ ...open!, recordedFamilies: ['Brassicaceae'] }, ...rest] };
    const broken = await costOf(rotationRows, sick, [
      [first, 50],
      [next, 36],
    ]);
    expect(broken).toBeCloseTo(14 * 5 * 0.6, 6);
    const past = [1, 2, 3].map((placeNumber) => ({
      family: 'Brassicaceae',
      place: 'open',
      placeNumber,
      year: 2025,
    }));
    const used = { ...problem, ground: [{ ...open!, past }, ...rest] };
    expect(await costOf(rotationRows, used, [[first, 40]])).toBeCloseTo((36 + 40 - 72) * 0.6 * 0.6, 6);
  });
});

describe('kit rows', () => {
  it('price each metre and week beyond what is owned', async () => {
    const ownedKit = { mesh: 0, net: 2, fleece: 0, canes: 0 };
    const peas = grown('pea-round', '2027-03-08', '2027-06-14');
    const enough = await costOf(kitRows, { ...problem, ownedKit }, [[peas, 4]]);
    expect(enough).toBeCloseTo(0, 6);
    const short = await costOf(kitRows, { ...problem, ownedKit }, [[peas, 7]]);
    // Young peas need the net for 35 + 14 days: eight weeks begun. 1.5 m short.
    expect(short).toBeCloseTo(1.5 * 0.12 * 8, 6);
  });

  it('are none where nobody says what is owned', async () => {
    expect(
      await costOf(kitRows, problem, [[grown('pea-round', '2027-03-08', '2027-06-14'), 70]]),
    ).toBeCloseTo(0, 6);
  });
});

describe('cut rows', () => {
  const crop = grown('kale', '2026-09-07', '2026-12-28');
  const cut = { ground: 0, fromWeek: week('2026-10-05'), toWeek: week('2026-10-19'), strips: 60 };

  it('take strips away in their weeks, and only there', async () => {
    const groundCuts = [cut];
    expect(await costOf(cutRows, { ...problem, groundCuts }, [[crop, 12]])).toBeCloseTo(0, 6);
    expect(await costOf(cutRows, { ...problem, groundCuts }, [[crop, 13]])).toBeCloseTo(2 * 3, 6);
    const after = grown('kale', '2026-10-19', '2026-12-28');
    expect(await costOf(cutRows, { ...problem, groundCuts }, [[after, 72]])).toBeCloseTo(0, 6);
  });
});
