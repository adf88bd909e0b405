// node --import tsx truth/split-figures.ts: puts every published figure into the folder that the hash of its id says.
// Add a figure to truth/calibration/NAME.csv and run this; --check writes nothing and fails when one lies wrong.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { figureNames, figureOf, fileOf, readFigures } from './figures.ts';
import { type Split, splitOf } from './split.ts';

const onlyCheck = process.argv.includes('--check');
const splits: readonly Split[] = ['calibration', 'held-out'];
let wrong = 0;

for (const name of figureNames()) {
  const files = splits
    .map((split) => ({ split, file: fileOf(name, split) }))
    .filter((f) => existsSync(f.file));
  const head = readFileSync(files[0]!.file, 'utf8').split('\n')[0]!;
  const lines = files.flatMap(({ split, file }) => {
    const [, ...rest] = readFileSync(file, 'utf8').trimEnd().split('\n');
    const figures = readFigures(name, split);
    return rest.map((line, i) => ({ line, split, due: splitOf(figureOf(figures[i]!)) }));
  });
  const misplaced = lines.filter(({ split, due }) => split !== due);
  wrong += misplaced.length;
  if (onlyCheck)
    for (const { line, due } of misplaced) console.error(`${name}: belongs into ${due}: ${line}`);
  if (onlyCheck || misplaced.length === 0) continue;
  for (const split of splits) {
    const own = lines.filter(({ due }) => due === split).map(({ line }) => line);
    writeFileSync(fileOf(name, split), `${[head, ...own].join('\n')}\n`);
  }
}
console.log(`truth: ${wrong} figures ${onlyCheck ? 'lie in the wrong folder' : 'moved'}`);
process.exit(onlyCheck && wrong > 0 ? 1 : 0);
