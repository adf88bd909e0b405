import { type Day, isoFromDay } from '@twelvemonth/basis';
import { NEVER } from '@twelvemonth/growing';
import type { DayBand } from '../report/plan-report.ts';

/** Type 6 (Weibull) quantile of days of which some may never come; null where it falls among those. */
function dayAt(sorted: readonly number[], prob: number): Day | null {
  const position = Math.min(sorted.length - 1, Math.max(0, prob * (sorted.length + 1) - 1));
  const below = Math.floor(position);
  const share = position - below;
  const low = sorted[below] ?? Number.POSITIVE_INFINITY;
  const high = share > 1e-9 ? sorted[below + 1]! : low;
  return Number.isFinite(low) && Number.isFinite(high) ? Math.round(low + share * (high - low)) : null;
}

function mostCommon(reasons: readonly (string | null)[]): string | null {
  const counts = new Map<string, number>();
  for (const reason of reasons) if (reason !== null) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  let best: string | null = null;
  for (const [reason, count] of counts) if (best === null || count > counts.get(best)!) best = reason;
  return best;
}

/**
 * Band of days over members. A member in which the day never comes (NEVER) counts as later than every day — or, for a
 * last day (the last frost), as earlier. A quantile among those is null, with the most common reason of the members
 * in which it does not come.
 */
export function dayBandOf(
  values: readonly Day[],
  reasons: readonly (string | null)[],
  neverCountsAs: 'later' | 'earlier' = 'later',
): DayBand {
  const never = neverCountsAs === 'later' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  const sorted = values
    .map((day) => (day >= NEVER ? never : day))
    .sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const [p10, p50, p90] = [dayAt(sorted, 0.1), dayAt(sorted, 0.5), dayAt(sorted, 0.9)];
  const iso = (day: Day | null): string | null => (day === null ? null : isoFromDay(day));
  const whole = p10 !== null && p50 !== null && p90 !== null;
  const reason = whole
    ? null
    : (mostCommon(reasons.filter((_, i) => values[i]! >= NEVER)) ?? 'not-ready-in-time');
  return { p10: iso(p10), p50: iso(p50), p90: iso(p90), reason };
}
