import { civilFromDay, type Day } from '@twelvemonth/basis';
import type { SheetWords } from '../words.ts';
import type { LaneWeek, RoleLane, YearPicture } from '../year-picture.ts';
import { plainSpaces, wrapText } from './text.ts';

/** The year in 80 columns, one sign a week, two rows a lane; no colour. */

const levels = '▁▂▃▄▅▆▇█';

/** How much of what is wanted is eaten, in eighths; nothing wanted: a dot. */
function levelSign(week: LaneWeek): string {
  if (week.wanted <= 0.05) return week.eaten.p50 > 0.05 ? levels[0]! : '·';
  const share = Math.min(1, week.eaten.p50 / week.wanted);
  return share < 0.02 ? ' ' : levels[Math.max(0, Math.ceil(share * 8) - 1)]!;
}

function markSign(week: LaneWeek): string {
  if (week.lean) return '!';
  if (week.wanted > 0.05 && week.fromStock >= week.eaten.p50 / 2 && week.fromStock > 0.05) return 's';
  if (week.offered > week.wanted * 1.5 + 1) return '+';
  return ' ';
}

/** Weeks until the next label wants its room. */
function nextMonthIn(mondays: readonly Day[]): number {
  const next = mondays.findIndex((monday, i) => i > 0 && civilFromDay(monday).dayOfMonth <= 7);
  return next < 0 ? mondays.length : next;
}

function yearsRow(mondays: readonly Day[]): string {
  let row = '';
  mondays.forEach((monday, i) => {
    const { year, month, dayOfMonth } = civilFromDay(monday);
    const begins = i === 0 || (month === 1 && dayOfMonth <= 7);
    if (begins && i + 4 <= mondays.length && row.length <= i) row = row.padEnd(i) + year;
  });
  return row;
}

function axisOf(mondays: readonly Day[], words: SheetWords): string {
  const signs = Array.from({ length: mondays.length }, () => ' ');
  let free = 0;
  mondays.forEach((monday, i) => {
    const { month, dayOfMonth } = civilFromDay(monday);
    if (dayOfMonth > 7 && i > 0) return;
    const label = words.dates.monthShort(month).slice(0, 3);
    if (i === 0 && nextMonthIn(mondays) < 4) return;
    if (i < free || i + label.length > signs.length) return;
    for (const [k, sign] of [...label].entries()) signs[i + k] = sign;
    free = i + label.length + 1;
  });
  return signs.join('').trimEnd();
}

const standstillRow = (mondays: readonly Day[], picture: YearPicture): string =>
  mondays
    .map((monday) =>
      picture.head.standstill.some((s) => monday <= s.to && monday + 6 >= s.from) ? '~' : ' ',
    )
    .join('')
    .trimEnd();

function laneRows(lane: RoleLane, from: number, count: number): string[] {
  const weeks = lane.weeks.slice(from, from + count);
  const marks = weeks.map(markSign).join('').trimEnd();
  return [` ${weeks.map(levelSign).join('').trimEnd()}`, ...(marks === '' ? [] : [` ${marks}`])];
}

export function renderYearText(picture: YearPicture, words: SheetWords, width = 80): string {
  const perPanel = width - 2;
  const mondays = (picture.lanes[0]?.weeks ?? []).map((week) => week.monday);
  const lines: string[] = [...wrapText(words.year.title(picture), width), '='.repeat(width)];
  for (const note of words.year.legend.text) lines.push(...wrapText(note, width));
  for (let from = 0; from < mondays.length; from += perPanel) {
    const shown = mondays.slice(from, from + perPanel);
    const axis = ` ${axisOf(shown, words)}`;
    lines.push('', ` ${yearsRow(shown)}`, axis, ` ${standstillRow(shown, picture)}`.trimEnd());
    for (const lane of picture.lanes) {
      const name = words.year.laneName(lane);
      const note = words.year.laneNote(lane);
      const gap = width - [...name].length - [...note].length;
      lines.push(
        ...(gap >= 2
          ? [`${name}${' '.repeat(gap)}${note}`]
          : [...wrapText(name, width), ...wrapText(note, width, 2)]),
      );
      lines.push(...laneRows(lane, from, perPanel));
    }
    lines.push(axis);
  }
  return plainSpaces(`${lines.map((line) => line.trimEnd()).join('\n')}\n`);
}
