import { type CropType, modelPageOf, type SourceEntry, type TableRow } from '@twelvemonth/growing';
import { plainSpaces, wrapText } from '@twelvemonth/workflows';
import { capital } from './number-words.ts';

const rolesOf = (kind: CropType): string[] => [...new Set(kind.harvests.map((h) => h.role as string))];

/** The catalogue, kind under kitchen role. */
export function kindsLines(kinds: readonly CropType[], roleNames: ReadonlyMap<string, string>): string[] {
  const width = Math.max(2, ...kinds.map((kind) => kind.id.length));
  const lines = [`${kinds.length} kinds. One with every value and its source: twelvemonth kinds ID`];
  for (const [role, name] of roleNames) {
    const own = kinds.filter((kind) => rolesOf(kind)[0] === role);
    if (own.length === 0) continue;
    lines.push('', capital(name));
    for (const kind of own) {
      const also = rolesOf(kind).slice(1);
      const more = also.length === 0 ? '' : `; also ${also.map((r) => roleNames.get(r) ?? r).join(', ')}`;
      const entry = `${kind.id.padEnd(width)}  ${kind.name}${more}`.replaceAll('  ', '\u00a0\u00a0');
      lines.push(...wrapText(entry, 78, width + 2).map((line) => plainSpaces(`  ${line}`)));
    }
  }
  return lines;
}

const basisWords: Readonly<Record<string, string>> = {
  judged: 'judged: no source found',
  practice: 'practice',
  own: 'your own figure',
  memory: 'from a recollection of the literature',
};

function rowLine(row: TableRow): string {
  const range = row.low === '' ? '' : ` (${row.low} – ${row.high})`;
  const unit = row.unit === 'text' || row.unit === '' ? '' : ` ${row.unit}`;
  return `${row.parameter}: ${row.value}${unit}${range}`;
}

function originLine(row: TableRow, sourceById: (id: string) => SourceEntry | undefined): string {
  const source = sourceById(row.source);
  const named =
    source === undefined
      ? (basisWords[row.basis] ?? row.basis)
      : `${source.authors === undefined ? '' : `${source.authors}: `}${source.title}${source.year === undefined ? '' : ` (${source.year})`}${row.locator === '' ? '' : `, ${row.locator}`}`;
  const from = row.subject.startsWith('kind:') ? '' : ` [for all of ${row.subject.replace(':', ' ')}]`;
  const where = row.validFor === '' ? '' : `; holds for ${row.validFor}`;
  const page = modelPageOf(row.parameter);
  const model = page === null ? '' : ` -> docs/models/${page}.md`;
  return `${named}${where}${from}${row.note === '' ? '' : `. ${row.note}`}${model}`;
}

/** One kind: every value in force, with where it comes from. */
export function kindLines(
  kind: CropType,
  rows: readonly TableRow[],
  sourceById: (id: string) => SourceEntry | undefined,
  roleNames: ReadonlyMap<string, string>,
): string[] {
  const roles = rolesOf(kind).map((role) => roleNames.get(role) ?? role);
  return [
    `${capital(kind.name)} (${kind.id})`,
    `feeds ${roles.join(', ')}; starts as ${kind.startsAs}; raised ${kind.routes.join(', ')}; grows in ${kind.growsIn.join(', ')}`,
    '',
    ...rows.flatMap((row) => [
      rowLine(row),
      ...wrapText(originLine(row, sourceById), 92).map((line) => `    ${line}`),
    ]),
  ].map((line) => line.trimEnd());
}
