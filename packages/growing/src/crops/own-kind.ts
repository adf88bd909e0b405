import type { Issue } from '@twelvemonth/basis';
import { tables } from '../generated/catalogue.ts';
import { assembleKind } from './assemble-kind.ts';
import { kindIds } from './catalogue.ts';
import type { CropType, TableRow } from './crop-type.ts';
import { effectiveRows } from './effective-rows.ts';
import { faultOfValue, specFor, valuesOf } from './parameter-spec.ts';

export type OwnKind =
  | { readonly kind: CropType; readonly rows: readonly TableRow[] }
  | { readonly issues: readonly Issue[] };

/** A changed value; low and high are needed where the tables need them, and otherwise may be left out. */
export interface ChangedValue {
  readonly value: string | number;
  readonly low?: number;
  readonly high?: number;
}

export interface OwnKindRequest {
  readonly id: string;
  readonly parent: string;
  /** By the parameter names of the tables: `harvest.leaves.yield-g-per-plant`. */
  readonly changes: Readonly<Record<string, string | number | ChangedValue>>;
}

const asChanged = (change: string | number | ChangedValue): ChangedValue =>
  typeof change === 'object' ? change : { value: change };

function ownRow(id: string, parameter: string, change: ChangedValue, parent: TableRow | undefined): TableRow {
  const value = String(change.value);
  const wasValue = Number(parent?.value);
  const stretch = wasValue > 0 ? Number(value) / wasValue : 1;
  const stretched = (bound: string | undefined): string =>
    bound === undefined || bound === '' ? '' : String(Number((Number(bound) * stretch).toPrecision(4)));
  return {
    subject: `kind:${id}`,
    parameter,
    value,
    low: change.low === undefined ? stretched(parent?.low) : String(change.low),
    high: change.high === undefined ? stretched(parent?.high) : String(change.high),
    unit: parent?.unit ?? specFor(tables.parameters.kind, parameter)?.spec.unit ?? '',
    source: '',
    locator: '',
    basis: 'own',
    validFor: '',
    note: `changed from ${parent?.subject ?? 'nothing'}`,
  };
}

function changeIssue(where: string, parameter: string, row: TableRow): Issue | null {
  const issue = (code: string, detail: Issue['detail'] = {}): Issue => ({
    code,
    severity: 'error',
    where,
    detail: { parameter, value: row.value, ...detail },
  });
  const found = specFor(tables.parameters.kind, parameter);
  if (found === null) return issue('own-kind.parameter-unknown');
  const fault = faultOfValue(found, row.value, tables.names);
  if (fault !== null) return issue(`own-kind.${fault.fault}`, { ...fault });
  const strangers = found.spec.unit !== 'text' && row.low !== '' && !(Number(row.low) <= Number(row.value));
  const tooHigh = found.spec.unit !== 'text' && row.high !== '' && !(Number(row.value) <= Number(row.high));
  if (strangers || tooHigh) return issue('own-kind.range-disordered', { low: row.low, high: row.high });
  if (
    found.spec.refers === 'crop' &&
    !valuesOf(row.value).every((crop) => `crop:${crop}` in tables.rowsBySubject)
  )
    return issue('own-kind.crop-unknown');
  return null;
}

/** A kind that a garden file describes as "like that one, but": parent kind and changed parameters. */
export function assembleOwnKind({ id, parent, changes }: OwnKindRequest): OwnKind {
  const where = `kind:${id}`;
  if (!kindIds.includes(parent))
    return {
      issues: [{ code: 'own-kind.parent-unknown', severity: 'error', where, detail: { parent } }],
    };
  if (kindIds.includes(id))
    return { issues: [{ code: 'own-kind.id-taken', severity: 'error', where, detail: { id } }] };
  const parentRows = effectiveRows(tables.rowsBySubject, parent);
  const ownRows = Object.entries(changes).map(([parameter, change]) =>
    ownRow(id, parameter, asChanged(change), parentRows.get(parameter)),
  );
  const issues = ownRows.flatMap((row) => changeIssue(where, row.parameter, row) ?? []);
  if (issues.length > 0) return { issues };
  const rows = effectiveRows(tables.rowsBySubject, parent, ownRows);
  const built = assembleKind(id, rows, tables.parameters.kind);
  if (built.issues.length > 0) return { issues: built.issues };
  return { kind: built.kind, rows: [...rows.values()] };
}
