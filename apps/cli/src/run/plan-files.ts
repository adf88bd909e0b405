import { join } from 'node:path';
import type { Day } from '@twelvemonth/basis';
import type { PlanReport, SeedListLine } from '@twelvemonth/workflows';
import {
  addToMonth,
  type CalendarMonth,
  darkMonthsOf,
  dayOf,
  eventsOfMonth,
  fridgePageOf,
  mondayBefore,
  monthOfWeek,
  monthSheetOf,
  printDarkMonths,
  printFridge,
  printMonth,
  printNeighbour,
  renderHtml,
  renderIcs,
  renderYearSvg,
  seedCsv,
  seedSheetOf,
  yearPictureOf,
} from '@twelvemonth/workflows';
import { sheetWords } from '../words/sheet-words.ts';
import { makeFolder, writeWholeFile } from './files.ts';

export const monthText = ({ year, month }: CalendarMonth): string =>
  `${year}-${String(month).padStart(2, '0')}`;

/** Every month that has a week in the plan. */
export function monthsOf(report: PlanReport): CalendarMonth[] {
  const texts = report.weeks.map((week) => monthText(monthOfWeek(dayOf(week.weekOf))));
  return [...new Set(texts)].map((text) => ({
    year: Number(text.slice(0, 4)),
    month: Number(text.slice(5)),
  }));
}

/** The whole plan as a calendar: all months, each thing once. */
export function planIcs(report: PlanReport, seeds: readonly SeedListLine[], today: Day): string {
  const events = monthsOf(report).flatMap((month) =>
    eventsOfMonth(monthSheetOf(report, { month, today, seeds }), sheetWords),
  );
  const once = [...new Map(events.map((event) => [event.id, event])).values()];
  return renderIcs(once, report.garden.household, dayOf(report.from), sheetWords.language);
}

const sheetsAhead = 3;

/** Name and text of every file that `plan --out` writes. */
export function planFiles(
  report: PlanReport,
  seeds: readonly SeedListLine[],
  today: Day,
): readonly (readonly [name: string, text: string])[] {
  const first = monthOfWeek(mondayBefore(today));
  const months = Array.from({ length: sheetsAhead }, (_, i) => addToMonth(first, i));
  const fridge = fridgePageOf(report, today, today);
  return [
    ['plan.json', `${JSON.stringify(report, null, 2)}\n`],
    ...months.map(
      (month) =>
        [
          `month-${monthText(month)}.html`,
          renderHtml(printMonth(monthSheetOf(report, { month, today, seeds }), sheetWords, 'page')),
        ] as const,
    ),
    ['dark-months.html', renderHtml(printDarkMonths(darkMonthsOf(report, today), sheetWords))],
    ['fridge.html', renderHtml(printFridge(fridge, sheetWords))],
    ['neighbour.html', renderHtml(printNeighbour(fridge, sheetWords))],
    ['seeds.csv', seedCsv(seedSheetOf(report, seeds, today))],
    ['jobs.ics', planIcs(report, seeds, today)],
    ['year.svg', renderYearSvg(yearPictureOf(report, today), sheetWords)],
  ];
}

export function writePlanFiles(
  folder: string,
  report: PlanReport,
  seeds: readonly SeedListLine[],
  today: Day,
): string[] {
  makeFolder(folder);
  return planFiles(report, seeds, today).map(([name, text]) => {
    const path = join(folder, name);
    writeWholeFile(path, text);
    return path;
  });
}
