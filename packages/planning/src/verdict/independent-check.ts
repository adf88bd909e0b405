/**
 * A second count of a plan that knows no solver, no ledger and no program: strips by class and week, bench m², strips
 * of real beds, plants by spacing and by wish, what stands, hours and benches (check-hands.ts), and servings by running
 * each sowing again. Answers short
 * codes with the numbers: 'ground-over:tunnel:2026-10-05:42/40'. Empty when all adds up.
 */
import { isoFromDay, isoOfWeek, type Week, weekOfDay } from '@twelvemonth/basis';
import { runSowing, type SowingRun } from '@twelvemonth/growing';
import type { GroundClass, PlanningProblem } from '../problem.ts';
import { kitMissing, kitOver, restsUntold } from './check-beds.ts';
import { guestsWrong } from './check-guests.ts';
import { checkHands } from './check-hands.ts';
import type { CheckedSowing } from './checked-sowing.ts';
import { closuresKept } from './closed-check.ts';

export type { CheckedSowing } from './checked-sowing.ts';

const tolerance = 1e-6;
/** Strips hold parts of plants; nobody counts a twentieth of one. */
const tolerancePlants = 0.05;
const servingsTolerance = 1e-6;
const tidyNumber = (value: number): string => String(Math.round(value * 1000) / 1000);

function weeklyUse(
  problem: PlanningProblem,
  uses: readonly { readonly fromWeek: Week; readonly toWeek: Week; readonly amount: number }[],
): Float64Array {
  const use = new Float64Array(problem.weekCount);
  for (const { fromWeek, toWeek, amount } of uses)
    for (let w = 0; w < problem.weekCount; w++)
      if (w + problem.fromWeek >= fromWeek && w + problem.fromWeek < toWeek) use[w]! += amount;
  return use;
}

function overUse(
  problem: PlanningProblem,
  code: string,
  id: string,
  use: Float64Array,
  limit: number,
): string[] {
  const found: string[] = [];
  use.forEach((amount, w) => {
    if (amount > limit + tolerance)
      found.push(
        `${code}:${id}:${isoOfWeek(problem.fromWeek + w)}:${tidyNumber(amount)}/${tidyNumber(limit)}`,
      );
  });
  return found;
}

function groundAndBench(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const ground = problem.ground.flatMap((own, g) => {
    const uses = sowings
      .filter((s) => s.ground === g)
      .map((s) => ({ fromWeek: s.groundFromWeek, toWeek: s.groundToWeek, amount: s.stripsCount }));
    return overUse(problem, 'ground-over', own.id, weeklyUse(problem, uses), own.stripCount);
  });
  const bench = problem.benches.flatMap((own, b) => {
    const uses = sowings
      .flatMap((s) => s.bench)
      .filter((use) => use.bench === b)
      .map(({ fromWeek, toWeek, m2 }) => ({ fromWeek, toWeek, amount: m2 }));
    return overUse(problem, 'bench-over', own.id, weeklyUse(problem, uses), own.capacityM2);
  });
  return [...ground, ...bench];
}

/** The claim on ground covers the sowing's own days, and holds no more plants than its spacing allows. */
function claimOf(sowing: CheckedSowing, own: GroundClass): string[] {
  const { plan, stripsCount, groundFromWeek, groundToWeek } = sowing;
  const found: string[] = [];
  const fromDay = plan.stages.length > 0 ? plan.plantDay : plan.startDay;
  if (fromDay !== null && weekOfDay(fromDay) < (sowing.guestOf?.fromWeek ?? groundFromWeek))
    found.push(`ground-late:${plan.id}:${isoFromDay(fromDay)}/${isoOfWeek(groundFromWeek)}`);
  if (plan.clearDay !== null && weekOfDay(plan.clearDay) >= groundToWeek)
    found.push(`ground-short:${plan.id}:${isoFromDay(plan.clearDay)}/${isoOfWeek(groundToWeek)}`);
  const { kind } = plan;
  const most =
    own.stripLitres > 0
      ? Math.floor(own.stripLitres / Math.max(1, kind.tubLitresPerPlant)) * stripsCount
      : (stripsCount * own.stripM2 * 10000) / (kind.inRowCm * kind.betweenRowCm);
  if (plan.plantsCount > most + tolerance)
    found.push(`plants-too-dense:${plan.id}:${tidyNumber(plan.plantsCount)}/${tidyNumber(most)}`);
  if (!kind.growsIn.includes(own.growsIn) || own.bannedFamilies.includes(kind.family))
    found.push(`ground-wrong:${plan.id}:${own.id}`);
  return found;
}

function bedsOf(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const found: string[] = [];
  const used = new Map<string, { readonly fromWeek: Week; readonly toWeek: Week; readonly id: string }[]>();
  for (const { plan, placements, stripsCount, groundFromWeek, groundToWeek } of sowings) {
    if (placements === undefined || groundFromWeek >= problem.fromWeek + problem.weekCount) continue;
    const placed = placements.reduce((sum, p) => sum + p.stripsCount, 0);
    if (groundToWeek > groundFromWeek && Math.abs(placed - stripsCount) > tolerance)
      found.push(`beds-miss:${plan.id}:${tidyNumber(placed)}/${tidyNumber(stripsCount)}`);
    for (const { bed, stripsFrom, stripsCount: count } of placements)
      for (let strip = stripsFrom; strip < stripsFrom + count; strip++) {
        const key = `${bed.place}:${bed.number}:${strip}`;
        const others = used.get(key) ?? [];
        if (strip > bed.stripCount) found.push(`bed-ends:${plan.id}:${key}:${bed.stripCount}`);
        for (const other of others)
          if (other.fromWeek < groundToWeek && groundFromWeek < other.toWeek)
            found.push(`strip-twice:${key}:${other.id}/${plan.id}`);
        used.set(key, [...others, { fromWeek: groundFromWeek, toWeek: groundToWeek, id: plan.id }]);
      }
  }
  return found;
}

function standingKept(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  return problem.standing.flatMap(({ plan, clearDays, stripsCount }) => {
    const kept = sowings.filter((s) => s.plan.id === plan.id);
    if (kept.length !== 1) return [`standing-count:${plan.id}:${kept.length}/1`];
    const { plan: now, stripsCount: strips } = kept[0]!;
    const found: string[] = [];
    if (now.clearDay === null || !clearDays.includes(now.clearDay))
      found.push(`standing-cleared:${plan.id}:${now.clearDay === null ? 'never' : isoFromDay(now.clearDay)}`);
    if (now.plantsCount !== plan.plantsCount)
      found.push(`standing-plants:${plan.id}:${tidyNumber(now.plantsCount)}/${tidyNumber(plan.plantsCount)}`);
    if (strips !== stripsCount)
      found.push(`standing-ground:${plan.id}:${tidyNumber(strips)}/${tidyNumber(stripsCount)}`);
    return found;
  });
}

function wishesKept(problem: PlanningProblem, fresh: readonly CheckedSowing[]): string[] {
  return problem.limits.flatMap(({ kind, mostPlants }) => {
    const plants = fresh
      .filter((s) => s.plan.kind.id === kind)
      .reduce((sum, s) => sum + s.plan.plantsCount, 0);
    return plants > mostPlants + tolerancePlants
      ? [`plants-over:${kind}:${tidyNumber(plants)}/${tidyNumber(mostPlants)}`]
      : [];
  });
}

const servingsOf = (run: SowingRun): number => run.lots.reduce((sum, lot) => sum + lot.servings, 0);

function servingsAgain(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const { context, stores } = problem;
  return sowings.flatMap(({ plan, runs }) =>
    (runs ?? []).flatMap((run, k) => {
      const again = servingsOf(runSowing(context, context.members[k]!, plan, stores));
      const claimed = servingsOf(run);
      const differs = Math.abs(again - claimed) > servingsTolerance * Math.max(1, again);
      return differs ? [`servings:${plan.id}:${k}:${tidyNumber(claimed)}/${tidyNumber(again)}`] : [];
    }),
  );
}

export function independentCheck(problem: PlanningProblem, sowings: readonly CheckedSowing[]): string[] {
  const standing = new Set(problem.standing.map(({ plan }) => plan.id));
  const fresh = sowings.filter(({ plan }) => !standing.has(plan.id));
  const ids = new Set<string>();
  const twice = sowings.filter(({ plan }) => ids.size === ids.add(plan.id).size);
  return [
    ...twice.map(({ plan }) => `id-twice:${plan.id}`),
    ...groundAndBench(problem, sowings),
    ...fresh.flatMap((sowing) => claimOf(sowing, problem.ground[sowing.ground]!)),
    ...fresh
      .filter(({ plan }) => plan.startDay < problem.fromDay - 6)
      .map(({ plan }) => `past:${plan.id}:${isoFromDay(plan.startDay)}`),
    ...bedsOf(problem, sowings),
    ...kitOver(problem, sowings),
    ...kitMissing(problem, sowings),
    ...restsUntold(problem, sowings),
    ...guestsWrong(sowings),
    ...standingKept(problem, sowings),
    ...wishesKept(problem, fresh),
    ...checkHands(problem, sowings, fresh),
    ...closuresKept(problem, sowings, fresh),
    ...servingsAgain(problem, sowings),
  ];
}
