/** The catalogue with some constants at other values, by the tables' own rules: kind over crop over family over `*`. */
import { assembleKind } from '../../packages/growing/src/crops/assemble-kind.ts';
import { effectiveRows } from '../../packages/growing/src/crops/effective-rows.ts';
import { tables } from '../../packages/growing/src/generated/catalogue.ts';
import type { CropType } from '../../packages/growing/src/index.ts';
import type { Constant } from './constant.ts';

export type KindOf = (id: string) => CropType;

/** Kinds in which each constant holds the value of the same place in `values`. */
export function kindsWith(constants: readonly Constant[], values: ArrayLike<number>): KindOf {
  const made = new Map<string, CropType>();
  return (id) => {
    const known = made.get(id);
    if (known !== undefined) return known;
    const rows = new Map(effectiveRows(tables.rowsBySubject, id));
    constants.forEach(({ subject, parameter }, i) => {
      const row = rows.get(parameter);
      if (row?.subject === subject) rows.set(parameter, { ...row, value: String(values[i]) });
    });
    const { kind, issues } = assembleKind(id, rows, tables.parameters.kind);
    if (issues.length > 0) throw new Error(`${id} is not whole with these constants: ${issues[0]!.code}`);
    made.set(id, kind);
    return kind;
  };
}
