// node --import tsx truth/split-calendar.ts: moves windows of the sowing calendar between packages/growing/tables/calendar.csv
// and truth/held-out/calendar.csv, as the hash of `calendar: kind/route/place` says; --check writes nothing.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { type Split, splitOf } from './split.ts';

const files: Readonly<Record<Split, URL>> = {
  calibration: new URL('../packages/growing/tables/calendar.csv', import.meta.url),
  'held-out': new URL('./held-out/calendar.csv', import.meta.url),
};
const onlyCheck = process.argv.includes('--check');

const linesOf = (file: URL): string[] =>
  existsSync(file) ? readFileSync(file, 'utf8').trimEnd().split('\n') : [];

const [head = ''] = linesOf(files.calibration);
const windows = (['calibration', 'held-out'] as const).flatMap((split) =>
  linesOf(files[split])
    .slice(1)
    .map((line) => ({ line, split, due: splitOf(line.slice(0, line.indexOf(',')).replace(':', ': ')) })),
);
const misplaced = windows.filter(({ split, due }) => split !== due);
if (onlyCheck) for (const { line, due } of misplaced) console.error(`calendar: belongs into ${due}: ${line}`);
else if (misplaced.length > 0)
  for (const [split, file] of Object.entries(files)) {
    const lines = windows.filter(({ due }) => due === split).map(({ line }) => line);
    writeFileSync(file, `${[head, ...lines].join('\n')}\n`);
  }
console.log(
  `truth: ${misplaced.length} lines of the calendar ${onlyCheck ? 'lie in the wrong file' : 'moved'}`,
);
process.exit(onlyCheck && misplaced.length > 0 ? 1 : 0);
