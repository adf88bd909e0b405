/**
 * A daily weather file (date, tmax, tmin, rain, perhaps radiation or sunshine; `#` lines are comments) as a record
 * without gaps. Doubtful values are left out and bridged like short gaps (up to five days, straight between neighbours);
 * longer gaps are errors. Radiation that was not measured is estimated (sunshine, else daily range). Linear in the
 * length of the text; never throws, whatever the text is. With any error there is no record.
 */
import { type Day, dayFromIso, dayOfYear, type Issue } from '@twelvemonth/basis';
import type { DailyWeather, Site } from './climate.ts';
import {
  columnsOf,
  type DailyColumn,
  possibleValues,
  requiredColumns,
  separatorOf,
} from './daily-columns.ts';
import { DailyIssues } from './daily-issues.ts';
import { recordedRadiationMJPerM2Day } from './radiation.ts';

const longestLine = 4000;
/** A thousand years of days: a longer file is something else. */
const mostLines = 365_000;
const longestBridgeDays = 5;
const longestSpanDays = 110_000;
const shortRecordDays = 2 * 365;

export interface DailyRecordRead {
  readonly record: DailyWeather | null;
  readonly issues: readonly Issue[];
}

interface Row {
  readonly day: Day;
  readonly line: number;
  readonly tmaxC: number;
  readonly tminC: number;
  readonly rainMm: number;
  readonly radiationMJPerM2Day: number;
  readonly sunHours: number;
}

function* linesOf(text: string): Generator<[line: string, number: number]> {
  let from = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  for (let number = 1; from < text.length; number++) {
    let to = text.indexOf('\n', from);
    if (to < 0) to = text.length;
    const end = to > from && text.charCodeAt(to - 1) === 13 ? to - 1 : to;
    yield [text.slice(from, end), number];
    from = to + 1;
  }
}

function numberIn(cell: string | undefined, decimalComma: boolean): number | null {
  const text = (cell ?? '').trim();
  if (text === '' || text === 'NA' || text === 'NaN') return Number.NaN;
  const value = Number(decimalComma ? text.replace(',', '.') : text);
  return Number.isFinite(value) ? value : null;
}

function readRows(text: string, issues: DailyIssues): Row[] {
  const rows: Row[] = [];
  let columns: Partial<Record<DailyColumn, number>> | null = null;
  let separator = ',';
  for (const [line, number] of linesOf(text)) {
    if (number > mostLines) {
      issues.add('daily-too-many-lines', 'error', number, { most: mostLines });
      return [];
    }
    if (line.length > longestLine) {
      issues.add('daily-line-too-long', 'warning', number, { length: line.length });
      continue;
    }
    if (line.startsWith('#') || line.trim() === '') continue;
    if (columns === null) {
      separator = separatorOf(line);
      columns = columnsOf(line.split(separator));
      const found = columns;
      const missing = requiredColumns.filter((column) => found[column] === undefined);
      if (missing.length === requiredColumns.length) {
        issues.add('daily-no-header', 'error', number);
        return rows;
      }
      for (const column of missing) issues.add('daily-column-missing', 'error', number, { column });
      if (missing.length > 0) return rows;
      continue;
    }
    const cells = line.split(separator);
    const dateText = (cells[columns.date!] ?? '').trim();
    const day = dayFromIso(dateText.replaceAll('/', '-').slice(0, 10));
    if (day === null) {
      issues.add('daily-bad-date', 'warning', number, { text: dateText.slice(0, 30) });
      continue;
    }
    const found = columns;
    const read = (column: Exclude<DailyColumn, 'date'>): number => {
      const index = found[column];
      if (index === undefined) return Number.NaN;
      const value = numberIn(cells[index], separator !== ',');
      const [least, most] = possibleValues[column];
      if (value === null) {
        issues.add('daily-bad-number', 'warning', number, {
          column,
          text: (cells[index] ?? '').slice(0, 30),
        });
        return Number.NaN;
      }
      if (value < least || value > most) {
        issues.add('daily-impossible-value', 'warning', number, { column, value });
        return Number.NaN;
      }
      return value;
    };
    let tmaxC = read('tmaxC');
    let tminC = read('tminC');
    if (tmaxC < tminC) {
      issues.add('daily-tmax-below-tmin', 'warning', number, { tmaxC, tminC });
      tmaxC = Number.NaN;
      tminC = Number.NaN;
    }
    const rest = { rainMm: read('rainMm'), sunHours: read('sunHours') };
    rows.push({ day, line: number, tmaxC, tminC, radiationMJPerM2Day: read('radiationMJPerM2Day'), ...rest });
  }
  if (columns === null) issues.add('daily-no-header', 'error', 1);
  else if (rows.length === 0) issues.add('daily-no-rows', 'error', 1);
  return rows;
}

/** In order of days, the first of each day kept. */
function orderRows(rows: Row[], issues: DailyIssues): Row[] {
  const slip = rows.findIndex((row, i) => i > 0 && row.day < rows[i - 1]!.day);
  if (slip >= 0) {
    issues.add('daily-unsorted', 'note', rows[slip]!.line);
    rows.sort((a, b) => a.day - b.day || a.line - b.line);
  }
  return rows.filter((row, i) => {
    if (i === 0 || row.day !== rows[i - 1]!.day) return true;
    issues.add('daily-duplicate-day', 'warning', row.line, { day: row.day });
    return false;
  });
}

/** Bridges short runs of missing values; false where a run is too long or touches an end. */
function bridge(values: Float64Array, column: DailyColumn, lines: Int32Array, issues: DailyIssues): boolean {
  let whole = true;
  for (let i = 0; i < values.length; i++) {
    if (!Number.isNaN(values[i]!)) continue;
    let end = i;
    while (end < values.length && Number.isNaN(values[end]!)) end++;
    const days = end - i;
    const line = lines[Math.max(0, i - 1)]!;
    if (days > longestBridgeDays || (i === 0 && end === values.length)) {
      issues.add('daily-long-gap', 'error', line, { column, days });
      whole = false;
    } else {
      issues.add('daily-short-gap-bridged', 'warning', line, { column, days });
      const before = i > 0 ? values[i - 1]! : values[end]!;
      const after = end < values.length ? values[end]! : before;
      for (let k = i; k < end; k++) values[k] = before + ((after - before) * (k - i + 1)) / (days + 1);
    }
    i = end;
  }
  return whole;
}

export function readDailyCsv(text: string, site: Site): DailyRecordRead {
  const issues = new DailyIssues();
  const rows = orderRows(readRows(text, issues), issues);
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (first === undefined || last === undefined) return { record: null, issues: issues.all() };
  const dayCount = last.day - first.day + 1;
  if (dayCount > longestSpanDays) {
    issues.add('daily-span-impossible', 'error', last.line, { days: dayCount });
    return { record: null, issues: issues.all() };
  }
  if (dayCount < shortRecordDays) issues.add('daily-record-short', 'error', last.line, { days: dayCount });
  const series = (): Float64Array => new Float64Array(dayCount).fill(Number.NaN);
  const [tmaxC, tminC, rainMm, radiation, sunHours] = [series(), series(), series(), series(), series()];
  const lines = new Int32Array(dayCount);
  for (const row of rows) {
    const i = row.day - first.day;
    tmaxC[i] = row.tmaxC;
    tminC[i] = row.tminC;
    rainMm[i] = row.rainMm;
    radiation[i] = row.radiationMJPerM2Day;
    sunHours[i] = row.sunHours;
    lines[i] = row.line;
  }
  for (let i = 1; i < dayCount; i++) if (lines[i] === 0) lines[i] = lines[i - 1]!;
  const whole = [
    bridge(tmaxC, 'tmaxC', lines, issues),
    bridge(tminC, 'tminC', lines, issues),
    bridge(rainMm, 'rainMm', lines, issues),
  ].every(Boolean);
  if (!whole || dayCount < shortRecordDays) return { record: null, issues: issues.all() };
  let estimatedDays = 0;
  for (let i = 0; i < dayCount; i++) {
    if (!Number.isNaN(radiation[i]!)) continue;
    estimatedDays++;
    radiation[i] = recordedRadiationMJPerM2Day(site, dayOfYear(first.day + i), {
      radiationMJPerM2Day: null,
      sunHours: Number.isNaN(sunHours[i]!) ? null : sunHours[i]!,
      tmaxC: tmaxC[i]!,
      tminC: tminC[i]!,
    });
  }
  if (estimatedDays > 0) {
    issues.add('daily-radiation-estimated', 'note', first.line, { days: estimatedDays, of: dayCount });
  }
  const record = { startDay: first.day, tmaxC, tminC, rainMm, radiationMJPerM2Day: radiation };
  return { record, issues: issues.all() };
}
