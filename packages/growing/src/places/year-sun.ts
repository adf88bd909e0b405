/** What the sun does at a latitude, by slot of the year (0–364): computed once per run of place weather. */
import { dayLengthHours, extraterrestrialRadiationMJPerM2Day, noonSunAltitudeDeg } from '../climate/sun.ts';
import { dayOfYearOfSlot, slotCount } from '../climate/year-slots.ts';

export interface YearSun {
  readonly outerMJPerM2Day: Float64Array;
  readonly daylightHours: Float64Array;
  readonly noonAltitudeDeg: Float64Array;
}

export function yearSun(latitudeDeg: number): YearSun {
  const bySlot = (value: (dayOfYear: number) => number): Float64Array =>
    Float64Array.from({ length: slotCount }, (_, slot) => value(dayOfYearOfSlot(slot)));
  return {
    outerMJPerM2Day: bySlot((day) => extraterrestrialRadiationMJPerM2Day(latitudeDeg, day)),
    daylightHours: bySlot((day) => dayLengthHours(latitudeDeg, day)),
    noonAltitudeDeg: bySlot((day) => noonSunAltitudeDeg(latitudeDeg, day)),
  };
}
