/**
 * Effective day-degrees: heat that light lets a plant use (Scaife, Cox & Morris 1987, Ann. Bot. 59), with a light
 * compensation point so that midwinter stands still.
 *
 *   1/E = 1/D + f/(R − R0)      E = 0 where D ≤ 0 or R ≤ R0
 *
 * E effective day-degrees, °C·d · D day-degrees above the crop's base, °C·d · R seven-day mean light inside the cover,
 * MJ/m²/day · f light factor, MJ/m²/day per °C·d (0.1–0.8 by crop) · R0 what the plant burns itself (start 0.6,
 * range 0.3–1.2; 0 where a published sum was fitted without it). R must be daily, never monthly.
 */
export function effectiveDayDegrees(
  dayDegreesC: number,
  radiation7MJPerM2Day: number,
  lightFactor: number,
  compensationMJPerM2Day: number,
): number {
  const light = radiation7MJPerM2Day - compensationMJPerM2Day;
  if (dayDegreesC <= 0 || light <= 0) return 0;
  return 1 / (1 / dayDegreesC + lightFactor / light);
}
