import type { SheetWords } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { monthWords } from './month-words.ts';
import { darkWords, fridgeWords, seedWords, yearWords } from './page-words.ts';

/** The English catalogue of the sheets. */
export const sheetWords: SheetWords = {
  language: 'en',
  dates: dateWords,
  aside: (head) =>
    `${head.household}${head.invented ? ' (an invented household)' : ''} · printed ${dateWords.dayInFull(head.printedDay)}`,
  foot: (head) =>
    `plan of ${dateWords.dayInFull(head.planDay)} · seed ${head.seed} · ${head.members} weather runs · tables ${head.tables}`,
  month: monthWords,
  dark: darkWords,
  fridge: fridgeWords,
  year: yearWords,
  seeds: seedWords,
};
