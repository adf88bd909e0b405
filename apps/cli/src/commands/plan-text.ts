import type { Day } from '@twelvemonth/basis';
import type { PlanReport, SeedListLine } from '@twelvemonth/workflows';
import {
  addToMonth,
  mondayBefore,
  monthOfWeek,
  monthSheetOf,
  plainSpaces,
  printMonth,
  renderText,
  renderYearText,
  wrapText,
  yearPictureOf,
} from '@twelvemonth/workflows';
import { conflictText, headingConflicts } from '../words/conflict-words.ts';
import { planGroundTexts } from '../words/ground-words.ts';
import {
  headingShortages,
  headingStock,
  noShortage,
  nothingWords,
  notReproducibleText,
  planHeader,
  proofText,
  shortageText,
  stockText,
  violationText,
} from '../words/plan-words.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { planWorkText } from '../words/work-words.ts';

const width = 80;
const paragraph = (text: string): string => wrapText(text, width, 2).join('\n');

function listing(heading: string, lines: readonly string[]): string {
  return `${heading}\n${'='.repeat(width)}\n${lines.map((line) => paragraph(`- ${line}`)).join('\n')}\n`;
}

/** What `plan` shows on the screen. */
export function planText(
  report: PlanReport,
  seeds: readonly SeedListLine[],
  today: Day,
  kindNameOf: (kind: string) => string,
): string {
  const thisMonth = monthOfWeek(mondayBefore(today));
  const sheets = [thisMonth, addToMonth(thisMonth, 1)].map((month) =>
    renderText(printMonth(monthSheetOf(report, { month, today, seeds }), sheetWords, 'text'), width),
  );
  const { proof } = report;
  const work = planWorkText(report);
  const parts = [
    `${planHeader(report).map(paragraph).join('\n')}\n`,
    ...(report.nothing === null ? [] : [`${wrapText(nothingWords[report.nothing], width).join('\n')}\n`]),
    ...(report.conflicts.length === 0 ? [] : [listing(headingConflicts, report.conflicts.map(conflictText))]),
    renderYearText(yearPictureOf(report, today), sheetWords, width),
    ...sheets,
    listing(
      headingShortages,
      report.shortages.length === 0
        ? [noShortage]
        : report.shortages.map((shortage) => shortageText(report, shortage, kindNameOf)),
    ),
    ...(report.stock.length === 0 ? [] : [listing(headingStock, report.stock.map(stockText))]),
    `${[
      ...(work === null ? [] : [work]),
      ...planGroundTexts(report),
      proofText(report),
      ...(proof.reproducible ? [] : [notReproducibleText]),
      ...proof.violations.map(violationText),
    ]
      .map((text) => wrapText(text, width).join('\n'))
      .join('\n')}\n`,
  ];
  return plainSpaces(parts.join('\n'));
}
