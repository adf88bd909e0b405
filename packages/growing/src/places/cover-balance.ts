/**
 * Air under an unheated cover from a steady heat balance per square metre of ground (standard greenhouse form):
 *
 *   day    ΔT = p · η · Rin / (U·c + 0.33·N·v)      night   ΔT = (q0 + s · Rday) / (U·c + 0.33·N·v), at most `cap`
 *
 * Rin light inside over the hours of day, W/m² · p peak over mean · η share that warms the air · U loss through the
 * cover, W/m²/K · c cover area and v air volume per m² of ground · N air changes per hour · 0.33 W h/m³/K heat of air
 * q0 + s·Rday W/m² of soil heat given back at night, more after a bright day. Above the vent point doors and lights are
 * opened: the maximum stays at the vent point unless even the open house is warmer. Valid for single layers; weak:
 * no wind speed, no long-wave sky term (a few clear still nights are colder inside than this says).
 */
import { coversTable } from '../generated/covers.ts';
import type { CoverInstance } from './place.ts';

export type UnheatedMaterial = Exclude<CoverInstance['material'], 'open' | 'windowsill' | 'heated-mat'>;

export interface CoverBalance {
  /** Daytime lift, °C, for light inside in MJ/m²/day and a day of so many hours. */
  maximumC(outdoorTmaxC: number, insideMJPerM2Day: number, daylightHours: number): number;
  /** Minimum inside after a day with so much light inside. */
  minimumC(outdoorTminC: number, insideBeforeMJPerM2Day: number): number;
}

const airHeatWhPerM3K = 0.33;
const wattsPerMJPerDay = 1e6 / 86400;

export function coverBalance(
  material: UnheatedMaterial,
  ventAboveC: number | null,
  windy: boolean,
): CoverBalance {
  const row = coversTable[material];
  const leak = windy ? coversTable.windy['air-changes-factor'] : 1;
  const loss = (airChanges: number): number =>
    row['u-value'] * row['cover-area-per-floor'] + airHeatWhPerM3K * airChanges * row['volume-per-floor'];
  const shutLoss = loss(row['air-changes-shut'] * leak);
  const openLoss = Math.max(shutLoss, loss(row['air-changes-open'] * leak));
  const ventC = ventAboveC ?? row['vent-above-c'];
  const peak = coversTable['day-heat']['peak-over-mean'];
  return {
    maximumC(outdoorTmaxC, insideMJPerM2Day, daylightHours) {
      if (daylightHours <= 0) return outdoorTmaxC;
      const daytimeWPerM2 = (insideMJPerM2Day * 1e6) / (daylightHours * 3600);
      const heat = peak * row['heat-share'] * daytimeWPerM2;
      const shutC = outdoorTmaxC + heat / shutLoss;
      if (shutC <= ventC) return shutC;
      return Math.max(ventC, outdoorTmaxC + heat / openLoss);
    },
    minimumC(outdoorTminC, insideBeforeMJPerM2Day) {
      const soilHeat =
        row['night-soil-heat'] + row['night-stored-share'] * insideBeforeMJPerM2Day * wattsPerMJPerDay;
      return outdoorTminC + Math.min(row['night-lift-most-c'], soilHeat / shutLoss);
    },
  };
}
