import { civilFromDay, type Day } from '@twelvemonth/basis';
import type { DateWords } from '@twelvemonth/workflows';

const short = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'June', 'July', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'];
const long = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const shortMonth = (month: number): string => short[month - 1]!;

/** "early Oct", "mid-Oct", "late Oct". */
export function partOfMonth(day: Day): string {
  const { month, dayOfMonth } = civilFromDay(day);
  const part = dayOfMonth <= 10 ? 'early\u00a0' : dayOfMonth <= 20 ? 'mid-' : 'late\u00a0';
  return `${part}${shortMonth(month)}`;
}

function dayText(day: Day): string {
  const { month, dayOfMonth } = civilFromDay(day);
  return `${dayOfMonth}\u00a0${shortMonth(month)}`;
}

function daysText(from: Day, to: Day): string {
  if (to <= from) return dayText(from);
  const [a, b] = [civilFromDay(from), civilFromDay(to)];
  return a.month === b.month && a.year === b.year
    ? `${a.dayOfMonth}–${b.dayOfMonth}\u00a0${shortMonth(a.month)}`
    : `${dayText(from)} – ${dayText(to)}`;
}

/** A whole month is said by its name alone. */
function roughlyText(from: Day, to: Day): string {
  const [a, b] = [civilFromDay(from), civilFromDay(to)];
  if (to - from < 25) return daysText(from, to);
  const start = a.dayOfMonth <= 5 ? shortMonth(a.month) : partOfMonth(from);
  const end = b.dayOfMonth >= 25 ? shortMonth(b.month) : partOfMonth(to);
  return start === end ? start : `${start} – ${end}`;
}

export const dateWords: DateWords = {
  day: dayText,
  dayInFull(day) {
    const { year, month, dayOfMonth } = civilFromDay(day);
    return `${dayOfMonth} ${long[month - 1]} ${year}`;
  },
  days: daysText,
  roughly: roughlyText,
  month: ({ year, month }) => `${long[month - 1]} ${year}`,
  monthShort: shortMonth,
  week(monday) {
    const { month, dayOfMonth } = civilFromDay(monday);
    return `Week of ${dayOfMonth} ${long[month - 1]}`;
  },
};

/** "12 Sept", with the year where it is far enough from `near` to be taken for another. */
export function dayNear(day: Day, near: Day): string {
  return Math.abs(day - near) > 300 ? `${dayText(day)}\u00a0${civilFromDay(day).year}` : dayText(day);
}
