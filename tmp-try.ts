import { readFileSync } from 'node:fs';
import { parseGarden } from '@twelvemonth/garden';
import { explainSowing } from './packages/workflows/src/argue/explain-sowing.ts';
import { openPlan } from './packages/workflows/src/argue/open-plan.ts';

const report = JSON.parse(readFileSync('/tmp/demo-plan.json', 'utf8'));
const { garden } = parseGarden(readFileSync('examples/marram-end.jsonc', 'utf8'), { today: 0 });
const o = openPlan(garden!, null, report, { fromDay: 0, weeks: 78, memberCount: 30, seed: 1 });
if (o.kind !== 'done') throw new Error(JSON.stringify(o));
for (const n of process.argv.slice(2).map(Number)) {
  const s = o.value.sowings.find((s) => s.number === n)!;
  const t = performance.now();
  const { sowing, roleNames, ...r } = explainSowing(o.value, s.id, o.value.problem.fromDay)!;
  console.log(n, sowing.kindName, sowing.sow, sowing.groundM2, (performance.now() - t).toFixed(0) + 'ms');
  console.log(JSON.stringify(r));
}
