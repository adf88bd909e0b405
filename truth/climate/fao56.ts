import {
  angstromRadiationMJPerM2Day,
  clearSkyRadiationMJPerM2Day,
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  hargreavesEt0Mm,
  meanSaturationVapourKPa,
  netLongwaveMJPerM2Day,
  netShortwaveMJPerM2Day,
  penmanMonteith,
  pressureKPa,
  psychrometricKPaPerC,
  rangeRadiationMJPerM2Day,
  relativeSunDistance,
  saturationVapourKPa,
  solarDeclinationRad,
  sunsetHourAngleRad,
  vapourFromHumidityKPa,
  windAtTwoMetres,
} from '../../packages/growing/src/climate/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const source = 'FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), worked examples';

function uccle(): TruthRow[] {
  const mj = truthRows('FAO-56 example 18, Uccle 6 July', 'MJ/m2/day', source);
  const kPa = truthRows('FAO-56 example 18, Uccle 6 July', 'kPa', source);
  const [latitude, day] = [50.8, 187];
  const outer = extraterrestrialRadiationMJPerM2Day(latitude, day);
  const radiation = angstromRadiationMJPerM2Day(outer, 9.25, daylightHours(latitude, day));
  const wind = windAtTwoMetres(2.78, 10);
  const vapourKPa = vapourFromHumidityKPa(21.5, 12.3, 0.84, 0.63);
  const pm = penmanMonteith({
    tmaxC: 21.5,
    tminC: 12.3,
    vapourKPa,
    windMPerS: wind,
    radiationMJPerM2Day: radiation,
    clearSkyMJPerM2Day: clearSkyRadiationMJPerM2Day(outer, 100),
    elevationM: 100,
  });
  return [
    truthRows('FAO-56 example 18, Uccle 6 July', 'm/s', source)('wind at 2 m', 2.078, wind, 0.002),
    kPa('pressure', 100.1, pm.pressureKPa, 0.06),
    kPa('psychrometric constant per °C', 0.0666, pm.psychrometricKPaPerC, 0.0001),
    kPa('slope of vapour pressure per °C', 0.1221, pm.slopeKPaPerC, 0.0001),
    kPa('saturation vapour pressure', 1.997, pm.saturationKPa, 0.001),
    kPa('actual vapour pressure', 1.409, vapourKPa, 0.001),
    kPa('vapour pressure deficit', 0.589, pm.deficitKPa, 0.001),
    mj('extraterrestrial radiation', 41.09, outer, 0.02),
    mj('radiation from sunshine', 22.07, radiation, 0.01),
    mj('clear-sky radiation', 30.9, clearSkyRadiationMJPerM2Day(outer, 100), 0.02),
    mj('net short-wave', 17.0, pm.netShortwaveMJPerM2Day, 0.05),
    mj('net long-wave', 3.71, pm.netLongwaveMJPerM2Day, 0.01),
    mj('net radiation', 13.28, pm.netRadiationMJPerM2Day, 0.01),
    truthRows('FAO-56 example 18, Uccle 6 July', 'mm/day', source)('ET0', 3.88, pm.et0Mm, 0.01),
  ];
}

function lyon(): TruthRow[] {
  const row = truthRows('FAO-56 example 20, Lyon July', 'mm/day', source);
  const vapourKPa = saturationVapourKPa(14.8);
  const radiation = rangeRadiationMJPerM2Day(40.6, 26.6, 14.8, 0.16);
  const pm = penmanMonteith({
    tmaxC: 26.6,
    tminC: 14.8,
    vapourKPa,
    windMPerS: 2,
    radiationMJPerM2Day: radiation,
    clearSkyMJPerM2Day: clearSkyRadiationMJPerM2Day(40.6, 200),
    elevationM: 200,
  });
  return [
    truthRows('FAO-56 example 15, Lyon July', 'MJ/m2/day', source)(
      'radiation from range',
      22.3,
      radiation,
      0.05,
    ),
    truthRows('FAO-56 example 20, Lyon July', 'kPa', source)(
      'vapour pressure at the minimum',
      1.68,
      vapourKPa,
      0.005,
    ),
    row('ET0 Penman-Monteith, missing data', 4.56, pm.et0Mm, 0.02),
    row('ET0 Hargreaves', 5.03, hargreavesEt0Mm(26.6, 14.8, 40.6), 0.01),
  ];
}

/** Every worked example is one group. */
export const fao56Rows = (): TruthRow[] =>
  exampleRows().map((row) => ({ ...row, group: 'FAO-56 worked examples' }));

function exampleRows(): TruthRow[] {
  const at = (example: string, unit: string) => truthRows(`FAO-56 example ${example}`, unit, source);
  const rio = extraterrestrialRadiationMJPerM2Day(-22.9, 135);
  return [
    at('2', 'kPa')('pressure at 1800 m', 81.8, pressureKPa(1800), 0.05),
    at('2', 'kPa/°C')('psychrometric constant', 0.054, psychrometricKPaPerC(pressureKPa(1800)), 0.0005),
    at('3', 'kPa')('mean saturation', 2.39, meanSaturationVapourKPa(24.5, 15), 0.005),
    at('5', 'kPa')('saturation at 18 °C', 2.064, saturationVapourKPa(18), 0.001),
    at('5', 'kPa')('saturation at 25 °C', 3.168, saturationVapourKPa(25), 0.001),
    at('5', 'kPa')('actual from humidities', 1.7, vapourFromHumidityKPa(25, 18, 0.82, 0.54), 0.005),
    at('5', 'kPa')('actual from the mean humidity', 1.78, 0.68 * meanSaturationVapourKPa(25, 18), 0.005),
    at('5', 'kPa')('actual from the highest humidity', 1.69, 0.82 * saturationVapourKPa(18), 0.005),
    at('4', 'kPa')('saturation at 19.5 °C', 2.267, saturationVapourKPa(19.5), 0.001),
    at('8', '1')('relative distance', 0.985, relativeSunDistance(246), 0.0005),
    at('8', 'rad')('declination', 0.12, solarDeclinationRad(246), 0.0005),
    at('8', 'rad')('sunset hour angle', 1.527, sunsetHourAngleRad(-20, 246), 0.0005),
    at('8', 'MJ/m2/day')(
      'Ra, 20° S, 3 September',
      32.194,
      extraterrestrialRadiationMJPerM2Day(-20, 246),
      0.02,
    ),
    at('9', 'h')('daylight', 11.666, daylightHours(-20, 246), 0.002),
    at('10', 'MJ/m2/day')('Ra, Rio de Janeiro, May', 25.1, rio, 0.05),
    at('10', 'h')('daylight', 10.9, daylightHours(-22.9, 135), 0.05),
    at('10', 'MJ/m2/day')(
      'Rs',
      14.45,
      angstromRadiationMJPerM2Day(rio, 7.1, daylightHours(-22.9, 135)),
      0.03,
    ),
    at('11', 'MJ/m2/day')('net long-wave', 3.5, netLongwaveMJPerM2Day(25.1, 19.1, 2.1, 14.5, 18.8), 0.05),
    at('12', 'MJ/m2/day')('net short-wave', 11.165, netShortwaveMJPerM2Day(14.5), 0.001),
    at('14', 'm/s')('wind at 2 m', 2.4, windAtTwoMetres(3.2, 10), 0.05),
    ...uccle(),
    ...lyon(),
  ];
}
