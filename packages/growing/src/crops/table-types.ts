import type { TableRow } from './crop-type.ts';

/** What `tables/parameters.json` says about one parameter. */
export interface ParameterSpec {
  readonly unit: string;
  /** Plausible range of a number: outside it is taken for a slip. */
  readonly low?: number;
  readonly high?: number;
  readonly oneOf?: readonly string[];
  /** Several values, parted by `|`. */
  readonly many?: boolean;
  /** Names something that must exist: a crop, a role, a family, a harvest of the same kind. */
  readonly refers?: string;
  readonly required?: boolean;
  /** Needed when the other parameter holds one of these. */
  readonly requiredWhen?: Readonly<Record<string, readonly string[]>>;
  /** What counts when there is no row and none is needed. */
  readonly whenMissing?: string;
  /** Its low and high columns must be filled. */
  readonly needsRange?: boolean;
  /** Page of docs/models that explains what reads it; missing where no model does. */
  readonly model?: string;
}

export type SubjectSort = 'kind' | 'hazard' | 'role' | 'family-rest' | 'calendar';

export type ParameterSpecs = Readonly<Record<string, ParameterSpec>>;

/** The closed lists that parameters refer to. */
export type KnownNames = Readonly<Record<string, readonly string[]>>;

export interface SourceEntry {
  readonly id: string;
  readonly title: string;
  readonly year?: number;
  readonly publisher?: string;
  readonly authors?: string;
  readonly where?: string;
  readonly licence?: string;
  readonly note?: string;
}

/** Parameter, value, low, high, unit, source, locator, basis, valid for, note: a row under its subject. */
export type PackedRow = readonly [
  parameter: string,
  value: string,
  low: string,
  high: string,
  unit: string,
  source: string,
  locator: string,
  basis: string,
  validFor: string,
  note: string,
];

/** Everything that the compiler hands over: rows by subject, and how to read them. */
export interface CompiledTables {
  readonly kindIds: readonly string[];
  readonly rowsBySubject: Readonly<Record<string, readonly PackedRow[]>>;
  readonly parameters: Readonly<Record<SubjectSort, ParameterSpecs>>;
  readonly names: KnownNames;
  readonly sources: readonly SourceEntry[];
}

export function unpackRow(subject: string, row: PackedRow): TableRow {
  const [parameter, value, low, high, unit, source, locator, basis, validFor, note] = row;
  return { subject, parameter, value, low, high, unit, source, locator, basis, validFor, note };
}
