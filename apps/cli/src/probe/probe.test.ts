import { readFileSync } from 'node:fs';
import { stationById, stationIds } from '@twelvemonth/growing';
import { expect, test } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';
import { inRepository, recordingTerminal } from '../testing/recording-terminal.ts';
import { probeModels } from './all-models.ts';
import { inputsOf } from './input-words.ts';
import { probePage } from './list-text.ts';
import { runProbe } from './run-probe.ts';

async function probe(...argv: string[]) {
  const terminal = recordingTerminal();
  const code = await runCommandLine(['probe', ...argv], terminal);
  return { code, shown: terminal.shown(), said: terminal.said() };
}
const modelNamed = (name: string) => probeModels.find((model) => model.name === name)!;
function answer(name: string, inputs: unknown) {
  const result = runProbe(modelNamed(name), inputs);
  if (result.kind === 'refused') throw new Error(result.sentence);
  // biome-ignore lint/suspicious/noExplicitAny: answers are JSON
  return result.answer as Record<string, any>;
}
function refusal(name: string, inputs: unknown) {
  const result = runProbe(modelNamed(name), inputs);
  if (result.kind === 'answered') throw new Error(`answered ${JSON.stringify(result.answer)}`);
  return result;
}

test('the models of the list, no more and no fewer', () => {
  expect(probeModels.map((model) => model.name).sort()).toEqual(
    'day-length extraterrestrial-radiation radiation degree-days effective-day-degrees evapotranspiration soil-temperature weather-years place-weather emergence raising growth bolting bulbing frost regrowth keeping water'
      .split(' ')
      .sort(),
  );
});

test('every example is answered, and every output is described', () => {
  for (const model of probeModels) {
    const names = Object.keys(answer(model.name, model.example));
    expect(names.length, model.name).toBeGreaterThan(0);
    for (const name of names) expect(model.outputs, model.name).toHaveProperty(name);
    for (const input of inputsOf(model)) expect(input.meaning, `${model.name} ${input.name}`).not.toBe('');
  }
});

test('degree-days by every method, by hand', () => {
  const day = { tminC: 2, tmaxC: 12, lowerC: 5, upperC: 30, cutOff: 'horizontal' };
  const of = (more: object) => answer('degree-days', { ...day, ...more }).degreeDaysCDays;
  expect(of({ method: 'single-sine' })).toBe(2.721);
  expect(of({ method: 'single-triangle' })).toBe(2.45); // 7² / (2 · 10)
  expect(of({ method: 'double-triangle', nextTminC: 4 })).toBe(2.756); // (2.45 + 7² / (2 · 8)) / 2
  expect(of({ method: 'double-sine', nextTminC: 2 })).toBe(2.721);
  expect(of({ method: 'single-triangle', upperC: 10 })).toBe(2.25); // − 2² / 20
  expect(of({ method: 'single-triangle', upperC: 10, cutOff: 'intermediate' })).toBe(2.05);
  expect(of({ method: 'single-triangle', upperC: 10, cutOff: 'vertical' })).toBe(1.25); // 2.45 − 0.2 − 5 · 0.2
});

test('Penman–Monteith gives the worked example with its intermediates', () => {
  const example = modelNamed('evapotranspiration').example;
  const got = answer('evapotranspiration', example);
  expect(got.et0Mm).toBe(3.88);
  const printed = {
    windAtTwoMetresMs: [2.078, 0.002],
    pressureKPa: [100.1, 0.05],
    slopeKPaPerC: [0.122, 0.0005],
    vapourPressureKPa: [1.409, 0.001],
    saturationKPa: [1.997, 0.001],
    extraterrestrialRadiationMJPerM2Day: [41.09, 0.005],
    radiationMJPerM2Day: [22.07, 0.005],
    clearSkyMJPerM2Day: [30.9, 0.005],
    netLongwaveMJPerM2Day: [3.71, 0.005],
    netRadiationMJPerM2Day: [13.28, 0.005],
    availableMm: [5.42, 0.005],
    slopeShare: [0.518, 0.0005],
    psychrometricShare: [0.282, 0.0005],
  } as const;
  for (const [name, [value, within]] of Object.entries(printed))
    expect(Math.abs(got[name] - value), name).toBeLessThanOrEqual(within);
  const { rhMaxShare: _, rhMinShare: __, ...dry } = example as Record<string, unknown>;
  const byVapour = answer('evapotranspiration', { ...dry, vapourPressureKPa: 1.409, soilHeatMJPerM2Day: 1 });
  expect(byVapour.soilHeatMJPerM2Day).toBe(1);
  expect(byVapour.et0Mm).toBeCloseTo(3.88 - 0.518 * 0.408, 1);
});

test('emergence: warmth and age take their part of the seed', () => {
  const at = (constantC: number, packetAgeYears = 0) =>
    answer('emergence', { kind: 'spinach-spring', constantC, packetAgeYears });
  expect(at(25).emergedShare).toBeLessThan(0.5 * at(10).emergedShare);
  expect(at(10, 3).emergedShare / at(10).emergedShare).toBeCloseTo(at(10, 3).agedShare, 4);
  expect(at(10, 3).agedShare).toBeLessThan(0.6);
  expect(at(10).agedShare).toBe(1);
});

test('emergence at a constant temperature agrees with the same days one by one', () => {
  const constant = answer('emergence', { kind: 'carrot-maincrop', constantC: 12 });
  const daily = answer('emergence', { kind: 'carrot-maincrop', dailyC: new Array(60).fill(12) });
  expect(daily.days).toBe(constant.days);
  expect(constant.days).toBe(Math.ceil(constant.exactDays));
  expect(answer('emergence', { kind: 'carrot-maincrop', constantC: 0 })).toMatchObject({
    days: null,
    emergedShare: 0,
  });
});

test('water follows the bucket that is reckoned by hand', () => {
  // 0.4 m of ground hold 56 mm, 30 % of it with ease; Kc 0.9: four dry days of 5 mm take 18 mm.
  const { waterShare } = answer('water', { rainMm: [0, 0, 0, 0, 0, 300, 0], et0Mm: new Array(7).fill(5) });
  expect(waterShare.slice(0, 4)).toEqual([1, 1, 1, 1]);
  const fourth = (56 - 18) / (0.7 * 56);
  expect(waterShare[4]).toBeCloseTo(fourth, 4);
  expect(waterShare[5]).toBeCloseTo((56 - 18 - fourth * 4.5) / (0.7 * 56), 4);
  expect(waterShare[6]).toBe(1);
  // Deep roots draw on 112 mm, 45 % of it with ease: twelve dry days take 54 mm.
  const deep = answer('water', {
    rainMm: new Array(13).fill(0),
    et0Mm: new Array(13).fill(5),
    rooting: 'deep',
  });
  expect(deep.waterShare.slice(0, 12)).toEqual(new Array(12).fill(1));
  expect(deep.waterShare[12]).toBeCloseTo((112 - 54) / (0.55 * 112), 4);
});

test('the rest moves the right way', () => {
  const frost = (minimumC: number, more = {}) =>
    answer('frost', { kind: 'broad-bean-hardy', minimumC, hardenedShare: 1, ...more }).lostShare;
  expect(frost(-12)).toBeGreaterThan(frost(-8));
  expect(frost(-12, { underCover: true })).toBeLessThan(frost(-12));
  const bolted = (days: number) =>
    answer('bolting', { kind: 'onion-autumn-red', constantC: 7, days }).boltedShare;
  expect(bolted(0)).toBe(0);
  expect(answer('bolting', { kind: 'carrot-early', unitsCDays: 126 }).boltedShare).toBeCloseTo(0, 3);
  expect(answer('bolting', { kind: 'carrot-early', unitsCDays: 336 }).boltedShare).toBeCloseTo(0.9, 4);
  expect(answer('bolting', { kind: 'carrot-early', dailyC: [6.5, 6.5, 25, 6.5] }).unitsCDays).toBe(15);
  const setsOf = (more: object) =>
    answer('bolting', { kind: 'onion-autumn-red', station: 'camborne', cover: 'polytunnel', ...more })
      .boltedShare;
  expect(setsOf({ startDay: '2026-10-03' })).toBeGreaterThan(setsOf({ startDay: '2026-11-03' }));
  expect(setsOf({ startDay: '2026-10-18', setMm: 25 })).toBeGreaterThan(
    setsOf({ startDay: '2026-10-18', setMm: 15 }),
  );
  const head = { kind: 'calabrese-early', minimumC: -3, hardenedShare: 1, harvest: 'head' };
  expect(answer('frost', head)).toMatchObject({ partThresholdC: -3, partSpoiledShare: 0.5 });
  const garlic = (startDay: string) =>
    answer('bulbing', { kind: 'garlic-bulb', startDay, station: 'camborne' });
  expect(garlic('2026-10-15').clovedShare.p50).toBe(1);
  expect(garlic('2027-04-25').clovedShare.p50).toBeLessThan(0.8);
  expect(bolted(90)).toBeGreaterThan(bolted(60));
  const keeping = answer('keeping', { kind: 'onion-spring-set', store: 'dry' });
  expect(keeping.leftShare).toHaveLength(keeping.lifeWeeks + 1);
  expect(keeping.leftShare[2]).toBeCloseTo((1 - keeping.lossPerWeekShare) ** 2, 5);
  const growth = answer('growth', modelNamed('growth').example);
  expect(growth.ratioToAgainst).toBeCloseTo(
    growth.effectiveDayDegreesCDays / growth.againstEffectiveDayDegreesCDays,
    3,
  );
  const midwinter = answer('growth', {
    ...modelNamed('growth').example,
    day: '2026-12-21',
    againstDay: '2026-12-21',
  });
  expect(midwinter.shortDays.from < '2026-12-21' && midwinter.shortDays.to > '2026-12-21').toBe(true);
  expect(midwinter.ratioToAgainst).toBe(1);
  const regrowth = answer('regrowth', modelNamed('regrowth').example);
  expect(regrowth.regrowthDays.p50).toBeLessThan(regrowth.againstRegrowthDays.p50);
});

test('normals in the inputs give the same weather as the station that has them', () => {
  const { site, normals } = stationById('dublin')!;
  const known = Object.fromEntries(
    Object.entries(normals).filter(([, values]) => values.every((value: number | null) => value !== null)),
  );
  const { latitudeDeg, elevationM, coastal } = site;
  const years = { years: 3, seed: 5 };
  expect(answer('weather-years', { normals: known, latitudeDeg, elevationM, coastal, ...years })).toEqual(
    answer('weather-years', { station: 'dublin', ...years }),
  );
  expect(stationIds).toContain('camborne');
});

test.each([
  ['day-length', { latitudeDeg: 95, dayOfYear: 15 }, 'latitudeDeg', /degrees.*from −90 to 90/],
  ['day-length', { latitudeDeg: 54 }, 'dayOfYear', /is missing.*from 1 to 366/],
  ['day-length', { latitudeDeg: 54, dayOfYear: 15, horizonDg: 1 }, 'horizonDg', /Was "horizonDeg" meant/],
  ['day-length', 7, '', /one object/],
  ['day-length', null, '', /one object/],
  ['degree-days', { tminC: 12, tmaxC: 2, lowerC: 5, method: 'single-sine' }, 'tminC', /above "tmaxC"/],
  [
    'degree-days',
    { tminC: 2, tmaxC: 12, lowerC: 5, upperC: 5, method: 'single-sine' },
    'upperC',
    /not above/,
  ],
  [
    'degree-days',
    { tminC: 2, tmaxC: 12, lowerC: 5, method: 'double-sine' },
    'nextTminC',
    /next day's minimum/,
  ],
  ['degree-days', { tminC: 2, tmaxC: 12, lowerC: 5, method: 'sine' }, 'method', /single-sine \|/],
  ['emergence', { kind: 'carrot-mancrop', constantC: 12 }, 'kind', /Was "carrot-maincrop" meant/],
  ['emergence', { kind: 'leek' }, 'constantC', /Give either/],
  ['emergence', { kind: 'leek', dailyC: [4, 'x'] }, 'dailyC[1]', /cannot be "x"/],
  ['weather-years', { station: 'dubln' }, 'station', /Was "dublin" meant/],
  ['weather-years', {}, 'station', /a climate is needed/],
  ['keeping', { kind: 'leek', store: 'dry' }, 'store', /It keeps in: fridge/],
  ['bolting', { kind: 'onion-autumn-red', constantC: 7, days: 60, setMm: 20 }, 'setMm', /give "startDay"/],
  [
    'bolting',
    { kind: 'leek', station: 'dublin', startDay: '2027-04-01', setMm: 20 },
    'setMm',
    /no usual size of set/,
  ],
  ['frost', { kind: 'leek', minimumC: -5, hardenedShare: 1, harvest: 'head' }, 'harvest', /Its harvests: /],
  ['growth', { kind: 'leek', station: 'dublin', day: '2027-02-30' }, 'day', /a date/],
  ['water', { rainMm: [1, 2], et0Mm: [1] }, 'et0Mm', /same number of days/],
])('%s refuses %j, naming %s', (name, inputs, input, words) => {
  const refused = refusal(name, inputs);
  expect(refused.input).toBe(input);
  expect(refused.sentence).toMatch(words);
});

test('an array gives a line each, and one that cannot be answered says so and ends with 1', async () => {
  const good = { latitudeDeg: 54.6, dayOfYear: 15 };
  const all = await probe('day-length', '--with', JSON.stringify([good, good]));
  expect([all.code, all.shown.trim().split('\n').length, all.said]).toEqual([0, 2, '']);
  const { code, shown, said } = await probe(
    'day-length',
    '--with',
    JSON.stringify([good, { latitudeDeg: 1 }, good]),
  );
  const lines = shown
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(code).toBe(1);
  expect(lines.map((line) => Object.keys(line))).toEqual([
    ['dayLengthHours'],
    ['error', 'input'],
    ['dayLengthHours'],
  ]);
  expect(said).toMatch(/1 of 3/);
});

test('wrong use ends with 2 and bad inputs with 1, each in a sentence', async () => {
  expect(await probe('day-lenght', '--with', '{}')).toMatchObject({ code: 2, shown: '' });
  expect((await probe('day-lenght', '--with', '{}')).said).toContain('Was "day-length" meant?');
  expect((await probe('day-length')).code).toBe(2);
  const broken = await probe('day-length', '--with', '{latitudeDeg:5}');
  expect([broken.code, broken.shown]).toEqual([1, '']);
  expect(broken.said).toMatch(/is not JSON .*single quotes/);
  expect((await probe('day-length', '--with', '{}')).said).toMatch(
    /^probe day-length: Input "latitudeDeg" is missing/,
  );
});

test('the list names every input and output, and the page of docs is current', async () => {
  const { shown } = await probe('--list');
  for (const model of probeModels) {
    expect(shown).toContain(`${model.name}: `);
    for (const name of [...inputsOf(model).map((input) => input.name), ...Object.keys(model.outputs)])
      expect(shown).toContain(`    ${name}: `);
  }
  expect(readFileSync(inRepository('docs/probe.md'), 'utf8')).toBe(probePage(probeModels));
});
