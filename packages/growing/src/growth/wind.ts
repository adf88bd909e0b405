/**
 * Wind on open ground. Plants feel no wind chill: their temperature is the air's. What wind does is dry the ground (a
 * factor on evaporation, places/place-weather.ts), leak the warmth out of covers (a factor on air changes,
 * places/cover-balance.ts), and break, rock and tear: a share of the yield by kind, on open ground in a windy place.
 *
 *   yield = full · (1 − l)       l by kind: `wind-loss-share`
 *
 * Source of the size: field shelter raised yields by 8–23 % (spring wheat 8, maize 12, soya 13, winter wheat 23; Kort
 * 1988), drought included, which is counted apart here. Range: household gardens at 50–58° N; salt is not there.
 */
import type { CropType } from '../crops/crop-type.ts';
import type { Exposure } from '../places/place.ts';

export function windLossShare(kind: CropType, exposure: Exposure | undefined): number {
  const open = exposure?.cover.material === 'open';
  return open && exposure?.windy === true ? kind.windLossShare : 0;
}
