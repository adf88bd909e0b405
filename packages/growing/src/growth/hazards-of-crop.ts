import type { Hazard } from '../crops/crop-type.ts';
import { allHazards } from '../crops/index.ts';

const byCrop = new Map<string, readonly Hazard[]>();

export function hazardsOf(crop: string): readonly Hazard[] {
  let hazards = byCrop.get(crop);
  if (hazards === undefined) {
    hazards = allHazards().filter((hazard) => hazard.crops.includes(crop));
    byCrop.set(crop, hazards);
  }
  return hazards;
}
