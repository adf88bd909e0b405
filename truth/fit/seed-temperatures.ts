// node --import tsx truth/fit/seed-temperatures.ts [crop …]: the temperatures of seed that fit the calibration cells of
// the leaflet best, given the priors of seed-priors.json (maximum a posteriori, squared errors; a tolerance of the
// truth report is two standard deviations). Prints a line a crop; a person carries them into the tables.
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

const days = readFigures('emergence-days', 'calibration');
const wanted = process.argv.slice(2);
for (const crop of [...new Set(days.map((f) => f.crop!))]) {
  if (wanted.length > 0 && !wanted.includes(crop)) continue;
  const prior = priors.tenderCrops.includes(crop) ? priors.tender : priors.cool;
  const known = (priors.base as Readonly<Record<string, number>>)[crop];
  const base: Normal = known === undefined ? [prior.base[0]!, prior.base[1]!] : [known, 1.5];
  const own = cellsOf('emergence-days', 'days', crop);
  const timed = own.filter((f) => f.days !== 'NG' && numberIn(f, 'soilC') > 0 && numberIn(f, 'soilC') < 40);
  const none = own.filter((f) => f.days === 'NG').map((f) => numberIn(f, 'soilC'));
  const shares = cellsOf('emergence-percent', 'percent', crop)
    .map((f) => ({
      soilC: numberIn(f, 'soilC'),
      value: numberIn(f, 'percent') / numberIn(f, 'bestPercent'),
      sd: 0.05,
    }))
    // Where the leaflet contradicts itself, nothing came up: the days are what it was made for.
    .filter(({ soilC, value }) => !(none.includes(soilC) && value > 0.05));
  const fitted = fitDays(
    timed.map((f) => ({ soilC: numberIn(f, 'soilC'), value: numberIn(f, 'days') })),
    prior,
    base,
  );
  const up = fitShare([...shares, ...none.map((soilC) => ({ soilC, value: 0, sd: 0.02 }))], prior);
  const one = (x: number): string => (Math.round(10 * x) / 10 + 0).toFixed(1);
  const [b, s, o, p, c] = fitted as [number, number, number, number, number];
  console.log(
    `${crop}: base ${one(b)} sum ${Math.round(s)} optimum ${one(o)} plateau ${one(p)} ceiling ${one(c)}; none ${one(up[0]!)} full ${one(up[1]!)} to ${one(up[2]!)} none ${one(up[3]!)} (${timed.length} and ${shares.length} cells)`,
  );
}
