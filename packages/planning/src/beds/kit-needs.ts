/**
 * Kit that a sowing needs in its bed, by weeks: mesh and nets while a hazard that they prevent is about and the crop is
 * in the ground (young plants only where the hazard is of the young), canes from planting to clearing. Metres are of
 * bed: a strip takes half a metre of any width that one sheet covers; a tub as much.
 */
import { civilFromDay, type Day, dayFromCivil, mondayOf, type Week, weekOfDay } from '@twelvemonth/basis';
import { type CropType, type Hazard, hazardsOf, southernShiftDays } from '@twelvemonth/growing';
import type { GroundClass, OwnedKit } from '../problem.ts';

export type KitId = keyof OwnedKit;

/** Metres, or pieces for canes, from a week to a week (exclusive). */
export interface KitUse {
  readonly kit: KitId;
  readonly fromWeek: Week;
  readonly toWeek: Week;
  readonly amount: number;
  /** Hazards that it keeps off; none for canes. */
  readonly why: readonly string[];
}

export const stripLengthM = 0.5;
/** Kit that is off for no longer than this stays where it is. Judged. */
const staysForWeeks = 3;
/** From sowing in place until the young plants of a hazard of the young are up. Common practice. */
const comesUpDays = 14;

/** Weeks from which and to which (exclusive) a hazard is about while the crop stands. */
function weeksAbout(
  hazard: Hazard,
  fromDay: Day,
  toDay: Day,
  raised: boolean,
  southern: boolean,
): [Week, Week][] {
  const young = hazard.youngDays + (raised ? 0 : comesUpDays);
  const end = hazard.stage === 'young' ? Math.min(toDay, fromDay + young) : toDay;
  const length = (hazard.toDayOfYear - hazard.fromDayOfYear + 365) % 365;
  const spans: [Week, Week][] = [];
  for (let year = civilFromDay(fromDay).year - 1; year <= civilFromDay(end).year; year++) {
    const opens = dayFromCivil(year, 1, 1) + hazard.fromDayOfYear - 1 + (southern ? southernShiftDays : 0);
    const [from, to] = [Math.max(fromDay, opens), Math.min(end, opens + length)];
    if (from < to) spans.push([weekOfDay(from), weekOfDay(to) + 1]);
  }
  return spans;
}

/** Kit of a strip of this kind from a week to a week (exclusive); only what is owned at all is asked for. */
export function kitNeeds(
  kind: CropType,
  ground: GroundClass,
  owned: OwnedKit,
  raised: boolean,
  southern: boolean,
  fromWeek: Week,
  toWeek: Week,
): KitUse[] {
  if (ground.bench !== null || toWeek <= fromWeek) return [];
  const spans: { kit: KitId; from: Week; to: Week; why: string }[] = [];
  for (const hazard of hazardsOf(kind.crop)) {
    if (hazard.preventedBy === null || owned[hazard.preventedBy] <= 0) continue;
    for (const [from, to] of weeksAbout(hazard, mondayOf(fromWeek), mondayOf(toWeek), raised, southern))
      spans.push({ kit: hazard.preventedBy, from, to: Math.min(to, toWeek), why: hazard.id });
  }
  spans.sort((a, b) => a.kit.localeCompare(b.kit) || a.from - b.from || a.to - b.to);
  const uses: { kit: KitId; fromWeek: Week; toWeek: Week; amount: number; why: string[] }[] = [];
  for (const { kit, from, to, why } of spans) {
    const open = uses.at(-1);
    if (open !== undefined && open.kit === kit && from <= open.toWeek + staysForWeeks) {
      open.toWeek = Math.max(open.toWeek, to);
      if (!open.why.includes(why)) open.why.push(why);
    } else uses.push({ kit, fromWeek: from, toWeek: to, amount: stripLengthM, why: [why] });
  }
  if (kind.canesPerM2 > 0 && ground.stripM2 > 0)
    uses.push({ kit: 'canes', fromWeek, toWeek, amount: kind.canesPerM2 * ground.stripM2, why: [] });
  return uses;
}
