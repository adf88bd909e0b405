import { type CutOff, doubleDegreeDays, singleDegreeDays } from '../../packages/growing/src/climate/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const thresholds = { lower: 50, upper: 70 };
type Three = readonly [horizontal: number, vertical: number, intermediate: number];
const all = (value: number): Three => [value, value, value];

/** Esparto A, California, 2020, °F: date, minimum, maximum, next minimum, single sine, double sine, triangles. */
const rows: readonly [string, number, number, number | null, Three, Three | null, Three, Three | null][] = [
  ['1 Jan', 38, 55, 36, all(1.19), all(1.15), all(0.74), all(0.7)],
  ['2 Jan', 36, 67, 33, all(5.71), all(5.56), all(4.66), all(4.46)],
  ['3 Jan', 33, 59, 37, all(2.34), all(2.45), all(1.56), all(1.7)],
  ['4 Jan', 37, 59, 38, all(2.56), all(2.59), all(1.84), all(1.88)],
  ['5 Jan', 38, 63, null, all(4.23), null, all(3.38), null],
  ['7 Jan', 30, 53, 41, all(0.47), all(0.56), all(0.2), all(0.29)],
  ['8 Jan', 41, 50, null, all(0), null, all(0), null],
  ['17 Jan', 34, 47, null, all(0), null, all(0), null],
  ['26 Jan', 54, 67, 50, all(10.5), all(9.5), all(10.5), all(9.5)],
  ['27 Jan', 50, 64, null, all(7), null, all(7), null],
  [
    '10 Feb',
    52,
    73,
    44,
    [12.01, 7.08, 11.52],
    [10.64, 6.09, 10.19],
    [12.29, 9.43, 12.07],
    [10.63, 8.16, 10.44],
  ],
  ['11 Feb', 44, 76, null, [10, 4.3, 8.88], null, [10, 6.25, 9.44], null],
  ['17 Feb', 53, 71, null, [11.9, 8.87, 11.8], null, [11.97, 10.86, 11.94], null],
  ['3 Mar', 46, 81, null, [11.37, 3.79, 8.66], null, [12, 5.71, 10.27], null],
  ['18 Apr', 49, 70, null, all(9.59), null, all(9.52), null],
  ['14 May', 50, 70, null, all(10), null, all(10), null],
  ['27 May', 66, 100, null, [19.41, 3.87, 5.82], null, [19.76, 2.12, 6.53], null],
  ['14 Aug', 71, 103, null, [20, 0, 3], null, [20, 0, 3], null],
];
const cutOffs: readonly CutOff[] = ['horizontal', 'vertical', 'intermediate'];

export function degreeDayRows(): TruthRow[] {
  const source = 'University of California IPM, degree-day service, Esparto A 2020, thresholds 50 and 70 °F';
  const row = truthRows('degree-days', '°F d', source);
  const found: TruthRow[] = [];
  for (const [date, tmin, tmax, nextTmin, sine, twoSines, triangle, twoTriangles] of rows) {
    cutOffs.forEach((cutOff, i) => {
      for (const [curve, single, double] of [
        ['sine', sine, twoSines],
        ['triangle', triangle, twoTriangles],
      ] as const) {
        const got = singleDegreeDays(curve, tmin, tmax, thresholds, cutOff);
        found.push(row(`${date} single ${curve} ${cutOff}`, single[i]!, got, 0.0101));
        if (double === null || nextTmin === null) continue;
        const gotDouble = doubleDegreeDays(curve, tmin, tmax, nextTmin, thresholds, cutOff);
        found.push(row(`${date} double ${curve} ${cutOff}`, double[i]!, gotDouble, 0.0101));
      }
    });
  }
  return found;
}
