import { readFileSync } from 'node:fs';
import { parseGarden } from '@twelvemonth/garden';
import { eat } from '@twelvemonth/growing';
import { meanScore } from '@twelvemonth/planning';
import { openPlan, lotsIn } from './packages/workflows/src/argue/open-plan.ts';
const report = JSON.parse(readFileSync('/tmp/demo-plan.json','utf8'));
const { garden } = parseGarden(readFileSync('examples/marram-end.jsonc','utf8'), { today: 0 });
const o = openPlan(garden!, null, report, { fromDay: 0, weeks: 78, memberCount: 30, seed: 1 });
if (o.kind !== 'done') throw new Error(JSON.stringify(o));
const open = o.value;
console.log(meanScore(open.problem.appetite, open.eaten, 13, 65));
const lots = lotsIn(open.problem, open.sowings, 0);
for (let k=0;k<4;k++){ const t=performance.now(); for (let i=0;i<40;i++) eat(lots, open.problem.appetite, open.problem.roles); console.log('eat ms', (performance.now()-t)/40); }
