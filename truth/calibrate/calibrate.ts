// npm run calibrate [-- NAME …] [--apply]: fits judged constants to calibration rows. Without --apply nothing is written;
// with it the proposed rows stand in the tables, for a human to accept or undo in the diff.
import { parseArgs } from 'node:util';
import { fitConstants } from './fit-constants.ts';
import { fitLines } from './fit-text.ts';
import { calibrationProblems } from './problems/index.ts';
import { writeProposal } from './proposal.ts';

const { values: flags, positionals: names } = parseArgs({
  options: { apply: { type: 'boolean', default: false } },
  allowPositionals: true,
});
const all = calibrationProblems();
const unknown = names.find((name) => all.every((problem) => problem.name !== name));
if (unknown !== undefined) {
  console.error(
    `calibrate: there is no "${unknown}"; there are ${all.map((problem) => problem.name).join(', ')}`,
  );
  process.exit(2);
}
const chosen = names.length === 0 ? all : all.filter((problem) => names.includes(problem.name));
const fits = chosen.map((problem) =>
  fitConstants(problem, (sentence) => process.stderr.write(`${sentence}\n`)),
);
for (const each of fits) console.log(`${fitLines(each).join('\n')}\n`);
if (flags.apply) {
  const written = writeProposal(fits);
  console.log(
    written.length === 0
      ? 'calibrate: nothing to change'
      : `calibrate: proposed rows stand in ${written.join(', ')}. Look at the diff, then compile: node scripts/compile-tables.mjs`,
  );
} else console.log('calibrate: nothing was written; --apply puts the proposed rows into the tables');
