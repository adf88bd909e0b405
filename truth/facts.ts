/** Facts that a scenario answers: what was published lies in facts.csv, what the engine says comes from an `Answer`. */
import { type Figure, numberIn, readFigures, sourceText } from './figures.ts';
import type { Split } from './split.ts';
import { type TruthRow, truthRowId } from './truth-row.ts';

export interface Answer {
  readonly quantity: string;
  readonly case: string;
  readonly got: number;
  readonly note?: string;
}

/** What the engine says of one quantity, case by case. */
export const answers =
  (quantity: string) =>
  (name: string, got: number, note?: string): Answer => ({
    quantity,
    case: name,
    got,
    ...(note === undefined ? {} : { note }),
  });

function rowOf(figure: Figure, answer: Answer | undefined): TruthRow {
  const cut = figure.id.indexOf(': ');
  return {
    quantity: answer?.quantity ?? figure.id.slice(0, cut),
    case: answer?.case ?? figure.id.slice(cut + 2),
    expected: numberIn(figure, 'expected'),
    got: answer?.got ?? Number.NaN,
    tolerance: numberIn(figure, 'tolerance'),
    unit: figure.unit!,
    source: sourceText(figure),
    ...(answer === undefined ? { note: 'nothing in truth/ computes it' } : {}),
    ...(answer?.note === undefined ? {} : { note: answer.note }),
    ...(figure.figure === '' ? {} : { figure: figure.figure! }),
  };
}

/** Every fact of a split beside its answer; a fact that nothing answers is a row that could not be computed. */
export function factRows(split: Split, given: readonly Answer[]): TruthRow[] {
  const byId = new Map(given.map((answer) => [truthRowId(answer), answer]));
  return readFigures('facts', split).map((figure) => rowOf(figure, byId.get(figure.id)));
}

/** Sentences for answers that no fact of either split asks for: a name that was mistyped or a fact that was taken out. */
export function answersWithoutFact(given: readonly Answer[]): string[] {
  const ids = new Set(
    [...readFigures('facts', 'calibration'), ...readFigures('facts', 'held-out')].map((f) => f.id),
  );
  return given
    .map(truthRowId)
    .filter((id) => !ids.has(id))
    .map((id) => `${id} is answered, and no facts.csv asks for it`);
}
