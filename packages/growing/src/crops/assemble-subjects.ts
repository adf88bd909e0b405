import type { CalendarRow, FamilyRow, GrowsIn, Hazard, KitchenRole, RoleRow, RouteId } from './crop-type.ts';
import type { TableReader } from './table-reader.ts';

export function assembleHazard(id: string, read: TableReader): Hazard {
  const preventedBy = read.text('prevented-by');
  return {
    id,
    crops: read.list('crops'),
    trigger: read.text('trigger') as Hazard['trigger'],
    fromDayOfYear: read.number('from-day-of-year'),
    ordinaryYearFromDayOfYear: read.number('ordinary-year-from-day-of-year'),
    toDayOfYear: read.number('to-day-of-year'),
    stage: read.text('stage') as Hazard['stage'],
    youngDays: read.number('young-days'),
    lossShare: read.number('loss-share'),
    badYearLossShare: read.number('bad-year-loss-share'),
    badYearProb: read.number('bad-year-prob'),
    group: read.text('group'),
    preventedBy: preventedBy === 'none' ? null : (preventedBy as NonNullable<Hazard['preventedBy']>),
    preventedShare: read.number('prevented-share'),
    underCoverShare: read.number('under-cover-share'),
  };
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

export function assembleRole(id: string, read: TableReader): RoleRow {
  return {
    id: id as KitchenRole,
    name: read.text('name'),
    servingG: read.number('serving-g'),
    weight: read.number('weight'),
    servingsPerWeekByMonth: months.map((month) => read.number(`servings-per-week.${month}`)),
    substitutes: read.namesUnder('replaced-by.').map((role) => ({
      role: role as KitchenRole,
      exchange: read.number(`replaced-by.${role}.exchange`),
      mostShare: read.number(`replaced-by.${role}.most-share`),
    })),
  };
}

export function assembleFamily(id: string, read: TableReader): FamilyRow {
  const disease = read.text('recorded-disease');
  return {
    id,
    restYears: read.number('rest-years'),
    recordedDisease: disease === 'none' ? null : disease,
    breakPriceServingsPerM2: read.number('break-price-servings-per-m2'),
    recordedBreakPriceServingsPerM2: read.number('recorded-break-price-servings-per-m2'),
    followsWell: read.list('follows-well').filter((family) => family !== 'none'),
  };
}

/** The id of a calendar subject is `kind/route/place`. */
export function assembleCalendar(id: string, read: TableReader): CalendarRow {
  const [kind = '', route = '', growsIn = ''] = id.split('/');
  return {
    kind,
    route: route as RouteId,
    growsIn: growsIn as GrowsIn,
    sowFromDayOfYear: read.number('sow-from'),
    sowToDayOfYear: read.number('sow-to'),
    harvestFromDayOfYear: read.number('harvest-from'),
    harvestToDayOfYear: read.number('harvest-to'),
  };
}
