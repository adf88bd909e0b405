import { civilFromDay, type Day } from '@twelvemonth/basis';
import type { Hazard } from '../crops/crop-type.ts';
import type { Member } from '../forecast/member.ts';
import type { SowingPlan } from '../forecast/sowing-plan.ts';
import { coversTable } from '../generated/covers.ts';
import { frostLostShare } from './frost.ts';
import { hazardSurvivalShare } from './hazard-loss.ts';
import { NEVER } from './place-clock.ts';
import type { Raised } from './raising.ts';

/** Shares of the plants set out that are still there on a day, frost and hazards apart. Ask with rising days. */
export interface Survival {
  frost(day: Day): number;
  /** How much colder it may be for the same loss, under the cover or fleece of the plan, °C. */
  readonly frostGainC: number;
  hazards(day: Day): number;
}

export function survivalOf(
  member: Member,
  plan: SowingPlan,
  raised: Raised,
  hazards: readonly Hazard[],
  underCover: boolean,
  southern: boolean,
  youngUntilDay: Day,
): Survival {
  const margins = raised.bed.frostMargins(plan.kind);
  const { frostCoverGainC, frostFleeceGainC, frostYoungC, frostRegrowthShare } = plan.kind;
  const gainC = underCover ? frostCoverGainC : plan.protection.includes('fleece') ? frostFleeceGainC : 0;
  const exposedDay = Math.max(raised.groundDay, raised.emergenceDay);
  const firstWeek =
    exposedDay >= NEVER ? margins.length : Math.max(0, Math.ceil((exposedDay - raised.bed.startDay) / 7));
  let checkedWeek = firstWeek;
  let smallest = 99;
  const youngWeeks = Math.ceil((Math.min(youngUntilDay, NEVER) - raised.bed.startDay) / 7);
  return {
    frostGainC: gainC,
    frost: (day) => {
      const until = Math.min(margins.length, Math.floor((day - raised.bed.startDay) / 7));
      for (; checkedWeek < until; checkedWeek++) {
        const margin = margins[checkedWeek]! - (checkedWeek < youngWeeks ? frostYoungC : 0);
        if (margin < smallest) smallest = margin;
      }
      return 1 - frostLostShare(smallest + gainC) * (1 - frostRegrowthShare);
    },
    hazards: (day) => {
      if (raised.groundDay >= NEVER) return 1;
      let share = 1;
      for (const hazard of hazards) {
        if (hazard.trigger === 'blight') continue;
        const youngUntil = Math.max(raised.groundDay, Math.min(raised.emergenceDay, day)) + hazard.youngDays;
        const prevented = hazard.preventedBy !== null && plan.protection.includes(hazard.preventedBy);
        share *= hazardSurvivalShare(
          hazard,
          raised.groundDay,
          day,
          youngUntil,
          underCover,
          prevented,
          southern,
          member.hazardYears,
        );
      }
      return share;
    },
  };
}

/** A member has a blight year or not: in bad years the first spell of the window infects, in ordinary ones a later one. */
function infects(member: Member, hazard: Hazard, day: Day, dayOfYearNorth: number): boolean {
  if (dayOfYearNorth < hazard.fromDayOfYear || dayOfYearNorth > hazard.toDayOfYear) return false;
  if (dayOfYearNorth >= hazard.ordinaryYearFromDayOfYear) return true;
  const { year } = civilFromDay(day - (dayOfYearNorth - hazard.fromDayOfYear));
  return member.hazardYears.isBad(hazard.group, year, hazard.badYearProb);
}

/** Day on which blight ends the growth of the crop (some days after the spell that infects), or NEVER. */
export function blightEndDay(
  member: Member,
  hazards: readonly Hazard[],
  fromDay: Day,
  underCover: boolean,
  dayOfYearNorth: (day: Day) => number,
): Day {
  for (const hazard of hazards) {
    if (hazard.trigger !== 'blight' || (underCover && hazard.underCoverShare < 0.5)) continue;
    for (const day of member.blightDays) {
      if (day < fromDay + hazard.youngDays) continue;
      if (infects(member, hazard, day, dayOfYearNorth(day))) return day + coversTable.blight['days-to-end'];
    }
  }
  return NEVER;
}
