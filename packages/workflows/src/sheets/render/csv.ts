import { isoFromDay } from '@twelvemonth/basis';
import Papa from 'papaparse';
import type { DarkMonthsPage } from '../dark-months.ts';
import type { FridgePage } from '../fridge-page.ts';
import type { MonthLine, MonthSheet } from '../month-sheet.ts';
import type { SeedSheet } from '../seed-sheet.ts';

/** Tables for other programs: fixed column names, ISO dates, no words. Cells that a spreadsheet would run are defused. */
type Cell = string | number | null;
type Row = Readonly<Record<string, Cell>>;

const iso = (day: number | null): string | null => (day === null ? null : isoFromDay(day));
const rounded = (value: number | null): number | null =>
  value === null ? null : Math.round(value * 100) / 100;

function csvOf(columns: readonly string[], rows: readonly Row[]): string {
  const data = rows.map((row) => columns.map((name) => row[name] ?? ''));
  const options = { escapeFormulae: true, newline: '\r\n' };
  return `${Papa.unparse({ fields: [...columns], data }, options)}\r\n`;
}

const monthColumns = [
  'area',
  'week_of',
  'late',
  'act',
  'day',
  'number',
  'sowing',
  'kind',
  'name',
  'state',
  'unit',
  'sow',
  'plant',
  'keep',
  'route',
  'in_row_cm',
  'between_row_cm',
  'stages',
  'beds',
  'clear_first',
  'eaten',
  'last_safe_day',
  'week_late_servings',
  'mind',
  'what_i_did',
] as const;

function monthRow(line: MonthLine, late: boolean): Row {
  return {
    area: line.area,
    week_of: iso(line.monday),
    late: late ? 1 : 0,
    act: line.act,
    day: iso(line.day),
    number: line.number,
    sowing: line.sowing,
    kind: line.kind,
    name: line.kindName,
    state: line.state,
    unit: line.amount.unit,
    sow: line.amount.sow,
    plant: line.amount.plant,
    keep: line.amount.keep,
    route: line.route,
    in_row_cm: line.spacingCm.inRow,
    between_row_cm: line.spacingCm.betweenRow,
    stages: line.path.map((s) => `${s.stage}:${s.placeName}`).join(' > '),
    beds: line.beds.map((b) => `${b.placeName} ${b.numbers.join('+')}`).join('; '),
    clear_first: line.clearFirst.map((c) => `${c.number} by ${isoFromDay(c.by)}`).join('; '),
    eaten: line.eaten
      .map((p) => `${p.harvest}:${iso(p.firstFrom) ?? ''}/${iso(p.firstTo) ?? ''}/${iso(p.lastMiddle) ?? ''}`)
      .join('; '),
    last_safe_day: iso(line.lastSafeDay),
    week_late_servings: rounded(line.weekLateServings),
    mind: line.mind.map((m) => `${m.code}:${Math.round(m.share * 100) / 100}`).join('; '),
  };
}

export function monthCsv(sheet: MonthSheet): string {
  const rows = sheet.areas.flatMap((area) => [
    ...area.late.map((line) => monthRow(line, true)),
    ...area.weeks.flatMap((week) => week.lines.map((line) => monthRow(line, false))),
    ...area.jobs.map(
      (job): Row => ({
        area: area.area,
        act: job.code,
        day: iso(job.day),
        number: job.number,
        sowing: job.sowing,
        name: job.kindName,
        beds: job.placeName,
        plant: job.count,
      }),
    ),
  ]);
  return csvOf(monthColumns, rows);
}

const darkColumns = [
  'place',
  'number',
  'sowing',
  'name',
  'state',
  'keep',
  'ground_m2',
  'comes_out',
  'plant_out',
  'sow',
  'last_safe_day',
  'feeds',
  'fortnight_late_servings',
] as const;

export function darkMonthsCsv(page: DarkMonthsPage): string {
  const rows = page.places.flatMap((place) =>
    place.lines.map(
      (line): Row => ({
        place: place.placeName,
        number: line.number,
        sowing: line.sowing,
        name: line.kindName,
        state: line.state,
        keep: line.keepCount,
        ground_m2: rounded(line.groundM2),
        comes_out: line.comesOut.map((c) => `${c.number} by ${isoFromDay(c.by)}`).join('; '),
        plant_out: iso(line.plantOut),
        sow: iso(line.sow),
        last_safe_day: iso(line.lastSafeDay),
        feeds: line.feeds
          .map((f) => `${f.role}:${isoFromDay(f.from)}/${isoFromDay(f.to)}:${rounded(f.servings)}`)
          .join('; '),
        fortnight_late_servings: rounded(line.fortnightLateServings),
      }),
    ),
  );
  return csvOf(darkColumns, rows);
}

const fridgeColumns = ['list', 'name', 'where', 'servings', 'kg', 'until_from', 'until_to'] as const;

export function fridgeCsv(page: FridgePage): string {
  const item =
    (list: string) =>
    (i: FridgePage['ready'][number]): Row => ({
      list,
      name: i.kindName,
      where: i.placeName,
      until_from: iso(i.endsMiddle),
      until_to: iso(i.endsLate),
    });
  return csvOf(fridgeColumns, [
    ...page.eatFirst.map(item('eat-first')),
    ...page.ready.map(item('ready')),
    ...page.putBy.map((p): Row => ({ list: 'put-by', name: p.roleName, servings: rounded(p.servings) })),
    ...page.left.map(
      (l): Row => ({
        list: 'left',
        name: l.what,
        where: l.where,
        servings: rounded(l.servings),
        kg: rounded(l.kg),
        until_from: iso(l.untilFrom),
        until_to: iso(l.untilTo),
      }),
    ),
  ]);
}

const seedColumns = [
  'kind',
  'name',
  'starts_as',
  'need',
  'in_tin',
  'packets',
  'packet_holds',
  'order_by',
  'first_use',
] as const;

export function seedCsv(sheet: SeedSheet): string {
  return csvOf(
    seedColumns,
    sheet.lines.map((line) => ({
      kind: line.kind,
      name: line.kindName,
      starts_as: line.startsAs,
      need: Math.round(line.needCount),
      in_tin: Math.round(line.inTinCount),
      packets: line.packets,
      packet_holds: line.packetCount,
      order_by: isoFromDay(line.orderBy),
      first_use: isoFromDay(line.firstUse),
    })),
  );
}
