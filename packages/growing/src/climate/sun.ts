/**
 * Where the sun stands and how long it shines: FAO-56 eq. 21–25 and 34 (Allen et al. 1998) for radiation, and the
 * CBM day length (Forsythe et al. 1995, Ecol. Modelling 80:87–95) where day length itself is asked for.
 *
 *   Ra = 24·60/π · Gsc · dr · (ωs sin φ sin δ + cos φ cos δ sin ωs)        N = 24 ωs / π
 *   θ = 0.2163108 + 2 atan(0.9671396 tan(0.0086 (J − 186)))   declination = asin(0.39795 cos θ)
 *   D = 24 − 24/π · acos((sin p + sin φ sin declination) / (cos φ cos declination))
 *
 * dr relative distance of the sun · δ declination, rad · ωs sunset hour angle, rad · φ latitude, rad
 * Gsc solar constant 0.0820 MJ/m²/min · J day of year · p depth of the sun's centre below the horizon, degrees
 * N is geometric and 0.15–0.4 h shorter than D: use N only inside Ångström–Prescott.
 */
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
const solarConstantMJPerM2Minute = 0.082;

/** Depth of the sun's centre below the horizon at sunrise and sunset with refraction, and at civil twilight. */
export const sunriseHorizonDeg = 0.8333;
export const civilTwilightHorizonDeg = 6;

export const relativeSunDistance = (dayOfYear: number): number =>
  1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);

export const solarDeclinationRad = (dayOfYear: number): number =>
  0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);

export function sunsetHourAngleRad(latitudeDeg: number, dayOfYear: number): number {
  const cosine = -Math.tan(radians(latitudeDeg)) * Math.tan(solarDeclinationRad(dayOfYear));
  return Math.acos(within(cosine, -1, 1));
}

export function extraterrestrialRadiationMJPerM2Day(latitudeDeg: number, dayOfYear: number): number {
  const latitude = radians(latitudeDeg);
  const declination = solarDeclinationRad(dayOfYear);
  const sunset = sunsetHourAngleRad(latitudeDeg, dayOfYear);
  const daily =
    sunset * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return (
    ((24 * 60) / Math.PI) * solarConstantMJPerM2Minute * relativeSunDistance(dayOfYear) * Math.max(0, daily)
  );
}

/** FAO-56 eq. 34: sun centre on a flat horizon, no refraction. */
export const daylightHours = (latitudeDeg: number, dayOfYear: number): number =>
  (24 / Math.PI) * sunsetHourAngleRad(latitudeDeg, dayOfYear);

/** CBM model. 24 where the sun never sets below `horizonDeg`, 0 where it never rises above it. */
export function dayLengthHours(
  latitudeDeg: number,
  dayOfYear: number,
  horizonDeg: number = sunriseHorizonDeg,
): number {
  const theta = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.0086 * (dayOfYear - 186)));
  const declination = Math.asin(0.39795 * Math.cos(theta));
  const latitude = radians(latitudeDeg);
  const cosine =
    (Math.sin(radians(horizonDeg)) + Math.sin(latitude) * Math.sin(declination)) /
    (Math.cos(latitude) * Math.cos(declination));
  return 24 - (24 / Math.PI) * Math.acos(within(cosine, -1, 1));
}

/** Height of the sun at noon, degrees above the horizon (0 in the polar night). */
export const noonSunAltitudeDeg = (latitudeDeg: number, dayOfYear: number): number =>
  Math.max(0, 90 - Math.abs(latitudeDeg - (solarDeclinationRad(dayOfYear) * 180) / Math.PI));
