import { readFileSync } from 'node:fs';
import { isoFromDay } from '@twelvemonth/basis';
import { parseGarden } from '@twelvemonth/garden';
import { runSowing } from '@twelvemonth/growing';
import { openPlan } from './packages/workflows/src/argue/open-plan.ts';
const { garden } = parseGarden(readFileSync('examples/marram-end.jsonc','utf8'), { today: 0 });
const o = openPlan(garden!, null, null, { fromDay: 20685, weeks: 78, memberCount: 8, seed: 1 });
if (o.kind !== 'done') throw new Error(JSON.stringify(o));
const { problem } = o.value;
for (const c of problem.standing) {
  const ends = c.clearDays.map(isoFromDay);
  const natural = c.clearDays.at(-1)!;
  const worth = (d:number) => { let s=0,t=0; for (const m of problem.context.members) for (const l of runSowing(problem.context,m,{...c.plan,clearDay:d},problem.stores).lots) { s+=l.servings; t+=l.servings*l.toWeek; } return [s/8, t/Math.max(s,1e-9)]; };
  const [s0,t0]=worth(natural);
  let found=natural;
  for (let d=problem.fromDay; d<natural; d+=14) { const [s,t]=worth(d); if (s!>=0.97*s0! && t!>=t0!-1) { found=d; break; } }
  console.log(c.plan.id, ends.at(-1), 'earliest', isoFromDay(found), s0!.toFixed(0), worth(found)[0]!.toFixed(0));
}
