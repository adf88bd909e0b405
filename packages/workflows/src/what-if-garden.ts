/** What if: a sowing lost, a cover torn, a late spring, a dry May. What it costs at the table, and what can still be done. */
import { done, isoFromDay, isoOfWeek, type Outcome, weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather } from '@twelvemonth/growing';
import { type OpenPlan, openPlan } from './argue/open-plan.ts';
import type { PlanRefusal } from './plan-garden.ts';
import type { PlanReport } from './report/plan-report.ts';
import type { WhatIfChange, WhatIfReport } from './report/what-if-report.ts';
import { type Changes, changesOf, type WhatIfRefusal, type WhatIfRequest } from './what-if/changes.ts';
import { liveAgain, shelterOf } from './what-if/lived-again.ts';
import { rolesLost, scoreOfEaten, servingsToFill } from './what-if/lost-servings.ts';
import { remediesFor } from './what-if/remedies.ts';

export interface WhatIfPorts {
  readonly progress: (step: 'weather' | 'living' | 'remedies') => void;
  readonly stopRequested: () => boolean;
}

function describe(plan: OpenPlan, { loss, gale, extreme }: Changes): WhatIfChange[] {
  const changes: WhatIfChange[] = [];
  if (loss !== null)
    changes.push({
      change: 'lost',
      sowing: loss.sowing.id,
      number: loss.sowing.number,
      kindName: loss.sowing.plan.kind.name,
      day: isoFromDay(loss.day),
    });
  if (gale !== null) {
    const sheltered = (how: 'grows' | 'raised'): string[] =>
      plan.sowings.filter((s) => shelterOf(plan.problem.context, s, gale) === how).map((s) => s.id);
    changes.push({
      change: 'cover',
      cover: gale.cover.id,
      coverName: gale.cover.name,
      day: isoFromDay(gale.day),
      grow: sheltered('grows'),
      raised: sheltered('raised'),
    });
  }
  if (extreme !== null)
    changes.push({
      change: 'weather',
      weather: extreme.weather,
      from: isoFromDay(extreme.season.fromDay),
      to: isoFromDay(extreme.season.toDay - 1),
      members: extreme.members.length,
      ofMembers: plan.problem.context.members.length,
      value: extreme.value,
      usual: extreme.usual,
    });
  return changes;
}

export function whatIfGarden(
  garden: Garden,
  report: PlanReport,
  request: WhatIfRequest,
  memberCount: number,
  daily: DailyWeather | null,
  ports: WhatIfPorts,
): Outcome<WhatIfReport, PlanRefusal | WhatIfRefusal> {
  ports.progress('weather');
  const opened = openPlan(garden, daily, report, {
    fromDay: 0,
    weeks: report.weeksShown,
    memberCount,
    seed: report.seed,
  });
  if (opened.kind === 'cannot') return opened;
  const plan = opened.value;
  const changes = changesOf(garden, plan, request);
  if (changes.kind === 'cannot') return changes;
  ports.progress('living');
  const lived = liveAgain(plan, changes.value);
  ports.progress('remedies');
  const { firstDay, knownDay } = changes.value;
  const firstWeek = weekOfDay(firstDay) - plan.problem.fromWeek;
  const toFill = servingsToFill(plan.problem, plan.eaten, lived.eaten, firstWeek);
  const found = remediesFor(lived, toFill, knownDay, ports.stopRequested);
  return done({
    schemaVersion: 1,
    garden: { household: report.garden.household, site: report.garden.site },
    from: report.from,
    weeksShown: report.weeksShown,
    seed: report.seed,
    members: lived.eaten.length,
    changes: describe(plan, changes.value),
    countedFrom: isoOfWeek(weekOfDay(firstDay)),
    before: scoreOfEaten(plan.problem, plan.eaten, firstWeek),
    after: scoreOfEaten(plan.problem, lived.eaten, firstWeek),
    withRemedies: scoreOfEaten(plan.problem, found.eaten, firstWeek),
    roles: rolesLost(plan.problem, plan.eaten, lived.eaten, firstWeek),
    knownDay: isoFromDay(knownDay),
    remedies: found.remedies,
    leftOut: plan.lost,
  });
}
