import { dayOf } from '@twelvemonth/workflows';
import { expect, test } from 'vitest';
import { handoverWords, restWords } from './ground-words.ts';

test('a broken rest says the family, how soon, where, and what is on record', () => {
  const rest = { family: 'Brassicaceae', disease: 'clubroot', afterYears: 1, restYears: 3, m2: 1.8 };
  expect(restWords({ ...rest, onRecord: false })).toBe(
    'brassicas again after 1 year on 1.8\u00a0m²; no clubroot on record',
  );
  expect(restWords({ ...rest, onRecord: true })).toContain('clubroot is on record there');
  expect(restWords({ ...rest, disease: null, onRecord: false })).not.toContain('record');
});

test('a handover in passes names each week, its ground and the sowing that takes it', () => {
  const passes = [
    { monday: dayOf('2026-09-07'), m2: 1.2, toNumber: 12 },
    { monday: dayOf('2026-09-14'), m2: 0.6, toNumber: 14 },
  ];
  const line = {
    fromNumber: 3,
    fromKindName: 'Beans',
    toKindName: 'Kale',
    placeName: 'tunnel beds 2',
    passes,
  };
  expect(handoverWords(line).replaceAll('\u00a0', ' ')).toBe(
    'Beans (3), tunnel beds 2, to Kale: in 2 passes: 7 Sept 1.2 m² (12) and 14 Sept 0.6 m² (14)',
  );
});
