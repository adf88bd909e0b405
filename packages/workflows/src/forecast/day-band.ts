import { isoFromDay } from '@twelvemonth/basis';
import { NEVER } from '@twelvemonth/growing';
import type { DayBand } from '../report/plan-report.ts';

/** The commonest reason, the first of equals. */
function commonest(reasons: readonly (string | null)[]): string | null {
  const counts = new Map<string, number>();
  for (const reason of reasons) if (reason !== null) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  let best: string | null = null;
  for (const [reason, n] of counts) if (best === null || n > counts.get(best)!) best = reason;
  return best;
}

/**
 * Days over members in three numbers (type 6). Members in which it never comes count as later than any day; a number
 * that falls among them is null, with the commonest reason.
 */
export function dayBandOf(days: readonly number[], reasons: readonly (string | null)[]): DayBand {
  const sorted = [...days].sort((a, b) => a - b);
  const at = (prob: number): string | null => {
    const position = prob * (sorted.length + 1) - 1;
    const below = Math.min(sorted.length - 1, Math.max(0, Math.floor(position)));
    const above = Math.min(sorted.length - 1, below + 1);
    if (sorted.length === 0 || sorted[below]! >= NEVER) return null;
    if (position > below && sorted[above]! >= NEVER) return null;
    const part = Math.min(1, Math.max(0, position - below));
    return isoFromDay(Math.round(sorted[below]! + part * (sorted[above]! - sorted[below]!)));
  };
  const band = { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
  const missing = band.p10 === null || band.p50 === null || band.p90 === null;
  return { ...band, reason: missing ? (commonest(reasons) ?? 'not-ready-in-time') : null };
}
