import { Body, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine';
import { dayLengthHours, standstillPeriod } from '../../packages/growing/src/climate/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const newYear2025 = Date.UTC(2025, 0, 1);
const dayOfYear2025 = (month: number, dayOfMonth: number): number =>
  (Date.UTC(2025, month - 1, dayOfMonth) - newYear2025) / 86_400_000 + 1;

/** Sunrise to sunset on the date at longitude 0, by an independent astronomy library. */
function observedHours(latitudeDeg: number, month: number, dayOfMonth: number): number {
  const place = new Observer(latitudeDeg, 0, 0);
  const midnight = MakeTime(new Date(Date.UTC(2025, month - 1, dayOfMonth)));
  const rise = SearchRiseSet(Body.Sun, place, 1, midnight, 1);
  const set = rise && SearchRiseSet(Body.Sun, place, -1, rise, 1);
  return set ? (set.ut - rise.ut) * 24 : Number.NaN;
}

/** First and last day under ten hours, NOAA formulas for 2025-26, sun centre at -0.833 degrees. */
const tenHourDates: readonly [latitude: number, first: [number, number], back: [number, number]][] = [
  [40, [11, 15], [1, 27]],
  [45, [11, 5], [2, 6]],
  [48, [10, 31], [2, 11]],
  [50, [10, 29], [2, 13]],
  [52, [10, 26], [2, 16]],
  [54, [10, 24], [2, 18]],
  [57, [10, 20], [2, 21]],
  [60, [10, 18], [2, 24]],
  [-43, [5, 7], [8, 6]],
  [-46, [5, 1], [8, 11]],
];

export function dayLengthRows(): TruthRow[] {
  const january = truthRows(
    'day length, sum of January',
    'h',
    'published test of an R package, latitude 54.6 N',
  );
  let januaryHours = 0;
  for (let day = 1; day <= 31; day++) januaryHours += dayLengthHours(54.6, day);
  const rows = [january('54.6 N', 245.39297, januaryHours, 0.01)];
  const sunrise = truthRows('day length', 'h', 'astronomy-engine 2.1.19, sunrise and sunset 2025');
  for (const latitude of [38.7, 51.5, 60]) {
    for (const [month, dayOfMonth, tolerance] of [
      [6, 21, 0.02],
      [12, 21, 0.02],
      [3, 20, latitude < 55 ? 0.1 : 0.13],
      [9, 22, latitude < 55 ? 0.1 : 0.13],
    ] as const) {
      const got = dayLengthHours(latitude, dayOfYear2025(month, dayOfMonth));
      // The model's declination is a little over a day off at the equinox, when a day is worth 0.1 h at 60° N.
      rows.push(
        sunrise(
          `${latitude} N, ${dayOfMonth}.${month}.`,
          observedHours(latitude, month, dayOfMonth),
          got,
          tolerance,
        ),
      );
    }
  }
  const tenHours = truthRows('ten-hour dates', 'day of year', 'NOAA solar formulas (Meeus), 2025-26');
  for (const [latitude, first, back] of tenHourDates) {
    const site = { latitudeDeg: latitude, longitudeDeg: 0, elevationM: 0, coastal: false };
    const found = standstillPeriod(site).shortDays!;
    rows.push(tenHours(`${latitude}, first day below`, dayOfYear2025(...first), found.fromDayOfYear, 2));
    rows.push(tenHours(`${latitude}, last day below`, dayOfYear2025(...back) - 1, found.toDayOfYear, 2));
  }
  return rows;
}
