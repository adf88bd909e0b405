import {
  monthSheetOf,
  plainSpaces,
  printMonth,
  printSeeds,
  renderText,
  seedSheetOf,
} from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { inventedPlan } from '../testing/recording-terminal.ts';
import { sheetWords } from './sheet-words.ts';
import { materialsByText, planWorkText } from './work-words.ts';

const plan = inventedPlan();
const oneLine = (text: string): string => plainSpaces(text).replace(/\s+/g, ' ');

test('the plan says its usual and its fullest week, against what people have', () => {
  expect(oneLine(planWorkText(plan)!)).toBe(
    'Work: about 4 h a week, most in the week of 7 September: 6.7 h of the 14 h that you have, mainly planting.',
  );
  expect(planWorkText({ ...plan, hours: [] })).toBeNull();
});

test('weeks that ask for more than there is are said', () => {
  const hours = plan.hours.map((week, i) => ({ ...week, cap: i < 2 ? 1 : 14 }));
  expect(oneLine(planWorkText({ ...plan, hours })!)).toContain(
    'In 2 weeks what stands already asks for nearly all of that or more; with it the work comes to more than you have.',
  );
});

test('the month sheet says hours and compost, the seed list what is wanted by when', () => {
  const today = Date.UTC(2026, 7, 20) / 86_400_000;
  const sheet = monthSheetOf(plan, { month: { year: 2026, month: 9 }, today, seeds: [] });
  const month = oneLine(renderText(printMonth(sheet, sheetWords, 'text')));
  expect(month).toContain('most in the week of 7 September');
  expect(month).toContain('35 l of compost; 4 trays and 72 pots in use at once.');
  const seeds = oneLine(renderText(printSeeds(seedSheetOf(plan, [], today), sheetWords)));
  expect(seeds).toContain('August 2026: 45 l; 6 trays in use');
  expect(oneLine(materialsByText(plan.materials[1]!, 42))).toBe(
    'September 2026: 35 l, 75 l by then; 4 trays and 72 pots in use',
  );
});
