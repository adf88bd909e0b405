import type { Household, Person, RoleAppetite } from '../records/garden.ts';
import {
  boughtShareByWord,
  type DefaultAppetite,
  defaultAppetite,
  eaterShareByWord,
  littleShare,
} from '../tables/appetite-defaults.ts';
import type { FilePath } from './issue-codes.ts';
import { nextTime, plantsOf, type Reading } from './reading.ts';
import type { WrittenAppetite, WrittenHousehold } from './schema-household.ts';

type Written<K extends keyof WrittenHousehold> = WrittenHousehold[K];

function personOf(person: Written<'people'>[number], path: FilePath, reading: Reading): Person {
  const share = typeof person.eats === 'number' ? person.eats : eaterShareByWord[person.eats];
  const eaterShare = new Map<string, number>([['other', share]]);
  for (const role of person.little) eaterShare.set(role, share * littleShare);
  for (const role of person.dislikes) {
    if (person.little.includes(role)) reading.report('role-named-twice', [...path, 'dislikes'], { role });
    eaterShare.set(role, 0);
  }
  return { name: person.name, eaterShare: Object.fromEntries(eaterShare) };
}

const turned = (byMonth: readonly number[], southern: boolean): readonly number[] =>
  southern ? byMonth.map((_, month) => byMonth[(month + 6) % 12]!) : byMonth;

const seasonOfNorthernMonth = [
  'winter',
  'winter',
  'spring',
  'spring',
  'spring',
  'summer',
  'summer',
  'summer',
  'autumn',
  'autumn',
  'autumn',
  'winter',
] as const;

const meanOver = (byMonth: readonly number[], months: readonly number[]): number =>
  months.reduce((sum, month) => sum + byMonth[month]!, 0) / months.length;
const winterMonths = [11, 0, 1];
const summerMonths = [5, 6, 7];

/**
 * Twelve northern months from named seasons. Between a named winter and summer the usual appetite's curve is
 * followed, so that "courgettes, 3 in summer, 0 in winter" does not mean some in March.
 */
function bySeason(
  named: Exclude<WrittenAppetite, number | number[]>,
  usual: readonly number[] | undefined,
): readonly number[] | null {
  const { winter, spring, summer, autumn } = named;
  const said = [winter, spring, summer, autumn].filter((value) => value !== undefined);
  if (said.length === 0) return null;
  const mean = said.reduce((sum, value) => sum + value, 0) / said.length;
  const [cold, warm] = [winter ?? mean, summer ?? mean];
  const [usualCold, usualWarm] =
    usual === undefined ? [0, 0] : [meanOver(usual, winterMonths), meanOver(usual, summerMonths)];
  return seasonOfNorthernMonth.map((season, month) => {
    if (season === 'winter') return cold;
    if (season === 'summer') return warm;
    const exact = season === 'spring' ? spring : autumn;
    if (exact !== undefined) return exact;
    const turn =
      usual === undefined || usualWarm === usualCold
        ? 0.5
        : (usual[month]! - usualCold) / (usualWarm - usualCold);
    return cold + (warm - cold) * Math.min(1, Math.max(0, turn));
  });
}

function appetiteOf(
  role: string,
  written: WrittenAppetite | undefined,
  usual: DefaultAppetite | undefined,
  bought: number | null,
  southern: boolean,
): RoleAppetite {
  const named = typeof written === 'object' && !Array.isArray(written) ? written : null;
  const plain = named === null ? (written as number | number[] | undefined) : named.perWeek;
  const seasonal = named === null ? null : bySeason(named, usual?.servingsPerWeekByMonth);
  const byMonth =
    plain === undefined
      ? turned(seasonal ?? usual?.servingsPerWeekByMonth ?? new Array<number>(12).fill(0), southern)
      : Array.isArray(plain)
        ? plain
        : new Array<number>(12).fill(plain);
  const boughtShare = bought ?? usual?.boughtShare ?? 0;
  const usualCover = bought === null ? (usual?.cover ?? 'all') : bought > 0 ? 'some' : 'all';
  return {
    role,
    servingsPerWeekByMonth: byMonth,
    cover: named?.cover ?? (boughtShare >= 1 ? 'none' : usualCover),
    boughtShare,
    sameKindCapPerWeek: named?.noMoreOfOneKind ?? null,
  };
}

const entryOf = <T>(entries: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(entries, key) ? entries[key] : undefined;

function boughtOf(written: Written<'boughtOnPurpose'>, role: string): number | null {
  const said = entryOf(written, role);
  return said === undefined ? null : typeof said === 'number' ? said : boughtShareByWord[said];
}

function weekAwayOf(written: Written<'weeksAway'>[number], path: FilePath, reading: Reading) {
  const from = nextTime(reading, written.from, [...path, 'from']);
  const to = nextTime(reading, written.to, [...path, 'to'], from?.fromDay ?? reading.reference);
  if (from === null || to === null) return [];
  if (to.toDay < from.fromDay) {
    reading.report('dates-reversed', path, { from: written.from, to: written.to });
    return [];
  }
  const { neighbourPicks, neighbourWaters } = written;
  return [{ fromDay: from.fromDay, toDay: to.toDay, neighbourPicks, neighbourWaters }];
}

export function readHousehold(written: WrittenHousehold, reading: Reading): Household {
  const at = (...parts: FilePath): FilePath => ['household', ...parts];
  const usual = new Map(defaultAppetite.map((row) => [row.role, row]));
  const roles = new Set([
    ...usual.keys(),
    ...Object.keys(written.appetite),
    ...Object.keys(written.boughtOnPurpose),
  ]);
  return {
    name: written.name,
    people: written.people.map((person, index) => personOf(person, at('people', index), reading)),
    appetite: [...roles].map((role) =>
      appetiteOf(
        role,
        entryOf(written.appetite, role),
        usual.get(role),
        boughtOf(written.boughtOnPurpose, role),
        reading.southern,
      ),
    ),
    yearly: Object.entries(written.yearly).map(([kind, count]) => ({
      kind,
      count: Math.round(plantsOf(reading, count, at('yearly', kind)).middle),
    })),
    dislikes: written.dislikes,
    weeksAway: written.weeksAway.flatMap((away, index) => weekAwayOf(away, at('weeksAway', index), reading)),
  };
}
