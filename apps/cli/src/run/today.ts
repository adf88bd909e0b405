import { type Day, dayFromCivil } from '@twelvemonth/basis';

/** The one place where the clock is read: the local calendar day. */
export function todayByTheClock(): Day {
  const now = new Date();
  return dayFromCivil(now.getFullYear(), now.getMonth() + 1, now.getDate());
}
