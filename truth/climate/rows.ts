import type { TruthRow } from '../truth-row.ts';
import { dayLengthRows } from './day-length.ts';
import { degreeDayRows } from './degree-days.ts';
import { derivedTableRows } from './derived-tables.ts';
import { fao56Rows } from './fao56.ts';
import { generatorRows } from './generator.ts';
import { soilRows } from './soil.ts';

export const climateTruthRows = (): TruthRow[] => [
  ...fao56Rows(),
  ...dayLengthRows(),
  ...degreeDayRows(),
  ...derivedTableRows(),
  ...soilRows(),
  ...generatorRows(),
];
