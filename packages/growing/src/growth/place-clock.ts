/**
 * The clocks that run in one place in one member: heat and light (growth), soil warmth (emergence), cold units
 * (vernalisation), frost margins. Each is a running sum (or a weekly minimum) made once when first asked for, so
 * that a sowing is a few binary searches, not a day loop.
 *
 * A running sum S has one entry more than there are days: S[i] is the sum over the days before day i.
 */
import type { Day } from '@twelvemonth/basis';
import type { CropType, Rooting } from '../crops/crop-type.ts';
import type { PlaceWeather } from '../places/place.ts';
import { type ColdBalance, makeColdBalance } from './cold-balance.ts';
import { coldChangeCDays } from './cold-units.ts';
import { sineDayDegreesC } from './day-degrees.ts';
import { frostThresholdC } from './frost.ts';
import { stretchingCDays } from './legginess.ts';
import { effectiveDayDegrees } from './light-limited-heat.ts';
import { NEVER, type RunningSum } from './running-sum.ts';
import { emergenceOfDay, seedlingsOfDay } from './seedbed-day.ts';

export interface PlaceClock {
  readonly startDay: Day;
  readonly dayCount: number;
  readonly weather: PlaceWeather;
  /** Sum of effective day-degrees, °C·d, slowed by drought. */
  growth(kind: CropType): RunningSum;
  /** Progress of emergence: 1 = half of the seed is up. */
  emergence(kind: CropType): RunningSum;
  /** The same, each day times the share of the seed that comes up at its temperature. */
  seedlings(kind: CropType): RunningSum;
  /** Cold counted for running to seed, less what warmth undid, °C·d. */
  cold(kind: CropType): ColdBalance;
  /** Smallest margin (minimum − killing temperature, °C) of each seven days from the start on. */
  frostMargins(kind: CropType): Float32Array;
  /** Lowest minimum of each seven days from the start on, °C. */
  weekMinima(): Float32Array;
  /** Light on the leaves, MJ/m². */
  light(): RunningSum;
  /** Warmth in which stems stretch, °C·d: see legginess.ts. */
  stretching(): RunningSum;
}

function weeklySmallest(dayCount: number, read: (i: number) => number): Float32Array {
  const weekly = new Float32Array(Math.ceil(dayCount / 7)).fill(99);
  for (let i = 0; i < dayCount; i++) {
    const value = read(i);
    const week = Math.floor(i / 7);
    if (value < weekly[week]!) weekly[week] = value;
  }
  return weekly;
}

const emergenceKey = (kind: CropType): string =>
  `e${kind.emergenceBaseC}/${kind.emergenceSumCDays}/${kind.emergenceOptimumC}/${kind.emergencePlateauC}/${kind.emergenceCeilingC}/${kind.emergenceLowestC}`;

const germinationKey = (kind: CropType): string =>
  `${kind.germinationColdNoneC}/${kind.germinationColdFullC}/${kind.germinationWarmFullC}/${kind.germinationWarmNoneC}`;

/** Dry ground slows emergence to half at the worst. */
const moistShare = (weather: PlaceWeather, i: number): number => Math.min(1, weather.waterShare[i]! + 0.5);

/** How freely a crop grows by its water: the share of its own root depth. */
export function waterShareOf(weather: PlaceWeather, rooting: Rooting): Float64Array {
  if (rooting === 'deep') return weather.deepWaterShare;
  return rooting === 'middle' ? weather.middleWaterShare : weather.waterShare;
}

export function makePlaceClock(weather: PlaceWeather): PlaceClock {
  const dayCount = weather.tmaxC.length;
  const sums = new Map<string, RunningSum>();
  const margins = new Map<string, Float32Array>();
  // Found by kind first: to write the corners out as a key takes longer than the searches that follow.
  const growthByKind = new Map<CropType, RunningSum>();
  const emergenceByKind = new Map<CropType, RunningSum>();
  const seedlingsByKind = new Map<CropType, RunningSum>();
  const marginsByKind = new Map<CropType, Float32Array>();
  const coldByKind = new Map<CropType, ColdBalance>();
  const balances = new Map<string, ColdBalance>();
  let minima: Float32Array | null = null;

  const sumOf = (key: string, daily: (i: number) => number): RunningSum => {
    let sum = sums.get(key);
    if (sum === undefined) {
      sum = new Float64Array(dayCount + 1);
      for (let i = 0; i < dayCount; i++) sum[i + 1] = sum[i]! + daily(i);
      sums.set(key, sum);
    }
    return sum;
  };

  return {
    startDay: weather.startDay,
    dayCount,
    weather,
    growth: (kind) => {
      const known = growthByKind.get(kind);
      if (known !== undefined) return known;
      const { growthBaseC, growthOptimumC, lightFactor, lightCompensationMJPerM2Day: compensation } = kind;
      const water = waterShareOf(weather, kind.rooting);
      const roots = water === weather.waterShare ? '' : kind.rooting;
      const sum = sumOf(`g${growthBaseC}/${growthOptimumC}/${lightFactor}/${compensation}/${roots}`, (i) => {
        const heat = sineDayDegreesC(weather.tminC[i]!, weather.tmaxC[i]!, growthBaseC, growthOptimumC);
        const light = weather.radiation7MJPerM2Day[i]!;
        return effectiveDayDegrees(heat, light, lightFactor, compensation) * water[i]!;
      });
      growthByKind.set(kind, sum);
      return sum;
    },
    emergence: (kind) => {
      const known = emergenceByKind.get(kind);
      if (known !== undefined) return known;
      const { soilC, tminC, tmaxC } = weather;
      const sum = sumOf(
        emergenceKey(kind),
        (i) => emergenceOfDay(kind, soilC[i]!, tminC[i]!, tmaxC[i]!) * moistShare(weather, i),
      );
      emergenceByKind.set(kind, sum);
      return sum;
    },
    seedlings: (kind) => {
      const known = seedlingsByKind.get(kind);
      if (known !== undefined) return known;
      const { soilC, tminC, tmaxC } = weather;
      const sum = sumOf(
        `${emergenceKey(kind)}/${germinationKey(kind)}`,
        (i) => seedlingsOfDay(kind, soilC[i]!, tminC[i]!, tmaxC[i]!) * moistShare(weather, i),
      );
      seedlingsByKind.set(kind, sum);
      return sum;
    },
    cold: (kind) => {
      const known = coldByKind.get(kind);
      if (known !== undefined) return known;
      const { cold } = kind;
      const key = `${cold.baseC}/${cold.optimumC}/${cold.maximumC}/${cold.undoAboveC}/${cold.undoPerC}`;
      let balance = balances.get(key);
      if (balance === undefined) {
        balance = makeColdBalance(weather.startDay, dayCount, (i) =>
          coldChangeCDays(cold, (weather.tminC[i]! + weather.tmaxC[i]!) / 2),
        );
        balances.set(key, balance);
      }
      coldByKind.set(kind, balance);
      return balance;
    },
    frostMargins: (kind) => {
      const known = marginsByKind.get(kind);
      if (known !== undefined) return known;
      const key = `${kind.frostSoftC}/${kind.frostHardenedC}`;
      let weekly = margins.get(key);
      if (weekly === undefined) {
        // A night finds plants as hard as the day before left them.
        weekly = weeklySmallest(dayCount, (i) => {
          const hardened = weather.hardenedShare[Math.max(0, i - 1)]!;
          return weather.tminC[i]! - frostThresholdC(kind, hardened);
        });
        margins.set(key, weekly);
      }
      marginsByKind.set(kind, weekly);
      return weekly;
    },
    weekMinima: () => {
      minima ??= weeklySmallest(dayCount, (i) => weather.tminC[i]!);
      return minima;
    },
    light: () => sumOf('light', (i) => weather.radiation7MJPerM2Day[i]!),
    stretching: () => sumOf('stretching', (i) => stretchingCDays(weather.tminC[i]!, weather.tmaxC[i]!)),
  };
}

export { NEVER, type RunningSum };

/** First day on which the sum since `fromDay` has reached `amount`; NEVER when the weather ends before. */
export function dayOfSum(clock: PlaceClock, sum: RunningSum, fromDay: Day, amount: number): Day {
  if (fromDay >= NEVER) return NEVER;
  const from = Math.max(0, fromDay - clock.startDay);
  if (from > clock.dayCount) return NEVER;
  const target = sum[from]! + amount;
  if (amount <= 0) return clock.startDay + from;
  if (sum[clock.dayCount]! < target) return NEVER;
  let low = from;
  let high = clock.dayCount;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (sum[middle]! < target) low = middle + 1;
    else high = middle;
  }
  return clock.startDay + low;
}

/** Sum from `fromDay` up to (not with) `toDay`, both held to the weather at hand. */
export function sumBetween(clock: PlaceClock, sum: RunningSum, fromDay: Day, toDay: Day): number {
  const from = Math.min(Math.max(0, fromDay - clock.startDay), clock.dayCount);
  const to = Math.min(Math.max(from, toDay - clock.startDay), clock.dayCount);
  return sum[to]! - sum[from]!;
}

/** Last day from which the sum up to (not with) `toDay` still holds `amount`; the start of the weather when none does. */
export function lastDayBefore(clock: PlaceClock, sum: RunningSum, toDay: Day, amount: number): Day {
  const to = Math.min(Math.max(0, toDay - clock.startDay), clock.dayCount);
  const target = sum[to]! - amount;
  let low = 0;
  let high = to;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (sum[middle]! <= target) low = middle;
    else high = middle - 1;
  }
  return clock.startDay + low;
}
