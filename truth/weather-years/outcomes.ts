/** What is forecast and then looked up in the year that was hidden: emergence, first harvests, standstill, warmth. */
import { type Day, dayFromCivil } from '../../packages/basis/src/index.ts';
import {
  kindById,
  NEVER,
  type RaisingStage,
  type RouteId,
  runSowing,
  singleDegreeDays,
} from '../../packages/growing/src/index.ts';
import type { WeatherYear } from './weather-years.ts';

export interface OutcomeCase {
  readonly group: 'emergence' | 'first harvest' | 'standstill' | 'degree-days';
  readonly name: string;
  readonly unit: 'd' | '°C d';
  /** null where it does not come. */
  valueIn(year: WeatherYear): number | null;
}

type MonthDay = readonly [month: number, dayOfMonth: number];
interface Sown {
  readonly kind: string;
  readonly route: RouteId;
  readonly place: 'open' | 'cover';
  readonly sow: MonthDay;
}

/** Handbook threshold of growth under cover, see climate/standstill.ts. */
const lowLightMJPerM2Day = 2;

const raisedOn: Partial<Record<RouteId, readonly RaisingStage[]>> = {
  module: [
    { stage: 'bench', exposure: 'bench' },
    { stage: 'frame', exposure: 'frame' },
  ],
  warm: [
    { stage: 'mat', exposure: 'mat' },
    { stage: 'sill', exposure: 'sill' },
    { stage: 'frame', exposure: 'frame' },
  ],
};

const sownCases: readonly Sown[] = [
  { kind: 'carrot-early', route: 'direct', place: 'cover', sow: [2, 15] },
  { kind: 'carrot-early', route: 'direct', place: 'cover', sow: [10, 15] },
  { kind: 'carrot-maincrop', route: 'direct', place: 'open', sow: [5, 20] },
  { kind: 'beetroot', route: 'direct', place: 'open', sow: [4, 20] },
  { kind: 'parsnip', route: 'direct', place: 'open', sow: [4, 10] },
  { kind: 'lettuce-leaf', route: 'module', place: 'open', sow: [3, 15] },
  { kind: 'lettuce-leaf', route: 'module', place: 'cover', sow: [9, 10] },
  { kind: 'spinach-spring', route: 'direct', place: 'open', sow: [3, 20] },
  { kind: 'spinach-overwintering', route: 'direct', place: 'cover', sow: [9, 10] },
  { kind: 'calabrese-early', route: 'module', place: 'open', sow: [3, 10] },
  { kind: 'leek', route: 'module', place: 'open', sow: [3, 20] },
  { kind: 'broad-bean-hardy', route: 'direct', place: 'open', sow: [11, 5] },
  { kind: 'pea-round', route: 'direct', place: 'open', sow: [3, 10] },
  { kind: 'bean-climbing', route: 'direct', place: 'open', sow: [5, 25] },
  { kind: 'onion-autumn-yellow', route: 'planted', place: 'open', sow: [10, 5] },
  { kind: 'potato-first-early', route: 'planted', place: 'open', sow: [3, 25] },
  { kind: 'courgette', route: 'warm', place: 'open', sow: [4, 25] },
];

const at = (year: WeatherYear, [month, dayOfMonth]: MonthDay): Day =>
  dayFromCivil(year.year, month, dayOfMonth);

function runOf(year: WeatherYear, { kind, route, place, sow }: Sown) {
  const plan = {
    id: 'weather-coverage',
    kind: kindById(kind)!,
    route,
    startDay: at(year, sow),
    startSpreadDays: 0,
    stages: raisedOn[route] ?? [],
    exposure: place,
    plantDay: null,
    clearDay: null,
    plantsCount: 1,
    protection: [],
  };
  return runSowing(year.context, year.member, plan, new Set());
}

const daysFrom = (fromDay: Day, day: Day): number | null => (day >= NEVER ? null : day - fromDay);

function sowingOutcomes(sown: Sown): OutcomeCase[] {
  const name = `${sown.kind}, ${sown.route}, ${sown.place}, sown ${sown.sow[1]}.${sown.sow[0]}.`;
  const ready: OutcomeCase = {
    group: 'first harvest',
    name,
    unit: 'd',
    valueIn: (year) =>
      daysFrom(at(year, sown.sow), Math.min(...runOf(year, sown).harvests.map((h) => h.firstDay))),
  };
  if (sown.route !== 'direct') return [ready];
  const up: OutcomeCase = {
    group: 'emergence',
    name,
    unit: 'd',
    valueIn: (year) => daysFrom(at(year, sown.sow), runOf(year, sown).emergenceDay),
  };
  return [up, ready];
}

/** First or last day between October and March on which a week's light in the tunnel is under the standstill's. */
function standstillOutcome(end: 'first' | 'last'): OutcomeCase {
  return {
    group: 'standstill',
    name: `${end} day of too little light in a tunnel`,
    unit: 'd',
    valueIn: (year) => {
      const { weather, startDay } = year.member.clockOf('cover');
      const from = at(year, [10, 1]);
      const dim: Day[] = [];
      for (let day = from; day < dayFromCivil(year.year + 1, 4, 1); day++)
        if (weather.radiation7MJPerM2Day[day - startDay]! < lowLightMJPerM2Day) dim.push(day);
      const found = end === 'first' ? dim[0] : dim.at(-1);
      return found === undefined ? null : found - from;
    },
  };
}

function warmthOutcome(name: string, from: MonthDay, to: MonthDay, lowerC: number): OutcomeCase {
  return {
    group: 'degree-days',
    name: `${name} above ${lowerC} °C`,
    unit: '°C d',
    valueIn: (year) => {
      const { outdoor } = year.member;
      let sum = 0;
      for (let day = at(year, from); day <= at(year, to); day++) {
        const i = day - outdoor.startDay;
        sum += singleDegreeDays('sine', outdoor.tminC[i]!, outdoor.tmaxC[i]!, { lower: lowerC, upper: 30 });
      }
      return sum;
    },
  };
}

export const outcomeCases: readonly OutcomeCase[] = [
  ...sownCases.flatMap(sowingOutcomes),
  standstillOutcome('first'),
  standstillOutcome('last'),
  warmthOutcome('March to May', [3, 1], [5, 31], 5),
  warmthOutcome('April to September', [4, 1], [9, 30], 5),
  warmthOutcome('May to August', [5, 1], [8, 31], 10),
  warmthOutcome('October to December', [10, 1], [12, 31], 3),
];
