import { type Day, isoFromDay } from '@twelvemonth/basis';
import type { MonthSheet } from '../month-sheet.ts';
import type { SheetWords } from '../words.ts';
import { plainSpaces } from './text.ts';

/**
 * iCalendar (RFC 5545): all-day events, CRLF, lines folded at 75 octets. Written here because packages own no clock and
 * the libraries at hand want one. Ids come from the plan, so that a second import replaces instead of doubling.
 */
export interface CalendarEvent {
  readonly id: string;
  readonly day: Day;
  readonly title: string;
  readonly text: string;
  readonly category: string;
}

const escapeText = (text: string): string =>
  plainSpaces(text)
    // biome-ignore lint/suspicious/noControlCharactersInRegex: only tab and newline may stand in a calendar text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/g, '')
    .replace(/\\/g, '\\\\')
    .replace(/;/g, '\\;')
    .replace(/,/g, '\\,')
    .replace(/\r?\n|\r/g, '\\n');

function octetsOf(sign: string): number {
  const code = sign.codePointAt(0)!;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/** Section 3.1: no line over 75 octets; a folded line goes on after one blank, which counts. */
export function foldLine(line: string): string {
  let folded = '';
  let octets = 0;
  for (const sign of line) {
    const own = octetsOf(sign);
    if (octets + own > 75) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += sign;
    octets += own;
  }
  return folded;
}

const dateOf = (day: Day): string => isoFromDay(day).replaceAll('-', '');

export function renderIcs(
  events: readonly CalendarEvent[],
  name: string,
  stampDay: Day,
  language: string,
): string {
  const stamp = `${dateOf(stampDay)}T000000Z`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//Twelvemonth//Sheets//${language.toUpperCase()}`,
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escapeText(name)}`,
    ...events.flatMap((event) => [
      'BEGIN:VEVENT',
      `UID:${event.id.replace(/[^A-Za-z0-9._-]/g, '-')}@twelvemonth`,
      `DTSTAMP:${stamp}`,
      `DTSTART;VALUE=DATE:${dateOf(event.day)}`,
      `DTEND;VALUE=DATE:${dateOf(event.day + 1)}`,
      `SUMMARY:${escapeText(event.title)}`,
      `DESCRIPTION:${escapeText(event.text)}`,
      `CATEGORIES:${escapeText(event.category)}`,
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return `${lines.map(foldLine).join('\r\n')}\r\n`;
}

export function eventsOfMonth(sheet: MonthSheet, words: SheetWords): CalendarEvent[] {
  const w = words.month;
  return [
    ...sheet.areas.flatMap((area) => [
      ...[...area.late, ...area.weeks.flatMap((week) => week.lines)].map((line) => ({
        id: `${line.sowing}-${line.act}`,
        day: line.day,
        title: w.eventTitle(line),
        text: w.eventText(line),
        category: line.act,
      })),
      ...area.jobs.map((job) => ({
        id: `${job.sowing ?? job.placeName}-${job.code}-${isoFromDay(job.day)}`,
        day: job.day,
        title: w.jobTitle(job),
        text: w.job(job),
        category: job.code,
      })),
    ]),
    ...sheet.orders.map((order) => ({
      id: `order-${order.kind}-${isoFromDay(order.orderBy)}`,
      day: order.orderBy,
      title: w.orderTitle(order),
      text: w.order(order),
      category: 'order',
    })),
  ];
}
