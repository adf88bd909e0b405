import type { DarkMonthsPage } from './dark-months.ts';
import type { MonthJob, MonthLine, MonthSheet } from './month-sheet.ts';
import type { Printable, PrintColumn, PrintRow, PrintSection } from './printable.ts';
import type { SeedSheet } from './seed-sheet.ts';
import type { Medium, SheetWords } from './words.ts';

const column = (title: string, role: PrintColumn['role'], width: number, label = ''): PrintColumn => ({
  title,
  role,
  width,
  label,
});

const listSection = (
  heading: string,
  items: readonly string[],
  columns: 1 | 2 | 3,
  tick: boolean,
): PrintSection => ({
  heading,
  note: null,
  opens: false,
  block: { kind: 'list', tick, columns, items: items.map((text) => ({ text, state: 'plain' })) },
});

/** One line for the same work in the same place on the same day. */
function joinedJobs(jobs: readonly MonthJob[]): readonly (readonly MonthJob[])[] {
  const joined = new Map<string, MonthJob[]>();
  for (const job of jobs) {
    const key = `${job.day}|${job.code}|${job.placeName}`;
    joined.set(key, [...(joined.get(key) ?? []), job]);
  }
  return [...joined.values()];
}

export function printMonth(sheet: MonthSheet, words: SheetWords, medium: Medium): Printable {
  const w = words.month;
  const columns = [
    column(w.columns.number, 'number', 4),
    column(w.columns.what, 'what', 15),
    column(w.columns.amount, 'amount', 11),
    column(w.columns.how, 'detail', 12),
    column(w.columns.where, 'detail', 16),
    column(w.columns.eaten, 'detail', 13, w.labels.eaten),
    column(w.columns.lastSafe, 'detail', 11, w.labels.lastSafe),
    column(w.columns.mind, 'detail', 17, w.labels.mind),
    column(w.columns.did, 'blank', 7),
  ];
  const row = (line: MonthLine, late: boolean): PrintRow => ({
    state: late ? 'late' : line.state,
    cells: [
      String(line.number),
      w.what(line),
      w.amount(line),
      w.how(line),
      w.where(line),
      w.eaten(line),
      w.lastSafe(line),
      w.mind(line),
      '',
    ],
  });
  const sections = sheet.areas.flatMap((area): PrintSection[] => {
    const groups = area.weeks.map((week) => ({
      heading: words.dates.week(week.monday),
      rows: week.lines.map((line) => row(line, false)),
    }));
    if (area.late.length > 0)
      groups.unshift({ heading: w.lateHeading, rows: area.late.map((line) => row(line, true)) });
    const jobs = joinedJobs(area.jobs).map((same) => w.jobs(same));
    return [
      {
        heading: w.areaHeading(area.area, sheet),
        note: groups.length === 0 ? w.nothing : null,
        opens: true,
        block: groups.length === 0 ? null : { kind: 'table', layout: 'lines', tick: true, columns, groups },
      },
      ...(jobs.length === 0 ? [] : [listSection(w.jobsHeading, jobs, 3, true)]),
    ];
  });
  if (sheet.areas.length === 0) sections.push({ heading: '', note: w.nothing, opens: false, block: null });
  if (sheet.handovers.length > 0) {
    const handovers = sheet.handovers.map((handover) => w.handover(handover));
    sections.push(listSection(w.handoversHeading, handovers, 2, false));
  }
  if (sheet.orders.length > 0) {
    const orders = sheet.orders.map((order) => w.order(order));
    sections.push(listSection(w.ordersHeading, orders, 3, true));
  }
  return {
    language: words.language,
    orientation: 'landscape',
    title: w.title(sheet),
    aside: words.aside(sheet.head),
    intro: w.intro(sheet, medium),
    sections,
    foot: [sheet.cautions.map((c) => w.caution(c)).join(' '), words.foot(sheet.head)],
  };
}

export function printDarkMonths(page: DarkMonthsPage, words: SheetWords): Printable {
  const w = words.dark;
  const columns = [
    column(w.columns.number, 'number', 4),
    column(w.columns.what, 'what', 16),
    column(w.columns.count, 'amount', 5),
    column(w.columns.where, 'detail', 12),
    column(w.columns.comesOut, 'detail', 18, w.labels.comesOut),
    column(w.columns.sownBy, 'detail', 25, w.labels.sownBy),
    column(w.columns.feeds, 'detail', 22, w.labels.feeds),
    column(w.columns.fortnight, 'detail', 9, w.labels.fortnight),
    column(w.columns.did, 'blank', 7),
  ];
  const lines = page.places.flatMap((place) => place.lines);
  const standing = lines.filter((line) => line.state === 'done');
  const rows = lines
    .filter((line) => line.state !== 'done')
    .map(
      (line): PrintRow => ({
        state: line.state,
        cells: [
          String(line.number),
          w.what(line),
          w.count(line),
          line.placeName,
          w.comesOut(line),
          w.sownBy(line),
          w.feeds(line, page),
          w.fortnight(line),
          '',
        ],
      }),
    );
  const plainList = (heading: string, items: readonly string[]): PrintSection[] =>
    items.length === 0 ? [] : [listSection(heading, items, 2, false)];
  const table: PrintSection = {
    heading: '',
    note: null,
    opens: false,
    block: { kind: 'table', layout: 'lines', tick: true, columns, groups: [{ heading: '', rows }] },
  };
  return {
    language: words.language,
    orientation: 'landscape',
    title: w.title(page),
    aside: words.aside(page.head),
    intro: w.intro(page),
    sections: [
      ...(rows.length === 0 ? [] : [table]),
      ...plainList(
        w.standingHeading,
        standing.map((line) => w.standing(line, page)),
      ),
      ...plainList(
        w.handoversHeading,
        page.handovers.map((handover) => w.handover(handover)),
      ),
      ...plainList(
        w.totalsHeading,
        page.totals.map((t) => w.total(t)),
      ),
      ...plainList(
        w.leanHeading,
        page.lean.map((l) => w.lean(l)),
      ),
    ],
    foot: [words.foot(page.head)],
  };
}

function materialsSection(sheet: SeedSheet, words: SheetWords): PrintSection[] {
  if (sheet.materials.length === 0) return [];
  let before = 0;
  const items = sheet.materials.map((month) => {
    const text = words.seeds.material(month, before);
    before += month.compostLitres;
    return text;
  });
  return [listSection(words.seeds.materialsHeading, items, 2, true)];
}

export function printSeeds(sheet: SeedSheet, words: SheetWords): Printable {
  const w = words.seeds;
  const rows = sheet.lines.map(
    (line): PrintRow => ({
      state: line.packets > 0 ? 'firm' : 'plain',
      cells: [
        line.kindName,
        w.need(line),
        String(Math.round(line.inTinCount)),
        w.buy(line),
        line.packets > 0 ? words.dates.day(line.orderBy) : '',
        words.dates.day(line.firstUse),
      ],
    }),
  );
  return {
    language: words.language,
    orientation: 'portrait',
    title: w.title(sheet),
    aside: words.aside(sheet.head),
    intro: w.intro(sheet),
    sections: [
      {
        heading: '',
        note: rows.length === 0 ? w.nothing : null,
        opens: false,
        block:
          rows.length === 0
            ? null
            : {
                kind: 'table',
                layout: 'grid',
                tick: true,
                columns: [
                  column(w.columns.what, 'what', 30),
                  column(w.columns.need, 'figure', 14),
                  column(w.columns.inTin, 'figure', 12),
                  column(w.columns.buy, 'figure', 20),
                  column(w.columns.orderBy, 'figure', 12),
                  column(w.columns.firstUse, 'figure', 12),
                ],
                groups: [{ heading: '', rows }],
              },
      },
      ...materialsSection(sheet, words),
    ],
    foot: [words.foot(sheet.head)],
  };
}
