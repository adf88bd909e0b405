import {
  darkMonthsOf,
  dayOf,
  fridgePageOf,
  monthSheetOf,
  printDarkMonths,
  printFridge,
  printMonth,
  printNeighbour,
  printSeeds,
  renderHtml,
  renderText,
  renderYearSvg,
  renderYearText,
  seedSheetOf,
  yearPictureOf,
} from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { planText } from '../commands/plan-text.ts';
import { planFiles } from '../run/plan-files.ts';
import { inventedPlan } from '../testing/recording-terminal.ts';
import { sheetWords as words } from './sheet-words.ts';

const plan = inventedPlan();
const today = dayOf('2026-08-20');
const month = (n: number) => monthSheetOf(plan, { month: { year: 2026, month: n }, today, seeds: [] });
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => [...line].length));

test('the month sheet says everything a line needs', () => {
  const text = renderText(printMonth(month(9), words, 'text'));
  expect(text).toContain(' 41 [ ] Spinach for overwintering                                   90 / 72 / 66');
  expect(text).toContain('staging → tunnel bed 2; first Tunnel cucumber (38) out by 5 Oct');
  expect(text).toContain('last safe day: 12 Sept (a week late: 3 servings fewer)');
  expect(text).toContain(' 42 [·] Lamb’s lettuce                                             11 / – / 10 m');
  expect(text).toContain('tops: runs to seed in');
});

test('no text sheet is wider than 80 columns', () => {
  const fridge = fridgePageOf(plan, today, today);
  const sheets = [
    ...[8, 9, 10, 11].map((n) => renderText(printMonth(month(n), words, 'text'))),
    renderText(printDarkMonths(darkMonthsOf(plan, today), words)),
    renderText(printFridge(fridge, words)),
    renderText(printNeighbour(fridge, words)),
    renderText(printSeeds(seedSheetOf(plan, [], today), words)),
    renderYearText(yearPictureOf(plan, today), words),
    planText(plan, [], today, (kind) => kind),
  ];
  for (const text of sheets) {
    expect(widest(text)).toBeLessThanOrEqual(80);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  }
});

test('the same work in one place on one day is one line, and sizes never part from their unit', () => {
  const [job] = plan.jobs.filter((j) => j.code === 'clear');
  const mesh = (sowing: string, kindName: string, placeName: string) => ({
    ...job!,
    day: '2026-09-09',
    code: 'mesh-on' as const,
    sowing,
    kindName,
    placeName,
  });
  const jobs = [
    mesh('spinach-dddddd', 'Spinach', 'bed 1'),
    mesh('kale-cccccc', 'Kale', 'bed 1'),
    mesh('leek-bbbbbb', 'Leek', 'bed 2'),
  ];
  const sheet = monthSheetOf({ ...plan, jobs }, { month: { year: 2026, month: 9 }, today, seeds: [] });
  const text = renderText(printMonth(sheet, words, 'text'));
  expect(text).toContain('9 Sept: Mesh on Kale (40) and Spinach (41), bed 1');
  expect(text).toContain('9 Sept: Mesh on Leek (39), bed 2');
  const html = renderHtml(printMonth(sheet, words, 'page'));
  expect(html).toMatch(/15\u00a0×\u00a020\u00a0cm/);
});

test('a cold night is named with the minimum from which fleece is laid', () => {
  expect(renderText(printMonth(month(11), words, 'text')).replaceAll('\u00a0', ' ')).toContain(
    '25 Nov: Fleece at hand for Lamb’s lettuce (42) below −9 °C, open bed 3',
  );
});

test('the year in text has one sign a week and marks lean weeks', () => {
  const lines = renderYearText(yearPictureOf(plan, today), words).split('\n');
  const lane = lines.findIndex((line) => line.startsWith('Salad leaves'));
  expect([...lines[lane + 1]!.slice(1)]).toHaveLength(78);
  const marks = lines[lane + 2]!.slice(1);
  plan.weeks.forEach((week, i) => {
    expect((marks[i] ?? ' ') === '!').toBe(week.roles['salad-leaves']!.chanceLean >= 0.5);
  });
});

test('month labels of the year picture keep their distance, also over four years', () => {
  for (const count of [30, 78, 208]) {
    const weeks = Array.from({ length: count }, (_, i) => ({
      weekOf: new Date((dayOf('2026-08-17') + 7 * i) * 86_400_000).toISOString().slice(0, 10),
      roles: plan.weeks[i % 52]!.roles,
    }));
    const svg = renderYearSvg(yearPictureOf({ ...plan, weeks }, today), words);
    const at = [...svg.matchAll(/class="month" x="([\d.]+)"[^>]*>([^<]+)</g)].map((m) => Number(m[1]));
    expect(at.length).toBeGreaterThan(5);
    for (let i = 1; i < at.length; i++) expect(at[i]! - at[i - 1]!).toBeGreaterThan(30);
  }
});

test('the picture says in words what it shows', () => {
  const svg = renderYearSvg(yearPictureOf(plan, today), words);
  expect(svg).toMatch(
    /<title id="year-title">What there will be to eat, August 2026 to February 2028<\/title>/,
  );
  expect(svg).toMatch(/<desc id="year-desc">9 kitchen roles, week by week\. Cooked greens: \d+ lean weeks/);
});

test('plan --out writes every file, none of them empty or with raw markup from the garden', () => {
  const files = planFiles(plan, [], today);
  expect(files.map(([name]) => name)).toEqual([
    'plan.json',
    'month-2026-08.html',
    'month-2026-09.html',
    'month-2026-10.html',
    'dark-months.html',
    'fridge.html',
    'neighbour.html',
    'seeds.csv',
    'jobs.ics',
    'year.svg',
  ]);
  for (const [name, text] of files) {
    expect(text.length, name).toBeGreaterThan(60);
    if (/html|svg/.test(name)) expect(text, name).not.toContain('<late>');
  }
  const ics = files.find(([name]) => name === 'jobs.ics')![1];
  const ids = [...ics.matchAll(/^UID:(.*)$/gm)].map((m) => m[1]);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.length).toBeGreaterThan(9);
});
