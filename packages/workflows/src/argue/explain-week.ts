/** What a week brings to the table, from what, and what would mend its lean roles: found by trying it. */
import { bandOf, type Day, isoFromDay, isoOfWeek, meanOf, type Week } from '@twelvemonth/basis';
import { eat, leastCountedServings, runSowing } from '@twelvemonth/growing';
import {
  type Candidate,
  judgeStretch,
  type LeanStretch,
  leanStretches,
  likelyLean,
  makeCandidates,
  type Remedy,
  type ShortageInput,
  stretchOf,
} from '@twelvemonth/planning';
import { kindOf } from '../kinds/garden-kinds.ts';
import type { LeanReason, WeekReasons, WeekRole, WeekSource } from '../report/argue-report.ts';
import { holdersOf } from './free-ground.ts';
import { lotsIn, type OpenPlan } from './open-plan.ts';
import { describe, fewScenarios, inBatches, stateOf } from './other-sowings.ts';
import { eatenWith, gapOf, runsOf, triedMembers } from './try-out.ts';

const worthAWordServings = 0.2;
/** Glut of these weeks is spoken of beside a lean role. */
const spareWeeks = 3;
const spareServings = 2;
const triedHolders = 5;

/** Mean servings eaten in a week, by role and source; every member is asked. */
function sourcesOf(open: OpenPlan, w: number): Map<number, WeekSource[]> {
  const { problem, sowings } = open;
  const numbers = new Map(sowings.map((s) => [s.id, s.number]));
  const names = new Map(sowings.map((s) => [s.plan.kind.id, s.plan.kind.name]));
  const found = new Map<string, WeekSource & { readonly roleIndex: number }>();
  const count = problem.context.members.length;
  problem.context.members.forEach((_, m) => {
    eat(lotsIn(problem, sowings, m), problem.appetite, problem.roles, (lot, roleIndex, week, servings) => {
      if (week !== w) return;
      const stored =
        lot.form === 'store' || (lot.storeFromWeek !== null && lot.storeFromWeek <= problem.fromWeek + w);
      const key = `${roleIndex}/${lot.source}/${stored}`;
      const kindName = names.get(lot.kind) ?? kindOf(open.garden, lot.kind)?.name ?? lot.kind;
      const before = found.get(key);
      found.set(key, {
        roleIndex,
        kind: lot.kind,
        kindName,
        number: numbers.get(lot.source) ?? null,
        stored,
        standsIn: lot.role !== problem.appetite.roles[roleIndex],
        servings: (before?.servings ?? 0) + servings / count,
      });
    });
  });
  const byRole = new Map<number, WeekSource[]>();
  for (const { roleIndex, ...source } of found.values())
    if (source.servings >= worthAWordServings)
      byRole.set(roleIndex, [...(byRole.get(roleIndex) ?? []), source]);
  for (const list of byRole.values()) list.sort((a, b) => b.servings - a.servings);
  return byRole;
}

/** The sowing of the plan that would best make way for a remedy which has no room, if it helps in sum. */
function makesWay(open: OpenPlan, remedy: Remedy, today: Day): LeanReason['makesWay'] {
  const { candidate } = remedy;
  if (candidate === null || !remedy.code.startsWith('more-')) return null;
  const { problem, sowings } = open;
  const base = gapOf(problem, open.eaten.slice(0, triedMembers));
  const holders = holdersOf(sowings, candidate.ground, candidate.groundFromWeek, candidate.groundToWeek)
    .filter((s) => s.state === 'draft' && s.plan.startDay >= today)
    .filter((s) => s.groundFromWeek <= candidate.groundFromWeek && s.groundToWeek >= candidate.groundToWeek)
    .slice(0, triedHolders);
  let best: LeanReason['makesWay'] = null;
  for (const holder of holders) {
    const batches = Math.min(remedy.batches, Math.floor(holder.stripsCount / candidate.stripsPerBatch));
    if (batches < 1) continue;
    const runs = runsOf(problem, inBatches(candidate, batches), triedMembers);
    const gap = gapOf(problem, eatenWith(open, new Set([holder.id]), [runs]));
    const missingLess = base.missing - gap.missing;
    if (gap.cost < base.cost && missingLess > (best?.missingLess ?? 0))
      best = { id: holder.id, number: holder.number, kindName: holder.plan.kind.name, missingLess };
  }
  return best;
}

function shortageInput(open: OpenPlan, today: Day): ShortageInput {
  const { problem, sowings } = open;
  const scenarios = fewScenarios(problem);
  return {
    problem,
    scenarios,
    candidates: makeCandidates(problem, scenarios, () => {}),
    ledger: stateOf(problem, sowings, scenarios).ledger,
    fromDay: today,
    tryAdding: (candidate: Candidate, batches, role, fromWeek, toWeek) => {
      const plan = inBatches(candidate, batches);
      const members = problem.context.members.slice(0, triedMembers);
      const filled = members.map((member, m) => {
        const more = runSowing(problem.context, member, plan, problem.stores).lots;
        const after = eat([...lotsIn(problem, sowings, m), ...more], problem.appetite, problem.roles);
        let sum = 0;
        for (let w = fromWeek - problem.fromWeek; w <= toWeek - problem.fromWeek; w++)
          sum += after.eaten[role]![w]! - open.eaten[m]!.eaten[role]![w]!;
        return sum;
      });
      return Math.max(0, meanOf(filled));
    },
  };
}

function leanReason(open: OpenPlan, input: ShortageInput, stretch: LeanStretch, today: Day): LeanReason {
  const { problem } = open;
  const { binds, remedy } = judgeStretch(input, stretch);
  const isBought = remedy === null || remedy.candidate === null;
  return {
    from: isoOfWeek(problem.fromWeek + stretch.from),
    to: isoOfWeek(problem.fromWeek + stretch.to),
    servingsMissing: stretch.missing,
    leanWeeks: stretch.lean,
    binds,
    remedy: isBought
      ? null
      : {
          code: remedy.code,
          sowing: describe(problem, remedy.candidate!, remedy.batches),
          filled: remedy.filled,
        },
    makesWay: remedy === null ? null : makesWay(open, remedy, today),
  };
}

/** Null when the week lies outside the weeks simulated, or the role is none that the household eats. */
export function explainWeek(open: OpenPlan, week: Week, role: string | null, today: Day): WeekReasons | null {
  const { problem, eaten } = open;
  const { appetite } = problem;
  const w = week - problem.fromWeek;
  const asked = role === null ? null : appetite.roles.findIndex((id) => id === role);
  if (w < 0 || w >= problem.weekCount || asked === -1) return null;
  const sources = sourcesOf(open, w);
  const stretches = leanStretches(problem, eaten);
  let input: ShortageInput | null = null;
  const roles = appetite.roles.flatMap((id, r): WeekRole[] => {
    if (asked !== null && r !== asked) return [];
    const wanted = appetite.garden[r]![w]!;
    if (asked === null && wanted < leastCountedServings) return [];
    const own = stretchOf(problem, eaten, r, w, w);
    const around = stretches.find((s) => s.role === r && s.from <= w && w <= s.to);
    const lean = own.lean >= likelyLean || (asked !== null && own.missing >= worthAWordServings);
    if (lean) input ??= shortageInput(open, today);
    return [
      {
        role: id,
        wanted,
        bought: appetite.bought[r]![w]!,
        eaten: bandOf(eaten.map((e) => e.eaten[r]![w]!)),
        chanceLean: own.lean,
        sources: sources.get(r) ?? [],
        lean: lean && input !== null ? leanReason(open, input, around ?? own, today) : null,
      },
    ];
  });
  const spare = appetite.roles.flatMap((id, r) => {
    let servings = 0;
    for (let k = w; k < Math.min(problem.weekCount, w + spareWeeks); k++)
      servings += meanOf(eaten.map((e) => e.wasted[r]![k]!));
    return servings >= spareServings ? [{ role: id, servings }] : [];
  });
  return {
    schemaVersion: 1,
    about: 'week',
    weekOf: isoOfWeek(week),
    today: isoFromDay(today),
    roleNames: Object.fromEntries(problem.roles.map((row) => [row.id, row.name])),
    members: eaten.length,
    shown: w < problem.shownWeeks,
    roles,
    spare: spare.sort((a, b) => b.servings - a.servings),
  };
}
