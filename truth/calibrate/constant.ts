/** A judged constant of the tables: where it stands, what it is, how far it may go. */
import { unpackRow } from '../../packages/growing/src/crops/table-types.ts';
import { tables } from '../../packages/growing/src/generated/catalogue.ts';

export interface Constant {
  readonly subject: string;
  readonly parameter: string;
  readonly value: number;
  /** The row's range: the prior's 95 %, and a bound. */
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

export const constantId = ({ subject, parameter }: Pick<Constant, 'subject' | 'parameter'>): string =>
  `${subject} ${parameter}`;

/** Standard deviation of the prior: a range is about two of them either way. */
export const priorSd = ({ low, high }: Constant): number => (high - low) / 4;

/** Throws a sentence for a row that is not there, was measured, or carries no range: those are not ours to fit. */
export function judgedConstant(subject: string, parameter: string): Constant {
  const packed = tables.rowsBySubject[subject]?.find((row) => row[0] === parameter);
  const id = `${subject} ${parameter}`;
  if (packed === undefined)
    throw new Error(`${id}: no table has this row. Name one as it stands in a table.`);
  const row = unpackRow(subject, packed);
  if (row.basis !== 'judged')
    throw new Error(`${id} is ${row.basis}, not judged. Only judged constants are fitted.`);
  const [value, low, high] = [row.value, row.low, row.high].map(Number) as [number, number, number];
  if (row.low === '' || row.high === '' || !(low < high))
    throw new Error(`${id} has no range. Give low and high first.`);
  return { subject, parameter, value, low, high, unit: row.unit };
}
