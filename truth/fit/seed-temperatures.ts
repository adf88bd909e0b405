// node --import tsx truth/fit/seed-temperatures.ts [crop …]: what seed-fit.ts finds, a line a crop; a person carries it into
// the tables.
import { fitSeed, fittedCrops } from './seed-fit.ts';

const wanted = process.argv.slice(2);
for (const crop of fittedCrops()) {
  if (wanted.length > 0 && !wanted.includes(crop)) continue;
  const { values, timedCount, sharesCount } = fitSeed(crop);
  const text = Object.entries(values).map(([parameter, value]) => `${parameter} ${value}`);
  console.log(`${crop}, ${timedCount} cells of days and ${sharesCount} of percent: ${text.join(', ')}`);
}
