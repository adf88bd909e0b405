/** known-gaps.txt: what the engine is known to get wrong, one line each. */
import { readFileSync } from 'node:fs';
import type { Target } from './targets.ts';
import { isMet, type TruthRow, truthRowId } from './truth-row.ts';

export interface KnownGap {
  readonly id: string;
  readonly wrong: string;
  readonly why: string;
  readonly since: string;
}

export function parseKnownGaps(text: string): readonly KnownGap[] {
  const gaps: KnownGap[] = [];
  text.split('\n').forEach((line, i) => {
    if (line.trim() === '' || line.startsWith('#')) return;
    const [id = '', wrong = '', why = '', since = '', ...rest] = line.split('|').map((part) => part.trim());
    if (id === '' || wrong === '' || why === '' || !/^\d{4}-\d{2}-\d{2}$/.test(since) || rest.length > 0)
      throw new Error(`known-gaps.txt line ${i + 1}: not "id | what is wrong | why | since"`);
    if (gaps.some((gap) => gap.id === id))
      throw new Error(`known-gaps.txt line ${i + 1}: ${id} is there twice`);
    gaps.push({ id, wrong, why, since });
  });
  return gaps;
}

export const readKnownGaps = (): readonly KnownGap[] =>
  parseKnownGaps(readFileSync(new URL('../known-gaps.txt', import.meta.url), 'utf8'));

/** How a missed target is named in known-gaps.txt: held-out rows are never named one by one. */
export const targetGapId = (what: string): string => `target: ${what}`;

/** Sentences for every target that is missed unlisted, and every line about one that is reached or unknown. */
export function targetProblems(
  targets: readonly Pick<Target, 'what' | 'got' | 'asked' | 'reached'>[],
  gaps: readonly KnownGap[],
): string[] {
  const lines = new Set(gaps.map((gap) => gap.id).filter(isTargetGap));
  const missed = new Set(targets.filter((t) => !t.reached).map((t) => targetGapId(t.what)));
  return [
    ...targets
      .filter((t) => !t.reached && !lines.has(targetGapId(t.what)))
      .map((t) => `${targetGapId(t.what)} is missed (${t.got} for ${t.asked}) and is not in known-gaps.txt`),
    ...[...lines]
      .filter((id) => !missed.has(id))
      .map((id) => `${id} is no missed target: take its line out of known-gaps.txt`),
  ];
}

const isTargetGap = (id: string): boolean => id.startsWith('target: ');

/** Sentences for every row that fails unlisted, and every gap that has closed or names no row. */
export function gapProblems(rows: readonly TruthRow[], allGaps: readonly KnownGap[]): string[] {
  const gaps = allGaps.filter((gap) => !isTargetGap(gap.id));
  const byId = new Map(rows.map((row) => [truthRowId(row), row]));
  const listed = new Set(gaps.map((gap) => gap.id));
  return [
    ...rows
      .filter((row) => !isMet(row) && !listed.has(truthRowId(row)))
      .map(
        (row) =>
          `${truthRowId(row)} fails (${row.got} ${row.unit}, expected ${row.expected} ± ${row.tolerance}) and is not in known-gaps.txt`,
      ),
    ...gaps.flatMap((gap) => {
      const row = byId.get(gap.id);
      if (row === undefined) return [`known-gaps.txt names ${gap.id}, and there is no such row`];
      return isMet(row) ? [`${gap.id} is met now: take its line out of known-gaps.txt`] : [];
    }),
  ];
}
