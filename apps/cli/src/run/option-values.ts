import { type Day, dayFromIso } from '@twelvemonth/basis';
import { type CalendarMonth, monthFromText } from '@twelvemonth/workflows';
import { InvalidArgumentError } from 'commander';

/** Option texts to values; a text that is none ends as wrong use (exit code 2). */

export function dayOption(text: string): Day {
  const day = dayFromIso(text);
  if (day === null) throw new InvalidArgumentError(`"${text}" is not a day. Write it as 2026-08-20.`);
  return day;
}

export function monthOption(text: string): CalendarMonth {
  const month = monthFromText(text);
  if (month === null) throw new InvalidArgumentError(`"${text}" is not a month. Write it as 2026-09.`);
  return month;
}

export const wholeOption =
  (least: number, most: number) =>
  (text: string): number => {
    const value = Number(text);
    if (!/^\d+$/.test(text) || value < least || value > most)
      throw new InvalidArgumentError(`"${text}" is not a whole number from ${least} to ${most}.`);
    return value;
  };

export function secondsOption(text: string): number {
  const value = Number(text);
  if (!Number.isFinite(value) || value <= 0 || text.trim() === '')
    throw new InvalidArgumentError(`"${text}" is not a number of seconds above 0.`);
  return value;
}
