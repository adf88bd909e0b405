import { isoFromDay } from '@twelvemonth/basis';
import type { VagueAmount, VagueDay } from '../records/garden.ts';
import { aboutShare } from './vague-amount.ts';

/** Vague days and amounts as texts that read back to the same. */
export function textOfVagueDay({ fromDay, toDay }: VagueDay): string {
  return fromDay === toDay ? isoFromDay(fromDay) : `${isoFromDay(fromDay)} to ${isoFromDay(toDay)}`;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));

export function textOfAmount({ low, middle, high }: VagueAmount): number | string {
  if (low === high) return middle;
  if (near(low, middle * (1 - aboutShare)) && near(high, middle * (1 + aboutShare))) return `about ${middle}`;
  const range = `${low}-${high}`;
  return near(middle, (low + high) / 2) ? range : `${range}, likely ${middle}`;
}
