/**
 * A forecast context in which one cover is gone from a day on. Places under it have torn weather, and plants there lose
 * what the cover gave them against frost; fleece of the household counts from then on as it does in the open. What is
 * begun after that day belongs on `openedKey`: uncovered ground in every respect, pests and blight as well.
 */
import type { Day } from '@twelvemonth/basis';
import type { CropType } from '../crops/crop-type.ts';
import { makePlaceClock, type PlaceClock } from '../growth/place-clock.ts';
import { placeWeather } from '../places/index.ts';
import type { Exposure } from '../places/place.ts';
import { tornPlaceWeather } from '../places/torn-place-weather.ts';
import type { ForecastContext, Member } from './member.ts';

export interface TornCover {
  /** Id of the cover instance. */
  readonly cover: string;
  readonly day: Day;
  /** Fleece at hand softens the frost from then on. */
  readonly hasFleece: boolean;
}

/** Key of the uncovered ground that is left of an exposure. */
export const openedKey = (exposureKey: string): string => `${exposureKey}|torn`;

const openedOf = (exposure: Exposure): Exposure => ({
  ...exposure,
  cover: { id: 'open', material: 'open', ageYears: 0, ventAboveC: null, faces: null },
});

/** A clock whose weekly frost margins have lost, from a day on, what the cover was worth beside its warmth. */
function withoutCoverGain(clock: PlaceClock, { day, hasFleece }: TornCover): PlaceClock {
  const fromWeek = Math.max(0, Math.floor((day - clock.startDay) / 7));
  const byKind = new Map<CropType, Float32Array>();
  return {
    ...clock,
    frostMargins: (kind) => {
      const known = byKind.get(kind);
      if (known !== undefined) return known;
      const lostC = kind.frostCoverGainC - (hasFleece ? kind.frostFleeceGainC : 0);
      const margins = clock.frostMargins(kind).map((margin, w) => (w < fromWeek ? margin : margin - lostC));
      byKind.set(kind, margins);
      return margins;
    },
  };
}

function tornMember(member: Member, context: ForecastContext, torn: TornCover): Member {
  const clocks = new Map<string, PlaceClock>();
  const open = (key: string, exposure: Exposure): PlaceClock => {
    const found = clocks.get(openedKey(key));
    if (found !== undefined) return found;
    const clock = makePlaceClock(placeWeather(context.site, member.outdoor, openedOf(exposure), 0));
    clocks.set(openedKey(key), clock);
    return clock;
  };
  return {
    ...member,
    get blightDays() {
      return member.blightDays;
    },
    clockOf: (key) => {
      const known = clocks.get(key);
      if (known !== undefined) return known;
      for (const [covered, exposure] of context.exposures) {
        if (exposure.cover.id !== torn.cover) continue;
        if (key === openedKey(covered)) return open(covered, exposure);
        if (key !== covered) continue;
        const whole = member.clockOf(key).weather;
        const weather = tornPlaceWeather(whole, open(key, exposure).weather, torn.day);
        const clock = withoutCoverGain(makePlaceClock(weather), torn);
        clocks.set(key, clock);
        return clock;
      }
      return member.clockOf(key);
    },
  };
}

export function withTornCover(context: ForecastContext, torn: TornCover): ForecastContext {
  const exposures = new Map(context.exposures);
  for (const [key, exposure] of context.exposures)
    if (exposure.cover.id === torn.cover) exposures.set(openedKey(key), openedOf(exposure));
  return { ...context, exposures, members: context.members.map((m) => tornMember(m, context, torn)) };
}
