import { invariant } from '@twelvemonth/basis';
import { tables } from '../generated/catalogue.ts';
import { assembleKind } from './assemble-kind.ts';
import type { CropType, TableRow } from './crop-type.ts';
import { effectiveRows } from './effective-rows.ts';
import { specFor } from './parameter-spec.ts';
import type { SourceEntry } from './table-types.ts';

export const kindIds: readonly string[] = tables.kindIds;

const assembled = new Map<string, CropType>();

/** The kind, or undefined when the tables have none of that name. */
export function kindById(id: string): CropType | undefined {
  if (!kindIds.includes(id)) return undefined;
  const known = assembled.get(id);
  if (known !== undefined) return known;
  const rows = effectiveRows(tables.rowsBySubject, id);
  const { kind, issues } = assembleKind(id, rows, tables.parameters.kind);
  invariant(issues.length === 0, 'the compiler lets only whole kinds through', { id, issues });
  assembled.set(id, kind);
  return kind;
}

export function allKinds(): readonly CropType[] {
  return kindIds.flatMap((id) => kindById(id) ?? []);
}

/** The rows in force for a kind, each with the subject that it came from. */
export function tableRowsOf(kindId: string): readonly TableRow[] {
  if (!kindIds.includes(kindId)) return [];
  return [...effectiveRows(tables.rowsBySubject, kindId).values()];
}

/** Page of docs/models (without .md) on the model that reads a kind's parameter; null where none does. */
export function modelPageOf(parameter: string): string | null {
  return specFor(tables.parameters.kind, parameter)?.spec.model ?? null;
}

export function allSources(): readonly SourceEntry[] {
  return tables.sources;
}

export function sourceById(id: string): SourceEntry | undefined {
  return tables.sources.find((source) => source.id === id);
}
