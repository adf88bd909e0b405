/**
 * How long garden work takes, from tables/work.csv: hand tools, the pace of a household. Months are those of the
 * northern year with the season of the week asked for (docs/models/work-times.md).
 */
import { civilFromDay, mondayOf, type Week } from '@twelvemonth/basis';
import { southernShiftDays } from '../climate/season-day.ts';
import type { CropType, GrowsIn, StoreId } from '../crops/crop-type.ts';
import { workTable } from '../generated/work.ts';

/** A tray of the tables, m². */
export const workTrayM2 = 0.2;

/** What decides how ground is weeded and watered. */
export interface WorkedGround {
  readonly growsIn: GrowsIn;
  /** Water is at hand. */
  readonly watered: boolean;
  readonly southern: boolean;
}

type Monthly<Prefix extends string> = `${Prefix}.${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12}`;

const byMonth = <Prefix extends string>(
  table: Readonly<Record<Monthly<Prefix>, number>>,
  prefix: Prefix,
): readonly number[] => Array.from({ length: 12 }, (_, m) => table[`${prefix}.${m + 1}` as Monthly<Prefix>]);

const weedByMonth = byMonth(workTable.weed, 'open-minutes-per-m2-week');
const openWaterByMonth = byMonth(workTable.water, 'open-minutes-per-m2-week');
const coverWaterByMonth = byMonth(workTable.water, 'cover-minutes-per-m2-week');
const tubWaterByMonth = byMonth(workTable.water, 'tub-minutes-per-week');
const trayWaterByMonth = byMonth(workTable.water, 'tray-minutes-per-week');

const monthByWeek = { north: new Map<Week, number>(), south: new Map<Week, number>() };

/** Month of the northern year, 0–11, with the season of the week's Thursday. */
export function seasonMonth(week: Week, southern: boolean): number {
  const known = southern ? monthByWeek.south : monthByWeek.north;
  let month = known.get(week);
  if (month === undefined) {
    month = civilFromDay(mondayOf(week) + 3 + (southern ? southernShiftDays : 0)).month - 1;
    known.set(week, month);
  }
  return month;
}

/** Minutes a week to keep a square metre of a kind clean and tied up. */
export function weedMinutesPerM2(
  kind: Pick<CropType, 'weedShare' | 'tendingMinutesPerM2Week'>,
  ground: WorkedGround,
  week: Week,
): number {
  const { growsIn, southern } = ground;
  if (growsIn === 'sill') return 0;
  const place = growsIn === 'open' ? 1 : workTable.weed[growsIn === 'tub' ? 'tub-share' : 'cover-share'];
  return weedByMonth[seasonMonth(week, southern)]! * place * kind.weedShare + kind.tendingMinutesPerM2Week;
}

/** Minutes a week to water ground of so many m², or so many tubs. */
export function waterMinutes(ground: WorkedGround, week: Week, m2: number, tubsCount: number): number {
  const month = seasonMonth(week, ground.southern);
  switch (ground.growsIn) {
    case 'tub':
      return tubWaterByMonth[month]! * tubsCount;
    case 'sill':
    case 'frame':
      return (trayWaterByMonth[month]! * m2) / workTrayM2;
    case 'cover':
      return coverWaterByMonth[month]! * m2;
    case 'open':
      return openWaterByMonth[month]! * m2 * (ground.watered ? 1 : workTable.water['carried-factor']);
  }
}

/** Minutes a week to water trays and pots on so many m² of bench. */
export function benchWaterMinutes(week: Week, m2: number, southern: boolean): number {
  return (trayWaterByMonth[seasonMonth(week, southern)]! * m2) / workTrayM2;
}

export const sowTrayMinutes = workTable.sow['tray-minutes'];
export const sowDirectMinutesPerM2 = workTable.sow['direct-minutes-per-m2'];
export const groundReadyMinutesPerM2 = workTable.plant['ground-ready-minutes-per-m2'];
export const prickOutMinutes = workTable.plant['prick-out-minutes-per-plant'];
export const potOnMinutes = workTable.plant['pot-on-minutes-per-plant'];
export const plantOutMinutes = workTable.plant['plant-out-minutes-per-plant'];
export const clearMinutesPerM2 = workTable.clear['ground-minutes-per-m2'];
/** Of opening up and putting away at ground that is not at home. */
export const awayVisitMinutes = workTable.visit['away-minutes'];
/** Up to this share of what people say they have, a week is no burden. */
export const comfortShareOfCap = workTable.comfort['share-of-cap'];

/** This share of it is always left for what is new, whatever stands. */
export const leftForNewShareOfCap = workTable.comfort['left-for-new-share'];

/** Setting a bulb, clove, tuber or crown. */
export function setMinutes(startsAs: CropType['startsAs']): number {
  return startsAs === 'seed' ? 0 : workTable.plant[`${startsAs}-minutes-per-plant`];
}

/** From the harvest into its store: cleaning, plaiting, boxing, freezing. */
export function putByMinutesPerKg(store: StoreId): number {
  return workTable['put-by'][`${store}-minutes-per-kg`];
}
