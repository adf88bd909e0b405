import { civilFromDay, type Day, dayFromCivil, isoFromDay, meanOf } from '@twelvemonth/basis';
import {
  type CropType,
  type DayOfYearRange,
  type ForecastContext,
  type MonthlyNormals,
  standstillPeriod,
  sumBetween,
} from '@twelvemonth/growing';
import { z } from 'zod';
import { climateFields, placeFields } from './climate-inputs.ts';
import { isoDay, kindField, whole } from './fields.ts';
import { memberFields, placeKey } from './garden-under-probe.ts';

export const growthInputs = z.strictObject({
  kind: kindField,
  day: isoDay('day that is asked for'),
  againstDay: isoDay('day that it is held against').optional(),
  windowDays: whole(1, 61, 'days around each day over which growth is averaged').default(15),
  ...climateFields,
  ...placeFields,
  ...memberFields,
});

export const growthOutputs = {
  effectiveDayDegreesCDays: 'E of a day, mean over windowDays and weather runs, °C·d',
  againstEffectiveDayDegreesCDays: 'the same about againstDay, °C·d (null without)',
  ratioToAgainst: 'first over second (null without againstDay, or where nothing grows then)',
  shortDays:
    'standstill by day length under ten hours that holds "day" or comes next: from, to; null where there is none',
  lowLight:
    'standstill by tunnel light under 2 MJ/m²/day in the normal year that holds "day" or comes next: from, to; null where there is none',
} as const;

/** Growth a day of a kind in the place about a day, mean of the members, °C·d. */
export function growthAbout(context: ForecastContext, kind: CropType, day: Day, windowDays: number): number {
  const from = day - Math.floor((windowDays - 1) / 2);
  return (
    meanOf(
      context.members.map((member) => {
        const clock = member.clockOf(placeKey);
        return sumBetween(clock, clock.growth(kind), from, from + windowDays);
      }),
    ) / windowDays
  );
}

/** The range of days of the year that holds the day, else the next one, as dates. */
function datesOf(range: DayOfYearRange | null, day: Day) {
  if (range === null) return null;
  for (let year = civilFromDay(day).year - 1; ; year++) {
    const from = dayFromCivil(year, 1, 1) - 1 + range.fromDayOfYear;
    const to = from + range.days - 1;
    if (to >= day) return { from: isoFromDay(from), to: isoFromDay(to), days: range.days };
  }
}

export function standstillAbout(context: ForecastContext, normals: MonthlyNormals, day: Day) {
  const { shortDays, lowLight } = standstillPeriod(context.site, normals);
  return { shortDays: datesOf(shortDays, day), lowLight: datesOf(lowLight, day) };
}
