import { expect, test } from 'vitest';
import { allKinds, kindById } from '../crops/catalogue.ts';
import type { Harvest } from '../crops/crop-type.ts';
import { withSetSize } from '../crops/set-size.ts';
import type { Exposure, PlaceWeather } from '../places/place.ts';
import { coldChangeCDays } from './cold-units.ts';
import { fleeceNight } from './fleece-night.ts';
import { partSoundShare } from './part-frost.ts';
import { makePlaceClock } from './place-clock.ts';
import { windLossShare } from './wind.ts';

const days = 70;
/** Ten soft weeks at 5 °C by night, but for one frost. */
function clockWith(frostDay: number, frostC: number) {
  const same = (value: number): Float64Array => new Float64Array(days).fill(value);
  const tminC = same(5);
  tminC[frostDay] = frostC;
  const weather: PlaceWeather = {
    startDay: 0,
    tmaxC: same(12),
    tminC,
    radiationMJPerM2Day: same(10),
    radiation7MJPerM2Day: same(10),
    soilC: same(8),
    waterShare: same(1),
    middleWaterShare: same(1),
    deepWaterShare: same(1),
    hardenedShare: same(0),
    workableDay: Int32Array.from({ length: days }, (_, i) => i),
  };
  return makePlaceClock(weather);
}

const partOf = (id: string, harvest: string): Harvest =>
  kindById(id)!.harvests.find((h) => h.id === harvest)!;

test('heads, curds and flowers are tenderer than the leaves around them', () => {
  for (const kind of allKinds())
    for (const { id, partFrostC, partFrostDays } of kind.harvests)
      if (partFrostC !== null) {
        expect(partFrostC, `${kind.id} ${id}`).toBeGreaterThan(kind.frostHardenedC);
        expect(partFrostDays, `${kind.id} ${id}`).toBeGreaterThan(0);
      }
  expect(kindById('potato-first-early')!.frostRegrowthShare).toBeGreaterThan(0.5);
});

test('a head carries every frost since it showed; pods picked later grew from later flowers', () => {
  const head = partOf('calabrese-early', 'head');
  const pods = partOf('pea-round', 'pods');
  const bed = clockWith(10, -6);
  expect(partSoundShare(head, bed, 0, 20, 20, 0)).toBeLessThan(0.05);
  expect(partSoundShare(head, bed, 0, 45, 45, 0)).toBe(1); // the frost came before the head
  expect(partSoundShare(pods, bed, 0, 20, 20, 0)).toBeLessThan(0.05);
  expect(partSoundShare(pods, bed, 0, 20, 60, 0)).toBe(1);
  expect(partSoundShare(head, clockWith(10, -3), 0, 20, 20, 0)).toBeCloseTo(0.5, 6);
  expect(partSoundShare(head, clockWith(10, -3), 0, 20, 20, 1.4)).toBeGreaterThan(0.9); // fleece
});

test('a fleece night is the first week that is too cold in a tenth of the winters, with what the plants stand', () => {
  const kind = kindById('lettuce-leaf')!;
  const member = (frostC: number) => ({
    bed: clockWith(30, frostC),
    groundDay: 0,
    clearDay: 69,
    firstDays: [20],
  });
  const mild = Array.from({ length: 9 }, () => member(0));
  const night = fleeceNight(kind, [...mild, member(-6)], 0, 69);
  expect(night?.day).toBe(28);
  expect(night?.belowC).toBeCloseTo(kind.frostSoftC, 4);
  expect(fleeceNight(kind, mild, 0, 69)).toBeNull();
  expect(fleeceNight(kind, [member(-6)], 35, 69)).toBeNull();
});

test('wind takes its share on open ground of a windy place alone, more from tall crops', () => {
  const at = (material: Exposure['cover']['material'], windy: boolean) =>
    ({ cover: { material }, windy }) as Exposure;
  const [sprouts, carrot] = [kindById('brussels-sprout')!, kindById('carrot-maincrop')!];
  expect(windLossShare(sprouts, at('open', true))).toBeGreaterThan(windLossShare(carrot, at('open', true)));
  expect(windLossShare(sprouts, at('open', false))).toBe(0);
  expect(windLossShare(sprouts, at('polytunnel', true))).toBe(0);
});

test('warm days take cold back, and larger sets meet more of it', () => {
  const { cold } = kindById('carrot-early')!;
  expect(coldChangeCDays(cold, 6.5)).toBe(7.5);
  expect(coldChangeCDays(cold, 17.5)).toBe(0);
  expect(coldChangeCDays(cold, 21)).toBe(-4); // 2 · (21 − 19)
  expect(kindById('leek')!.cold.undoAboveC).toBe(22);
  const set = kindById('onion-spring-set')!;
  expect(withSetSize(set, 25).bolting!.juvenileDays).toBe(set.bolting!.juvenileDays - 7);
  expect(withSetSize(kindById('carrot-early')!, 25)).toBe(kindById('carrot-early'));
});
