/**
 * The temperatures of a crop's seed that fit the calibration cells of Harrington & Minges 1954 best, given the priors of
 * seed-priors.json: maximum a posteriori with normal errors, a tolerance of the truth report taken as two standard
 * deviations, by pattern search from several starts. Held-out cells are never read.
 */
import { emergenceRate, germinatingShare } from '../../packages/growing/src/index.ts';
import { type Figure, numberIn, readFigures } from '../figures.ts';
import { patternSearch } from './pattern-search.ts';
import priors from './seed-priors.json' with { type: 'json' };

type Normal = readonly [mean: number, sd: number];
const square = (x: number): number => x * x;
const away = (x: number, [mean, sd]: readonly number[]): number => square((x - mean!) / sd!);
/** Cost of corners out of order. */
const disorder = 1e4;

interface Cell {
  readonly soilC: number;
  readonly value: number;
}

const cellsOf = (name: string, column: string, crop: string): Figure[] =>
  readFigures(name, 'calibration').filter((f) => f.crop === crop && f[column] !== '');

function fitDays(cells: readonly Cell[], prior: typeof priors.cool, base: Normal): number[] {
  const traits = ([baseC, sum, optimumC, plateauC, ceilingC]: readonly number[]) => ({
    emergenceBaseC: baseC!,
    emergenceSumCDays: sum!,
    emergenceOptimumC: optimumC!,
    emergencePlateauC: plateauC!,
    emergenceCeilingC: ceilingC!,
    emergenceLowestC: -50,
  });
  const cost = (x: readonly number[]): number => {
    const [baseC, sum, optimumC, plateauC, ceilingC] = x as [number, number, number, number, number];
    if (
      baseC < -1 ||
      sum < 10 ||
      plateauC < 0 ||
      optimumC <= baseC + 2 ||
      ceilingC <= optimumC + plateauC + 0.5
    )
      return disorder * (1 + Math.abs(sum));
    const misses = cells.map(({ soilC, value }) => {
      const sd = (soilC >= 10 && soilC <= 25 ? Math.max(2, 0.15 * value) : Math.max(4, 0.25 * value)) / 2;
      const days = 1 / Math.max(1 / 400, emergenceRate(traits(x), soilC)) + 0.5;
      return square(Math.min(20, (days - value) / sd));
    });
    return (
      misses.reduce((a, b) => a + b, 0) +
      away(baseC, base) +
      away(optimumC, prior.optimum) +
      away(plateauC, prior.plateau) +
      away(ceilingC, prior.ceiling)
    );
  };
  const starts = [10, 20, 40, 80, 120, 180, 260, 350].map((sum) => [
    base[0],
    sum,
    prior.optimum[0]!,
    prior.plateau[0]!,
    prior.ceiling[0]!,
  ]);
  const found = starts.map((start) => patternSearch(cost, start, [2, 20, 2, 2, 2]));
  const best = found.reduce((a, b) => (b.cost < a.cost ? b : a));
  return [...best.at, best.cost];
}

function fitShare(cells: readonly (Cell & { sd: number })[], prior: typeof priors.cool): number[] {
  const cost = ([coldNone, coldWidth, warmFull, warmWidth]: readonly number[]): number => {
    if (coldWidth! < 0.5 || warmWidth! < 0.5 || warmFull! < coldNone! + coldWidth!) return disorder;
    const traits = {
      germinationColdNoneC: coldNone!,
      germinationColdFullC: coldNone! + coldWidth!,
      germinationWarmFullC: warmFull!,
      germinationWarmNoneC: warmFull! + warmWidth!,
    };
    const misses = cells.map(({ soilC, value, sd }) =>
      square((germinatingShare(traits, soilC) - value) / sd),
    );
    return (
      misses.reduce((a, b) => a + b, 0) +
      away(coldNone!, prior.coldNone) +
      away(coldWidth!, prior.coldWidth) +
      away(warmFull!, prior.warmFull) +
      away(warmWidth!, prior.warmWidth)
    );
  };
  const starts = [0, -6, 6].flatMap((cold) =>
    [0, -8, -14].map((warm) => [
      prior.coldNone[0]! + cold,
      prior.coldWidth[0]!,
      Math.max(prior.coldNone[0]! + cold + prior.coldWidth[0]!, prior.warmFull[0]! + warm),
      prior.warmWidth[0]! - warm / 2,
    ]),
  );
  const found = starts.map((start) => patternSearch(cost, start, [2, 2, 2, 2]));
  const best = found.reduce((a, b) => (b.cost < a.cost ? b : a));
  const [coldNone, coldWidth, warmFull, warmWidth] = best.at as [number, number, number, number];
  return [coldNone, coldNone + coldWidth, warmFull, warmFull + warmWidth, best.cost];
}

/** Values by table parameter, °C and °C·d, rounded as they stand in the tables; and the cells that they rest on. */
export interface SeedFit {
  readonly values: Readonly<Record<string, number>>;
  readonly timedCount: number;
  readonly sharesCount: number;
}

export const fittedCrops = (): string[] => [
  ...new Set(readFigures('emergence-days', 'calibration').map((f) => f.crop!)),
];

const tenth = (x: number): number => Math.round(10 * x) / 10 + 0;

export function fitSeed(crop: string): SeedFit {
  const prior = priors.tenderCrops.includes(crop) ? priors.tender : priors.cool;
  const known = (priors.base as Readonly<Record<string, number>>)[crop];
  const base: Normal = known === undefined ? [prior.base[0]!, prior.base[1]!] : [known, 1.5];
  const own = cellsOf('emergence-days', 'days', crop).map((f) => ({
    days: f.days!,
    soilC: numberIn(f, 'soilC'),
  }));
  const timed = own
    .filter(({ days, soilC }) => days !== 'NG' && soilC > 0 && soilC < 40)
    .map(({ days, soilC }) => ({ soilC, value: Number(days) }));
  const none = own.filter(({ days }) => days === 'NG').map(({ soilC }) => soilC);
  const shares = cellsOf('emergence-percent', 'percent', crop)
    .map((f) => ({
      soilC: numberIn(f, 'soilC'),
      value: numberIn(f, 'percent') / numberIn(f, 'bestPercent'),
      sd: 0.05,
    }))
    // Where the leaflet contradicts itself, nothing came up: the days are what it was made for.
    .filter(({ soilC, value }) => !(none.includes(soilC) && value > 0.05));
  const [baseC, sum, optimumC, plateauC, ceilingC] = fitDays(timed, prior, base);
  const gone = none.map((soilC) => ({ soilC, value: 0, sd: 0.02 }));
  const [coldNoneC, coldFullC, warmFullC, warmNoneC] = fitShare([...shares, ...gone], prior);
  return {
    values: {
      'emergence-base-c': tenth(baseC!),
      'emergence-sum-c-days': Math.round(sum!),
      'emergence-optimum-c': tenth(optimumC!),
      'emergence-plateau-c': tenth(plateauC!),
      'emergence-ceiling-c': tenth(ceilingC!),
      'germination-cold-none-c': tenth(coldNoneC!),
      'germination-cold-full-c': tenth(coldFullC!),
      'germination-warm-full-c': tenth(warmFullC!),
      'germination-warm-none-c': tenth(warmNoneC!),
    },
    timedCount: timed.length,
    sharesCount: shares.length,
  };
}
