/** What a square metre gives in all, as harvested, against published ranges. */
import { type CropType, type Harvest, plantsPerM2 } from '../../packages/growing/src/index.ts';
import { rangeRows, type Said } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import type { TruthRow } from '../truth-row.ts';

/** Of one plant, g: a harvest of cuts gives as many as it has, each smaller than the one before. */
function wholeYieldG(harvest: Harvest): number {
  if (harvest.habit === 'thinnings') return 0;
  if (harvest.habit !== 'cuts' && harvest.habit !== 'tips') return harvest.yieldGPerPlant;
  let [cuts, size] = [0, 1];
  for (let cut = 0; cut < harvest.cutsCount; cut++, size *= harvest.cutDecayShare) cuts += size;
  return harvest.yieldGPerPlant * cuts;
}

function kgPerM2(kind: CropType): Said {
  const grams = kind.harvests.map((harvest) => wholeYieldG(harvest));
  // Harvests that end the plant exclude each other (greens or hearts): the heaviest is what a square metre gives.
  const ending = grams.filter((_, i) => kind.harvests[i]!.endsPlant);
  const others = grams.filter((_, i) => !kind.harvests[i]!.endsPlant);
  const all = Math.max(0, ...ending) + others.reduce((a, b) => a + b, 0);
  const got = (all * plantsPerM2(kind) * (1 - kind.growingLossShare)) / 1000;
  return { got, note: `${plantsPerM2(kind).toFixed(1)} plants/m²` };
}

export const yieldRows = (split: Split): TruthRow[] =>
  rangeRows(
    'yields',
    split,
    { quantity: 'yield against the published range', unit: 'kg/m2', low: 'lowKgPerM2', high: 'highKgPerM2' },
    kgPerM2,
  );
