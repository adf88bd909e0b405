/** The corner temperatures of our tables against published ones. */
import type { CropType } from '../../packages/growing/src/index.ts';
import { numberIn, readFigures, sourceText } from '../figures.ts';
import { seedKindsFor } from '../published-crops.ts';
import { kindFor } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

/** The table goes in steps of five and ten degrees Fahrenheit, and names no definition. */
const germinationToleranceC = 5;
/** Corners come from fits of different forms: a base and a slope trade against each other. */
const growthToleranceC = 3;

const nameOf = (id: string): string => id.slice(id.indexOf(': ') + 2);

/** A best temperature is met anywhere on the plateau. */
function germinationC(kind: CropType, which: string, asked: number): number {
  if (which === 'coldest') return Math.max(kind.emergenceLowestC, kind.emergenceBaseC);
  if (which === 'warmest') return Math.min(kind.emergenceCeilingC, kind.germinationWarmNoneC);
  const [low, high] = [kind.emergenceOptimumC, kind.emergenceOptimumC + kind.emergencePlateauC];
  return Math.min(high, Math.max(low, asked));
}

function germinationRows(split: Split): TruthRow[] {
  return readFigures('germination-temperatures', split).flatMap((figure) => {
    const row = truthRows('temperatures of germination', '°C', sourceText(figure));
    const asked = numberIn(figure, 'soilC');
    return seedKindsFor(figure.crop!).map((kind, i) => ({
      ...row(
        `${nameOf(figure.id)}${i === 0 ? '' : `, ${kind.crop}`}`,
        asked,
        germinationC(kind, figure.which!, asked),
        germinationToleranceC,
        kind.id,
      ),
      figure: figure.id,
    }));
  });
}

function growthRows(split: Split): TruthRow[] {
  return readFigures('growth-temperatures', split).map((figure) => {
    const [low, high] = [numberIn(figure, 'lowC'), numberIn(figure, 'highC')];
    const kind = kindFor(figure.reference!);
    const got = figure.which === 'base' ? kind?.growthBaseC : kind?.growthOptimumC;
    const row = truthRows(`${figure.which} temperature of growth`, '°C', sourceText(figure));
    const tolerance = growthToleranceC + (high - low) / 2;
    return {
      ...row(
        nameOf(figure.id),
        (low + high) / 2,
        got ?? Number.NaN,
        tolerance,
        kind?.id ?? 'no such kind yet',
      ),
      figure: figure.id,
    };
  });
}

export const temperatureRows = (split: Split): TruthRow[] => [
  ...germinationRows(split),
  ...growthRows(split),
];
