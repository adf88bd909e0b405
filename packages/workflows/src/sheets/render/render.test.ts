import fc from 'fast-check';
import ICAL from 'ical.js';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { inventedPlan, inventedSeeds } from '../fixture/invented-plan.ts';
import { monthSheetOf } from '../month-sheet.ts';
import type { Printable } from '../printable.ts';
import { seedSheetOf } from '../seed-sheet.ts';
import { dayOf } from '../sheet-days.ts';
import { monthCsv, seedCsv } from './csv.ts';
import { renderHtml } from './html.ts';
import { renderIcs } from './ics.ts';
import { renderText, wrapText } from './text.ts';

const today = dayOf('2026-08-20');
const september = monthSheetOf(inventedPlan, {
  month: { year: 2026, month: 9 },
  today,
  seeds: inventedSeeds,
});

const sheetWith = (text: string): Printable => ({
  language: 'en',
  orientation: 'landscape',
  title: text,
  aside: text,
  intro: [text],
  sections: [
    {
      heading: 'Area',
      note: text,
      opens: true,
      block: {
        kind: 'table',
        layout: 'lines',
        tick: true,
        columns: [
          { title: 'No.', role: 'number', width: 1, label: '' },
          { title: 'What', role: 'what', width: 1, label: '' },
          { title: 'Amount', role: 'amount', width: 1, label: '' },
          { title: 'How', role: 'detail', width: 1, label: 'how:' },
        ],
        groups: [{ heading: 'Week', rows: [{ state: 'draft', cells: ['7', text, text, text] }] }],
      },
    },
    {
      heading: '',
      note: null,
      opens: false,
      block: { kind: 'list', tick: true, columns: 2, items: [{ text, state: 'plain' }] },
    },
    {
      heading: '',
      note: null,
      opens: false,
      block: {
        kind: 'table',
        layout: 'grid',
        tick: true,
        columns: [
          { title: 'A', role: 'what', width: 1, label: '' },
          { title: 'B', role: 'figure', width: 1, label: '' },
        ],
        groups: [{ heading: '', rows: [{ state: 'firm', cells: [text, '12'] }] }],
      },
    },
  ],
  foot: [text],
});

test('no line of the text layout is longer than its width, whatever is written in it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme-ascii', maxLength: 300 }), (text) => {
      for (const line of renderText(sheetWith(text.replaceAll('\n', ' ')), 80).split('\n'))
        expect([...line].length).toBeLessThanOrEqual(80);
    }),
    { numRuns: 300 },
  );
});

test('wrapping loses no letter', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 10, max: 80 }), (text, width) => {
      const letters = (s: string): string => s.replaceAll(/ +/g, '');
      expect(letters(wrapText(text, width, 4).join(''))).toBe(letters(text));
    }),
  );
});

test('the text layout shows the state by a sign', () => {
  expect(renderText(sheetWith('Leek'))).toContain('  7 [·] Leek');
});

test('HTML holds what people wrote as text and never as markup', () => {
  const evil = `<img src=x onerror="alert(1)">'&amp;`;
  const html = renderHtml(sheetWith(evil));
  expect(html).not.toContain('<img');
  expect(html).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt;&#39;&amp;amp;');
  expect(html).not.toMatch(/https?:\/\/|<script/);
});

test('the calendar parses, holds all-day events, folds at 75 octets and gives texts back', () => {
  const text = 'Größe, „x“; back\\slash\nnew line – '.repeat(6);
  const events = [
    { id: 'leek-bbbbbb-sow', day: dayOf('2026-12-31'), title: 'Sow, leek; 12', text, category: 'sow' },
    { id: 'b', day: dayOf('2028-02-28'), title: 'B', text: '', category: 'lift' },
  ];
  const ics = renderIcs(events, 'A, household', today, 'en');
  expect(ics.endsWith('\r\n')).toBe(true);
  for (const line of ics.split('\r\n')) expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
  expect(ics.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  const calendar = new ICAL.Component(ICAL.parse(ics));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  const parsed = calendar.getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
  expect(parsed).toHaveLength(2);
  expect(parsed[0]!.summary).toBe('Sow, leek; 12');
  expect(parsed[0]!.description).toBe(text);
  expect(parsed[0]!.startDate.isDate).toBe(true);
  expect(parsed.map((e) => [e.startDate.toString(), e.endDate.toString()])).toEqual([
    ['2026-12-31', '2027-01-01'],
    ['2028-02-28', '2028-02-29'],
  ]);
  expect(renderIcs(events, 'A, household', today, 'en')).toBe(ics);
});

test('CSV has one line a sowing line with ISO dates, and defuses formulas', () => {
  const { data, errors } = Papa.parse<Record<string, string>>(monthCsv(september), {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  expect(data.map((row) => [row.number, row.act, row.day])).toEqual([
    ['41', 'sow', '2026-08-31'],
    ['42', 'sow', '2026-09-02'],
    ['40', 'plant-out', '2026-09-12'],
    ['44', 'sow', '2026-09-14'],
  ]);
  const evil = seedSheetOf(
    inventedPlan,
    inventedSeeds.map((s) => ({ ...s, kindName: '=cmd|calc' })),
    today,
  );
  expect(seedCsv(evil)).toContain("'=cmd|calc");
});
