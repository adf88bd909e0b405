/** Which kind of ours a published row about a crop speaks of: the first that the catalogue has of those in the table. */
import { type CropType, kindById } from '../packages/growing/src/index.ts';
import { type Figure, numberIn, readFigures, sourceText } from './figures.ts';
import table from './reference-kinds.json' with { type: 'json' };
import type { Split } from './split.ts';
import type { TruthRow } from './truth-row.ts';

const kindsOf = (reference: string): readonly string[] => {
  const ids = (table as Readonly<Record<string, readonly string[]>>)[reference];
  if (ids === undefined) throw new Error(`truth/reference-kinds.json does not have "${reference}"`);
  return ids;
};

export const kindFor = (reference: string): CropType | undefined =>
  kindsOf(reference)
    .map(kindById)
    .find((kind) => kind !== undefined);

/** References that wait for a kind, with the ids that would serve. */
export const referencesWithoutKind = (): readonly string[] =>
  Object.keys(table)
    .filter((reference) => kindFor(reference) === undefined)
    .map((reference) => `${reference} (${kindsOf(reference).join(' or ')})`);

export interface Said {
  /** NaN: the kind has nothing that could be asked. */
  readonly got: number;
  readonly note: string;
}

/** Rows of a table of published ranges: the middle is expected, half the width is the tolerance. */
export function rangeRows(
  name: string,
  split: Split,
  spec: {
    readonly quantity: string;
    readonly unit: string;
    readonly low: string;
    readonly high: string;
    /** Allowed beyond the range, where its ends are rough. */
    readonly slack?: number;
  },
  say: (kind: CropType, figure: Figure) => Said,
): TruthRow[] {
  return readFigures(name, split).map((figure) => {
    const [low, high] = [numberIn(figure, spec.low), numberIn(figure, spec.high)];
    const kind = kindFor(figure.reference!);
    const said = kind === undefined ? { got: Number.NaN, note: 'no such kind yet' } : say(kind, figure);
    return {
      quantity: spec.quantity,
      case: figure.id.slice(figure.id.indexOf(': ') + 2),
      expected: (low + high) / 2,
      got: said.got,
      tolerance: (high - low) / 2 + (spec.slack ?? 0),
      unit: spec.unit,
      source: sourceText(figure),
      note: kind === undefined ? said.note : `${kind.id}: ${said.note}`,
      figure: figure.id,
    };
  });
}
