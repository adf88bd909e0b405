import { assembleHazard } from './assemble-subjects.ts';
import type { Hazard } from './crop-type.ts';
import { readEach } from './subject-rows.ts';

let hazards: readonly Hazard[] | null = null;

/** A window whose last day comes before its first runs over the turn of the year. */
export function allHazards(): readonly Hazard[] {
  hazards ??= readEach('hazard', assembleHazard);
  return hazards;
}
