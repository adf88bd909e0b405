/**
 * Reference evapotranspiration ET0, mm/day: FAO-56 Penman–Monteith (eq. 6) with every intermediate, and Hargreaves
 * (eq. 52), after Allen, Pereira, Raes & Smith 1998.
 *
 *   ET0 = (0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)) / (Δ + γ (1 + 0.34 u2))
 *   ET0 = 0.0023 (T + 17.8) √(Tmax − Tmin) · 0.408 Ra
 *
 * P pressure, kPa · γ psychrometric constant, kPa/°C · es, ea saturation and actual vapour pressure, kPa · Δ slope of
 * the vapour pressure curve, kPa/°C · u2 wind at 2 m, m/s · Rs, Rso, Rns, Rnl, Rn, G MJ/m²/day (albedo 0.23).
 */
export const pressureKPa = (elevationM: number): number => {
  const base = (293 - 0.0065 * elevationM) / 293;
  return 101.3 * Math.exp(5.26 * Math.log(base));
};

export const psychrometricKPaPerC = (pressure: number): number => 0.000665 * pressure;

export const saturationVapourKPa = (temperatureC: number): number =>
  0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));

export const meanSaturationVapourKPa = (tmaxC: number, tminC: number): number =>
  (saturationVapourKPa(tmaxC) + saturationVapourKPa(tminC)) / 2;

export const vapourFromHumidityKPa = (
  tmaxC: number,
  tminC: number,
  humidityMaxShare: number,
  humidityMinShare: number,
): number =>
  (saturationVapourKPa(tminC) * humidityMaxShare + saturationVapourKPa(tmaxC) * humidityMinShare) / 2;

export const vapourSlopeKPaPerC = (temperatureC: number): number =>
  (4098 * saturationVapourKPa(temperatureC)) / (temperatureC + 237.3) ** 2;

/** Wind at 2 m from wind at another height (eq. 47). */
export const windAtTwoMetres = (windMPerS: number, heightM: number): number =>
  (windMPerS * 4.87) / Math.log(67.8 * heightM - 5.42);

export const netShortwaveMJPerM2Day = (radiationMJPerM2Day: number, albedo = 0.23): number =>
  (1 - albedo) * radiationMJPerM2Day;

export function netLongwaveMJPerM2Day(
  tmaxC: number,
  tminC: number,
  vapourKPa: number,
  radiationMJPerM2Day: number,
  clearSkyMJPerM2Day: number,
): number {
  const stefanBoltzmannMJPerK4M2Day = 4.903e-9;
  const meanFourth = ((tmaxC + 273.16) ** 4 + (tminC + 273.16) ** 4) / 2;
  const cloud = 1.35 * Math.min(1, radiationMJPerM2Day / clearSkyMJPerM2Day) - 0.35;
  return stefanBoltzmannMJPerK4M2Day * meanFourth * (0.34 - 0.14 * Math.sqrt(vapourKPa)) * cloud;
}

export interface PenmanMonteithInput {
  readonly tmaxC: number;
  readonly tminC: number;
  readonly vapourKPa: number;
  readonly windMPerS: number;
  readonly radiationMJPerM2Day: number;
  readonly clearSkyMJPerM2Day: number;
  readonly elevationM: number;
  readonly soilHeatMJPerM2Day?: number;
}

export interface PenmanMonteith {
  readonly pressureKPa: number;
  readonly psychrometricKPaPerC: number;
  readonly slopeKPaPerC: number;
  readonly saturationKPa: number;
  readonly deficitKPa: number;
  readonly netShortwaveMJPerM2Day: number;
  readonly netLongwaveMJPerM2Day: number;
  readonly netRadiationMJPerM2Day: number;
  readonly et0Mm: number;
}

export function penmanMonteith(input: PenmanMonteithInput): PenmanMonteith {
  const meanC = (input.tmaxC + input.tminC) / 2;
  const pressure = pressureKPa(input.elevationM);
  const psychrometric = psychrometricKPaPerC(pressure);
  const slope = vapourSlopeKPaPerC(meanC);
  const saturation = meanSaturationVapourKPa(input.tmaxC, input.tminC);
  const deficit = saturation - input.vapourKPa;
  const shortwave = netShortwaveMJPerM2Day(input.radiationMJPerM2Day);
  const longwave = netLongwaveMJPerM2Day(
    input.tmaxC,
    input.tminC,
    input.vapourKPa,
    input.radiationMJPerM2Day,
    input.clearSkyMJPerM2Day,
  );
  const net = shortwave - longwave;
  const radiative = 0.408 * slope * (net - (input.soilHeatMJPerM2Day ?? 0));
  const aerodynamic = ((psychrometric * 900) / (meanC + 273)) * input.windMPerS * deficit;
  return {
    pressureKPa: pressure,
    psychrometricKPaPerC: psychrometric,
    slopeKPaPerC: slope,
    saturationKPa: saturation,
    deficitKPa: deficit,
    netShortwaveMJPerM2Day: shortwave,
    netLongwaveMJPerM2Day: longwave,
    netRadiationMJPerM2Day: net,
    et0Mm: (radiative + aerodynamic) / (slope + psychrometric * (1 + 0.34 * input.windMPerS)),
  };
}

export const hargreavesEt0Mm = (tmaxC: number, tminC: number, extraterrestrialMJPerM2Day: number): number =>
  Math.max(
    0,
    0.0023 *
      ((tmaxC + tminC) / 2 + 17.8) *
      Math.sqrt(Math.max(0, tmaxC - tminC)) *
      0.408 *
      extraterrestrialMJPerM2Day,
  );
