/** Every truth row of a split. Only the report asks for those that are held out. */
import { climateTruthRows } from './climate/rows.ts';
import { arithmeticRows } from './growth/arithmetic.ts';
import { growthTruthRows } from './growth/rows.ts';
import type { Split } from './split.ts';
import { calendarTruthRows } from './trade/calendar.ts';
import { harvestMiddleRows } from './trade/harvest-middle.ts';
import { keepingRows } from './trade/keeping.ts';
import { weeksToHarvestRows } from './trade/weeks-to-harvest.ts';
import { yieldRows } from './trade/yields.ts';
import { splitOfRow, type TruthRow } from './truth-row.ts';

/** Rows whose figures lie beside the code that computes them: worked examples of printed formulas, nothing to fit. */
const writtenOut = (): TruthRow[] => [...climateTruthRows(), ...arithmeticRows()];

export const truthRowsOf = (split: Split): TruthRow[] => [
  ...writtenOut().filter((row) => splitOfRow(row) === split),
  ...growthTruthRows(split),
  ...harvestMiddleRows(split),
  ...weeksToHarvestRows(split),
  ...keepingRows(split),
  ...yieldRows(split),
  ...calendarTruthRows(split),
];
