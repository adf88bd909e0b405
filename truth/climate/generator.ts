import { dayFromCivil, streamFor } from '../../packages/basis/src/index.ts';
import {
  autoregressionFrom,
  type DailyWeather,
  generateWeather,
  normalYear,
  type Station,
  stationById,
} from '../../packages/growing/src/climate/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';
import { daysByMonth, meanAt, spreadOfMeans } from './weather-statistics.ts';

/** At 200 years a monthly mean is itself uncertain by 0.1 °C: the length is what lets ±0.1 °C be asked for. */
const years = 2000;
const monthDays = [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const published = {
  m0: [1, 0.633, 0.186, 0.633, 1, -0.193, 0.186, -0.193, 1],
  m1: [0.621, 0.445, 0.087, 0.563, 0.674, -0.1, 0.015, -0.091, 0.251],
  a: [0.567, 0.086, -0.002, 0.253, 0.504, -0.05, -0.006, -0.039, 0.244],
  b: [0.781, 0, 0, 0.328, 0.637, 0, 0.238, -0.341, 0.873],
};

/** Standard deviations of means of so many days about the smooth year, 1991-2024. */
const recordSpreadC = {
  dublin: { tmaxC: { 30: 1.151, 90: 0.806, 150: 0.661 }, tminC: { 30: 1.179, 90: 0.829, 150: 0.711 } },
  valentia: { tmaxC: { 30: 1.019, 90: 0.695, 150: 0.549 }, tminC: { 30: 1.079, 90: 0.756, 150: 0.63 } },
} as const;

export function matrixRows(): TruthRow[] {
  const source = 'Richardson & Wright 1984 (WGEN), published A and B';
  const { a, b } = autoregressionFrom(published.m0, published.m1);
  // Printed to three decimals, which the inverse of M0 widens to 0.0025; known misprints are off by 0.06 and more.
  const of = (name: string, expected: readonly number[], got: readonly number[]): TruthRow[] =>
    expected.map((value, i) =>
      truthRows(`WGEN matrix ${name}`, '1', source)(
        `row ${Math.floor(i / 3) + 1}, column ${(i % 3) + 1}`,
        value,
        got[i]!,
        0.0025,
      ),
    );
  return [...of('A', published.a, a), ...of('B', published.b, b)];
}

function returnRows(station: Station, weather: DailyWeather): TruthRow[] {
  const { normals } = station;
  const source = `${station.source}, ${years} years drawn`;
  const rows: TruthRow[] = [];
  const months = daysByMonth(weather.startDay, weather.tmaxC.length);
  months.forEach((days, m) => {
    const name = `${station.name}, month ${m + 1}`;
    const wet = days.filter((i) => weather.rainMm[i]! >= 1);
    const wetDays = normals.wetDaysCount[m]!;
    const mean = (quantity: string, unit: string) => truthRows(`generator returns ${quantity}`, unit, source);
    rows.push(
      mean('tmax', '°C')(name, normals.tmaxC[m]!, meanAt(weather.tmaxC, days), 0.1),
      mean('tmin', '°C')(name, normals.tminC[m]!, meanAt(weather.tminC, days), 0.1),
      mean('wet-day share', '1')(name, wetDays / monthDays[m]!, wet.length / days.length, 0.01),
      mean('rain of a wet day', 'mm')(
        name,
        normals.rainMm[m]! / wetDays,
        meanAt(weather.rainMm, wet),
        (0.03 * normals.rainMm[m]!) / wetDays,
      ),
      mean('radiation', 'MJ/m2/day')(
        name,
        normals.radiationMJPerM2Day[m]!,
        meanAt(weather.radiationMJPerM2Day, days),
        0.02 * normals.radiationMJPerM2Day[m]!,
      ),
    );
  });
  return rows;
}

export function generatorRows(): TruthRow[] {
  const rows = matrixRows();
  for (const id of ['dublin', 'valentia'] as const) {
    const station = stationById(id)!;
    const weather = generateWeather(
      normalYear(station.site, station.normals),
      streamFor(1, 'truth', 0),
      dayFromCivil(2001, 1, 1),
      Math.round(years * 365.2425),
    );
    rows.push(...returnRows(station, weather));
    const source = 'Met Éireann daily data 1991-2024, CC BY 4.0, about a smooth year of three harmonics';
    for (const variable of ['tmaxC', 'tminC'] as const) {
      const row = truthRows(`spread of means of ${variable}`, '°C', source);
      for (const days of [30, 90, 150] as const) {
        const expected = recordSpreadC[id][variable][days];
        rows.push(
          row(
            `${station.name}, ${days} days`,
            expected,
            spreadOfMeans(weather[variable], days),
            0.15 * expected,
          ),
        );
      }
    }
  }
  return rows;
}
