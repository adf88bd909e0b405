/**
 * Days from sowing to the first of the heaviest harvest in steady weather of the main season, against published ranges. Kinds
 * that are never sown where they grow lose the days of setting out.
 */
import {
  type CropType,
  effectiveDayDegrees,
  emergenceRate,
  referenceDayCDays,
} from '../../packages/growing/src/index.ts';
import { numberIn } from '../figures.ts';
import { rangeRows, type Said } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import type { TruthRow } from '../truth-row.ts';

/** Light of a summer month at 52° N, outdoors. */
const radiationMJPerM2Day = 17;
/** Soil at sowing depth runs over the air in summer by about so much. */
const soilOverAirC = 1.5;

function daysAt(kind: CropType, meanC: number): Said {
  const own = kind.harvests.filter((harvest) => harvest.after === null && harvest.habit !== 'thinnings');
  const first = own.toSorted((a, b) => b.yieldGPerPlant - a.yieldGPerPlant)[0];
  if (first === undefined || kind.startsAs === 'crown') return { got: Number.NaN, note: 'no first harvest' };
  const heatC = Math.min(meanC, kind.growthOptimumC) - kind.growthBaseC;
  const daily = effectiveDayDegrees(
    heatC,
    radiationMJPerM2Day,
    kind.lightFactor,
    kind.lightCompensationMJPerM2Day,
  );
  const grown = (first.startDays * referenceDayCDays(kind)) / daily;
  const up = kind.startsAs === 'seed' ? 1 / emergenceRate(kind, meanC + soilOverAirC) : 0;
  const check = kind.routes.includes('direct') ? 0 : kind.plantingCheckDays;
  return { got: up + grown + check, note: `${first.id} at ${meanC} °C` };
}

export const firstHarvestRows = (split: Split): TruthRow[] =>
  rangeRows(
    'first-harvest-days',
    split,
    { quantity: 'days to the first harvest in steady weather', unit: 'd', low: 'lowDays', high: 'highDays' },
    (kind, figure) => daysAt(kind, numberIn(figure, 'meanC')),
  );
