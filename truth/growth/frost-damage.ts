/** Temperatures of frost damage: the killing temperatures of a kind, soft to hardened, must meet the published range. */
import { numberIn, readFigures, sourceText } from '../figures.ts';
import { kindFor } from '../reference-kinds.ts';
import type { Split } from '../split.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

/** Thermometers stand at different heights, and kinds differ within a crop. */
const toleranceC = 1.5;

/** Degrees between two ranges: below (−) or above (+) the published one, 0 where they meet. */
function apartC(coldC: number, warmC: number, fromC: number, toC: number): number {
  if (warmC < fromC) return warmC - fromC;
  return coldC > toC ? coldC - toC : 0;
}

export function frostDamageRows(split: Split): TruthRow[] {
  return readFigures('frost-damage', split).map((figure) => {
    const kind = kindFor(figure.reference!);
    const row = truthRows('killing temperature outside the published range', '°C', sourceText(figure));
    const name = figure.id.slice(figure.id.indexOf(': ') + 2);
    const softC = figure.state === 'hardened' ? kind?.frostHardenedC : kind?.frostSoftC;
    const got =
      kind === undefined
        ? Number.NaN
        : apartC(kind.frostHardenedC, softC!, numberIn(figure, 'fromC'), numberIn(figure, 'toC'));
    const said =
      kind === undefined ? 'no such kind yet' : `${kind.id}: ${kind.frostSoftC} to ${kind.frostHardenedC}`;
    return { ...row(name, 0, got, toleranceC, said), figure: figure.id };
  });
}
