import {
  angstromRadiationMJPerM2Day,
  clearSkyRadiationMJPerM2Day,
  daylightHours,
  extraterrestrialRadiationMJPerM2Day,
  hargreavesEt0Mm,
  penmanMonteith,
  saturationVapourKPa,
  vapourFromHumidityKPa,
  windAtTwoMetres,
} from '@twelvemonth/growing';
import { z } from 'zod';
import {
  dayOfYear,
  elevationM,
  latitudeDeg,
  measured,
  oneOf,
  radiationMJPerM2Day,
  tmaxC,
  tminC,
} from '../fields.ts';
import { needed, risingTemperatures, sound } from '../named-things.ts';
import { type ProbeAnswer, probeModel, toDecimals } from '../probe-model.ts';

const inputs = z.strictObject({
  method: oneOf(['penman-monteith', 'hargreaves'], 'way of reckoning: FAO-56 eq. 6, 52'),
  latitudeDeg,
  dayOfYear,
  elevationM: elevationM.default(0),
  tmaxC,
  tminC,
  rhMaxShare: measured(0, 1, 'highest relative humidity, share').optional(),
  rhMinShare: measured(0, 1, 'lowest relative humidity, share').optional(),
  vapourPressureKPa: measured(0, 10, 'actual vapour pressure, kPa, in place of humidity').optional(),
  windMs: measured(0, 60, 'wind, m/s').optional(),
  windHeightM: measured(0.5, 100, 'height at which wind is measured, m').default(2),
  sunshineHours: measured(0, 24, 'sunshine, h').optional(),
  radiationMJPerM2Day: radiationMJPerM2Day
    .describe('global radiation, MJ/m²/day, in place of sunshine')
    .optional(),
  soilHeatMJPerM2Day: measured(-15, 15, 'soil heat flux, MJ/m²/day').default(0),
});

function vapourOf(i: z.output<typeof inputs>): number {
  if (i.vapourPressureKPa !== undefined) return i.vapourPressureKPa;
  const most = needed(
    i.rhMaxShare,
    'rhMaxShare',
    'highest relative humidity, share 0 to 1, or "vapourPressureKPa" in its place',
  );
  const least = needed(
    i.rhMinShare,
    'rhMinShare',
    'lowest relative humidity, share 0 to 1, or "vapourPressureKPa" in its place',
  );
  sound(
    least <= most,
    'rhMinShare',
    `Input "rhMinShare" (${least}) is above "rhMaxShare" (${most}). Mend one of them.`,
  );
  return vapourFromHumidityKPa(i.tmaxC, i.tminC, most, least);
}

function penman(i: z.output<typeof inputs>): ProbeAnswer {
  const outer = extraterrestrialRadiationMJPerM2Day(i.latitudeDeg, i.dayOfYear);
  const daylight = daylightHours(i.latitudeDeg, i.dayOfYear);
  const vapour = vapourOf(i);
  const wind = windAtTwoMetres(needed(i.windMs, 'windMs', 'wind, m/s, 0 to 60'), i.windHeightM);
  const windMPerS = i.windHeightM === 2 ? i.windMs! : wind;
  let radiation = i.radiationMJPerM2Day;
  if (radiation === undefined) {
    const sun = needed(
      i.sunshineHours,
      'sunshineHours',
      'sunshine, h, 0 to 24, or "radiationMJPerM2Day" in its place',
    );
    sound(
      sun <= daylight + 0.5,
      'sunshineHours',
      `Input "sunshineHours" (${sun} h) is longer than the day (${daylight.toFixed(1)} h). Give the hours of that day.`,
    );
    radiation = angstromRadiationMJPerM2Day(outer, sun, daylight);
  }
  const clearSky = clearSkyRadiationMJPerM2Day(outer, i.elevationM);
  sound(
    clearSky > 0,
    'dayOfYear',
    'The sun does not rise on this day: net long-wave radiation cannot be told from cloud. Take another "dayOfYear".',
  );
  const {
    slopeKPaPerC: slope,
    psychrometricKPaPerC: gamma,
    ...pm
  } = penmanMonteith({
    tmaxC: i.tmaxC,
    tminC: i.tminC,
    vapourKPa: vapour,
    windMPerS,
    radiationMJPerM2Day: radiation,
    clearSkyMJPerM2Day: clearSky,
    elevationM: i.elevationM,
    soilHeatMJPerM2Day: i.soilHeatMJPerM2Day,
  });
  sound(
    pm.deficitKPa >= 0,
    'vapourPressureKPa',
    `The vapour pressure (${vapour.toFixed(3)} kPa) is above saturation (${pm.saturationKPa.toFixed(3)} kPa). Give a lower one.`,
  );
  const meanC = (i.tmaxC + i.tminC) / 2;
  const below = slope + gamma * (1 + 0.34 * windMPerS);
  return {
    et0Mm: toDecimals(pm.et0Mm, 2),
    meanC,
    windAtTwoMetresMs: windMPerS,
    pressureKPa: pm.pressureKPa,
    slopeKPaPerC: slope,
    psychrometricKPaPerC: gamma,
    windFactor: 1 + 0.34 * windMPerS,
    slopeShare: slope / below,
    psychrometricShare: gamma / below,
    aerodynamicFactor: (900 / (meanC + 273)) * windMPerS,
    saturationAtTmaxKPa: saturationVapourKPa(i.tmaxC),
    saturationAtTminKPa: saturationVapourKPa(i.tminC),
    saturationKPa: pm.saturationKPa,
    vapourPressureKPa: vapour,
    deficitKPa: pm.deficitKPa,
    extraterrestrialRadiationMJPerM2Day: outer,
    daylightHours: daylight,
    radiationMJPerM2Day: radiation,
    clearSkyMJPerM2Day: clearSky,
    relativeRadiationShare: Math.min(1, radiation / clearSky),
    netShortwaveMJPerM2Day: pm.netShortwaveMJPerM2Day,
    netLongwaveMJPerM2Day: pm.netLongwaveMJPerM2Day,
    netRadiationMJPerM2Day: pm.netRadiationMJPerM2Day,
    soilHeatMJPerM2Day: i.soilHeatMJPerM2Day,
    availableMm: 0.408 * (pm.netRadiationMJPerM2Day - i.soilHeatMJPerM2Day),
  };
}

export const evapotranspirationProbe = probeModel({
  name: 'evapotranspiration',
  about: 'reference evapotranspiration by Penman–Monteith with every intermediate, or by Hargreaves (FAO-56)',
  inputs,
  outputs: {
    et0Mm: 'mm/day, two decimals',
    meanC: 'mean of the day, °C',
    windAtTwoMetresMs: 'wind at 2 m, m/s',
    pressureKPa: 'kPa',
    slopeKPaPerC: 'Δ, kPa/°C',
    psychrometricKPaPerC: 'γ, kPa/°C',
    windFactor: '1 + 0.34 u2',
    slopeShare: 'Δ/(Δ + γ(1 + 0.34 u2))',
    psychrometricShare: 'γ/(Δ + γ(1 + 0.34 u2))',
    aerodynamicFactor: '900 u2/(T + 273)',
    saturationAtTmaxKPa: 'kPa',
    saturationAtTminKPa: 'kPa',
    saturationKPa: 'es, kPa',
    vapourPressureKPa: 'ea, kPa',
    deficitKPa: 'es − ea, kPa',
    extraterrestrialRadiationMJPerM2Day: 'Ra, MJ/m²/day',
    daylightHours: 'N, h',
    radiationMJPerM2Day: 'Rs, MJ/m²/day',
    clearSkyMJPerM2Day: 'Rso, MJ/m²/day',
    relativeRadiationShare: 'Rs/Rso, at most 1',
    netShortwaveMJPerM2Day: 'Rns, MJ/m²/day',
    netLongwaveMJPerM2Day: 'Rnl, MJ/m²/day',
    netRadiationMJPerM2Day: 'Rn, MJ/m²/day',
    soilHeatMJPerM2Day: 'G, MJ/m²/day',
    availableMm: '0.408 (Rn − G), mm/day',
  },
  example: {
    method: 'penman-monteith',
    latitudeDeg: 50.8,
    dayOfYear: 187,
    elevationM: 100,
    tmaxC: 21.5,
    tminC: 12.3,
    rhMaxShare: 0.84,
    rhMinShare: 0.63,
    windMs: 2.78,
    windHeightM: 10,
    sunshineHours: 9.25,
  },
  answer: (i) => {
    risingTemperatures(i.tminC, i.tmaxC);
    if (i.method === 'penman-monteith') return penman(i);
    const outer = extraterrestrialRadiationMJPerM2Day(i.latitudeDeg, i.dayOfYear);
    return {
      et0Mm: toDecimals(hargreavesEt0Mm(i.tmaxC, i.tminC, outer), 2),
      meanC: (i.tmaxC + i.tminC) / 2,
      extraterrestrialRadiationMJPerM2Day: outer,
    };
  },
});
