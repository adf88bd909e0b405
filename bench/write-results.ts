// Writes bench/results.md: the whole bench on the demo. `node --import tsx bench/write-results.ts` (about a minute).
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import type { RivalScore } from '../packages/planning/src/index.ts';
import { batchFigures } from './batch.bench.ts';
import {
  candidateBudget,
  firstPlanBudget,
  leastBatchFactor,
  leastNaiveFactor,
  leastOutdoorFactor,
  movedSowingBudget,
  previewBudget,
} from './budgets.ts';
import { demoProblem } from './demo-problem.ts';
import { forecastFigures } from './forecast.bench.ts';
import { openWarmUpDays } from './naive-from-outdoor.ts';
import { outdoorFigures } from './outdoor.bench.ts';
import { type PlanFigures, planFigures } from './plan.bench.ts';
import { previewFigures } from './preview.bench.ts';
import { referenceMs } from './reference-loop.ts';

const lpIterations = 40_000;
const example = 'marram-end';
const say = (line: string): void => console.error(line);

const before = referenceMs();
const forecast = forecastFigures(demoProblem(example, 6), 2000, 30);
const outdoor = outdoorFigures(demoProblem(example, 6), 2000, 30);
const preview = previewFigures(demoProblem(example, 6), 250, 30);
const reference = (before + referenceMs()) / 2;
say('forecast done');
const firstPlan = await planFigures(example, false, 0);
say('first plan done');
const proven = await planFigures(example, true, lpIterations);
say('proven plan done');
const southern = await planFigures('southern-plot', false, 0);
const small = await planFigures('sill-and-balcony', false, 0);
const batch = await batchFigures(12, 1, leastBatchFactor);

const ratio = (ms: number): string => Number((ms / reference).toPrecision(3)).toString();
const whole = (value: number): string => Math.round(value).toString();
const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;
const times = (factor: number): string => factor.toFixed(1);
const runs = forecast.candidates * forecast.members;
const scoreRow = (name: string, score: Omit<RivalScore, 'strawMan'>, strawMan: boolean | null): string =>
  `| ${[
    name,
    score.leanWeeks.toFixed(1),
    whole(score.servingsMissing),
    whole(score.servingsEaten),
    whole(score.wasted),
    percent(score.groundIdleShare),
    whole(score.hours),
    score.sowings,
    score.kgPerM2Year.toFixed(2),
    strawMan === null ? '–' : strawMan ? 'yes' : 'no',
  ].join(' | ')} |`;
const scores = (title: string, figures: PlanFigures, plan: string): string[] => [
  `### ${title}`,
  '',
  '| | lean weeks | missing | eaten | wasted | idle | hours | sowings | kg/m²·a | straw man |',
  '|---|---|---|---|---|---|---|---|---|---|',
  scoreRow(plan, figures.plan, null),
  scoreRow('calendar gardener', figures.rivals.calendar, figures.rivals.calendar.strawMan),
  scoreRow('practised gardener', figures.rivals.practised, figures.rivals.practised.strawMan),
  '',
  `Findings of the independent check: ${figures.violations.length}.`,
  ...figures.violations.slice(0, 10).map((violation) => `- ${violation}`),
  '',
];
const planRow = (name: string, figures: PlanFigures): string =>
  `| ${name} | ${figures.seconds.toFixed(1)} | ${ratio(figures.seconds * 1000)} | ${
    figures.gapShare === null ? '–' : `${(figures.gapShare * 100).toFixed(1)} %`
  } | ${figures.candidates} | ${whole(figures.peakMB)} |`;

const lines = [
  '# Bench',
  '',
  'Written by `node --import tsx bench/write-results.ts`; not by hand. Times are multiples of the reference loop',
  `(two million floating-point steps, here ${reference.toFixed(1)} ms on ${cpus()[0]?.model ?? 'an unnamed processor'}).`,
  '',
  '## Forecast',
  '',
  '| what | ms | reference loops | budget |',
  '|---|---|---|---|',
  `| one moved sowing, ${forecast.members} members, whole answer | ${forecast.movedMs.toFixed(2)} | ${ratio(forecast.movedMs)} | ≤ ${movedSowingBudget} |`,
  `| one moved sowing previewed among ${preview.sowings}: food, clashes, risk, ${preview.members} members | ${preview.previewMs.toFixed(2)} | ${ratio(preview.previewMs)} | ≤ ${previewBudget} |`,
  `| made ready for it, once | ${whole(preview.prepareMs)} | ${ratio(preview.prepareMs)} | |`,
  `| one candidate in one member, whole answer | ${(forecast.wholeMs / runs).toFixed(4)} | ${ratio(forecast.wholeMs / runs)} | ≤ ${candidateBudget} |`,
  `| ${forecast.candidates} candidates × ${forecast.members}, whole answers | ${whole(forecast.wholeMs)} | ${ratio(forecast.wholeMs)} | |`,
  `| the same, making the sums on the way | ${whole(forecast.wholeColdMs)} | ${ratio(forecast.wholeColdMs)} | |`,
  `| their first harvest days alone, engine | ${whole(forecast.engineMs)} | ${ratio(forecast.engineMs)} | |`,
  `| the same, making the sums on the way | ${whole(forecast.engineColdMs)} | ${ratio(forecast.engineColdMs)} | |`,
  `| the same days by a day loop on ready place weather | ${whole(forecast.naiveMs)} | ${ratio(forecast.naiveMs)} | |`,
  '',
  '### Against a day loop from outdoor weather',
  '',
  'For each sowing and member the weather of its places is derived from the outdoor weather for the days it lives, and all',
  'is stepped day by day from sowing to clearing: emergence, growth with drought, cold units, frost margins, weekly picks.',
  `Warm-up ${openWarmUpDays} days under the open sky, 60 where it is watered under cover. In its favour the loop is told the`,
  'days of planting and clearing, and is charged with the sun of no more days than it derives. The engine gives the whole',
  'answer: days, shares, lots.',
  '',
  '| what | ms | day loop takes as many times as long |',
  '|---|---|---|',
  `| ${outdoor.candidates} candidates × ${outdoor.members}, day loop from outdoor weather | ${whole(outdoor.naiveMs)} | |`,
  `| engine, place weather and sums at hand | ${whole(outdoor.engineAgainMs)} | ${times(outdoor.naiveMs / outdoor.engineAgainMs)} (budget: ≥ ${leastOutdoorFactor}) |`,
  `| engine, from outdoor weather: place weather and sums made on the way | ${whole(outdoor.engineMs)} | ${times(outdoor.naiveMs / outdoor.engineMs)} |`,
  '',
  `Of ${outdoor.comparedDays} first harvest days ${outdoor.differing} differ: beds that stayed waterlogged for longer than the warm-up.`,
  `Followed from the first day of the weather, ${outdoor.unexplained} of these differ. Sums over the time in the bed differ by at most`,
  `${outdoor.grownGapCDays.toExponential(0)} °C·d of growth and ${outdoor.coldGapCDays.toExponential(0)} of cold. Not counted: ${whole(outdoor.sparedSunMs)} ms that placeWeather spends on the rest of`,
  "the year's sun at each call.",
  '',
  '### Against a day loop on ready place weather, first days only',
  '',
  `It takes ${times(forecast.naiveMs / forecast.engineMs)} times as long as the engine (budget: at least ${leastNaiveFactor}): little of a forecast is left for it to`,
  `do. Of ${forecast.comparedDays} days compared, ${forecast.differByOne} differ by one day (rounding of sums) and ${forecast.differByMore} by more. Both read the`,
  "place's weather ready made; harvests behind a gate are left out.",
  '',
  '## Plan',
  '',
  `Thirty members, four scenarios; "proven" with ${lpIterations} counted iterations. Peak memory is of the whole process so far.`,
  '',
  '| plan | seconds | reference loops | gap | candidates | peak MB |',
  '|---|---|---|---|---|---|',
  planRow(`${example}, first plan`, firstPlan),
  planRow(`${example}, proven`, proven),
  planRow('southern-plot, first plan', southern),
  planRow('sill-and-balcony, first plan', small),
  '',
  `Budget of the smoke bench: first plan of sill-and-balcony with 12 members ≤ ${firstPlanBudget} reference loops.`,
  '',
  ...(batch === null
    ? []
    : [
        '## Batch',
        '',
        `${batch.gardens} small gardens, from when each worker has ended two: ${batch.onePerSecond.toFixed(2)} gardens a second with one`,
        `worker, ${batch.twoPerSecond.toFixed(2)} with two, ${times(batch.twoPerSecond / batch.onePerSecond)} times as many (budget: ≥ ${leastBatchFactor}).`,
        '',
      ]),
  '## Against the rivals',
  '',
  'Thirty unseen members, weeks 13–65, rules in `rivals/RULES.md`, readings in `../docs/models/rivals.md`. A rival under',
  '2 kg/m² a year is a straw man where ground suffices, and the comparison with it says little.',
  '',
  ...scores(`${example}, proven plan`, proven, 'plan'),
  ...scores(`${example}, first plan`, firstPlan, 'first plan'),
  ...scores('southern-plot, first plan', southern, 'first plan'),
  ...scores('sill-and-balcony, first plan', small, 'first plan'),
];
writeFileSync(join(import.meta.dirname, 'results.md'), `${lines.join('\n').trimEnd()}\n`);
say('bench/results.md written');
