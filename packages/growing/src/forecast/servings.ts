import { invariant } from '@twelvemonth/basis';
import { type CropType, type Harvest, type KitchenRole, roleById } from '../crops/index.ts';

const servingGByRole = new Map<KitchenRole, number>();

/** Grams of edible weight in a serving of the role. */
export function servingGOf(role: KitchenRole): number {
  let servingG = servingGByRole.get(role);
  if (servingG === undefined) {
    const row = roleById(role);
    invariant(row !== undefined, 'every kitchen role has a row', { role });
    servingG = row.servingG;
    servingGByRole.set(role, servingG);
  }
  return servingG;
}

/** Servings of so many grams as harvested. */
export function servingsOfG(harvest: Pick<Harvest, 'role' | 'edibleShare'>, harvestedG: number): number {
  return (harvestedG * harvest.edibleShare) / servingGOf(harvest.role);
}

/** Servings of the whole yield (first cut for cuts and tips) of so many plants. */
export function fullServingsOf(harvest: Harvest, plantsCount: number): number {
  return servingsOfG(harvest, plantsCount * harvest.yieldGPerPlant);
}

/** Stations on a square metre at the kind's spacing. */
export function plantsPerM2(kind: CropType): number {
  return 10000 / (kind.inRowCm * kind.betweenRowCm);
}
