/** Tables worked out by hand from printed formulas: they check our arithmetic, to the digits of the table. */
import { dayFromCivil } from '../../packages/basis/src/index.ts';
import {
  dampedWave,
  dampingDepthCm,
  dayLengthHours,
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  rainModel,
  singleDegreeDays,
  standstillPeriod,
} from '../../packages/growing/src/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';
import tables from './derived-tables.json' with { type: 'json' };

interface ByLatitude {
  readonly source: string;
  readonly daysOfYear: readonly number[];
  readonly byLatitude: Readonly<Record<string, readonly number[]>>;
}

function latitudeRows(
  quantity: string,
  unit: string,
  table: ByLatitude,
  got: (latitudeDeg: number, dayOfYear: number) => number,
  tolerance: (column: number) => number,
): TruthRow[] {
  const row = truthRows(quantity, unit, table.source);
  return Object.entries(table.byLatitude).flatMap(([latitude, values]) =>
    values.map((expected, i) => {
      const day = table.daysOfYear[i]!;
      return row(`${latitude} N, day ${day}`, expected, got(Number(latitude), day), tolerance(i));
    }),
  );
}

function lightRows(): TruthRow[] {
  const { extraterrestrial, daylight, dayLength, horizon } = tables;
  const atHorizon = truthRows('day length by horizon, worked out', 'h', horizon.source);
  return [
    ...latitudeRows(
      'radiation above the air, worked out',
      'MJ/m2/day',
      extraterrestrial,
      extraterrestrialRadiationMJPerM2Day,
      () => 0.051,
    ),
    ...latitudeRows('daylight without refraction, worked out', 'h', daylight, daylightHours, () => 0.051),
    // The solstice columns have three decimals.
    ...latitudeRows('day length, worked out', 'h', dayLength, dayLengthHours, (i) =>
      i < 12 ? 0.0051 : 0.00051,
    ),
    ...Object.entries(horizon.byHorizonDeg).flatMap(([deg, hours]) =>
      hours.map((expected, i) => {
        const day = horizon.daysOfYear[i]!;
        const places = Number.isInteger(expected * 100) ? 0.0051 : 0.00051;
        return atHorizon(
          `${deg} degrees under, day ${day}`,
          expected,
          dayLengthHours(52, day, Number(deg)),
          places,
        );
      }),
    ),
  ];
}

/** Day of a common year of "11-06". */
function dayOfYearOf(monthAndDay: string): number {
  const [month = 1, dayOfMonth = 1] = monthAndDay.split('-').map(Number);
  return dayFromCivil(2025, month, dayOfMonth) - dayFromCivil(2025, 1, 1) + 1;
}

function shortDayRows(): TruthRow[] {
  const row = truthRows('first and last day under ten hours, worked out', 'd', tables.underTenHours.source);
  return Object.entries(tables.underTenHours.byLatitude).flatMap(([latitude, [first = '', last = '']]) => {
    const site = { latitudeDeg: Number(latitude), longitudeDeg: 0, elevationM: 0, coastal: false };
    const found = standstillPeriod(site).shortDays!;
    return [
      row(`${latitude} N, first`, dayOfYearOf(first), found.fromDayOfYear, 1),
      row(`${latitude} N, last`, dayOfYearOf(last), found.toDayOfYear, 1),
    ];
  });
}

function heatRows(): TruthRow[] {
  const row = truthRows('degree-days in °C, worked out', '°C·d', tables.celsiusDegreeDays.source);
  return tables.celsiusDegreeDays.rows.flatMap(([tmin, tmax, lower, upper, sine, triangle]) => {
    const thresholds = { lower: lower!, upper: upper ?? 1000 };
    const name = `${tmin} to ${tmax} °C over ${lower} °C${upper === null ? '' : ` up to ${upper} °C`}`;
    return [
      row(`${name}, sine`, sine!, singleDegreeDays('sine', tmin!, tmax!, thresholds, 'horizontal'), 0.00051),
      row(
        `${name}, triangle`,
        triangle!,
        singleDegreeDays('triangle', tmin!, tmax!, thresholds, 'horizontal'),
        0.00051,
      ),
    ];
  });
}

function groundRows(): TruthRow[] {
  const wave = tables.dampedWave;
  const share = truthRows('what is left of a wave at a depth, worked out', '1', wave.source);
  const lag = truthRows('lag of a wave at a depth, worked out', 'd', wave.source);
  const depth = truthRows('damping depth, worked out', 'cm', tables.dampingDepth.source);
  return [
    ...wave.rows.flatMap(([cm = 0, daily = 0, lagHours = 0, yearly = 0, lagDays = 0]) => {
      const [day, year] = [dampedWave(cm, 11.7, 1), dampedWave(cm, 224, 365)];
      return [
        share(`${cm} cm, a day`, daily, day.amplitudeShare, 0.001),
        lag(`${cm} cm, a day`, lagHours / 24, day.lagDays, 0.02 / 24),
        share(`${cm} cm, a year`, yearly, year.amplitudeShare, 0.001),
        lag(`${cm} cm, a year`, lagDays, year.lagDays, 0.06),
      ];
    }),
    ...tables.dampingDepth.rows.flatMap(([alpha = 0, dailyCm = 0, yearlyM = 0]) => [
      depth(`${alpha}e-6 m2/s, a day`, dailyCm, dampingDepthCm(alpha * 1e-6, 1), 0.0051),
      depth(`${alpha}e-6 m2/s, a year`, 100 * yearlyM, dampingDepthCm(alpha * 1e-6, 365), 0.2),
    ]),
  ];
}

function rainRows(): TruthRow[] {
  const prob = truthRows('chance of rain after a dry and a wet day, worked out', '1', tables.rain.source);
  const scale = truthRows('gamma scale of rain, worked out', 'mm', tables.rain.source);
  const monthDays = [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return tables.rain.rows.flatMap(([wetShare = 0, wetDayMm = 0, afterDry = 0, afterWet = 0, gamma = 0]) => {
    const wetDaysCount = monthDays.map((days) => days * wetShare);
    const even = (value: number): number[] => Array<number>(12).fill(value);
    const model = rainModel({
      tmaxC: even(12),
      tminC: even(5),
      rainMm: wetDaysCount.map((days) => days * wetDayMm),
      wetDaysCount,
      radiationMJPerM2Day: even(10),
      sunHours: even(5),
    });
    const name = `${wetShare} wet, ${wetDayMm} mm`;
    return [
      prob(`${name}, after a dry day`, afterDry, model.wetAfterDryProb[0]!, 0.001),
      prob(`${name}, after a wet day`, afterWet, model.wetAfterWetProb[0]!, 0.001),
      scale(name, gamma, model.gammaScaleMm[0]!, 0.01),
    ];
  });
}

export const derivedTableRows = (): TruthRow[] => [
  ...lightRows(),
  ...shortDayRows(),
  ...heatRows(),
  ...groundRows(),
  ...rainRows(),
];
