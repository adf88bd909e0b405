import { bandOf, dayOfYear, isoFromDay, isoOfWeek, mondayOf } from '@twelvemonth/basis';
import { familyById, hazardsOf, NEVER, type SowingPlan } from '@twelvemonth/growing';
import type { KitUse, PlanningProblem } from '@twelvemonth/planning';
import { canBeHad, delayed, lastSafeOf, meanServings, neededFromWeek } from '../argue/delay.ts';
import { runsOf } from '../argue/try-out.ts';
import { dayBandOf } from '../forecast/day-band.ts';
import { openTin, type SeedTin } from '../forecast/seed-tin.ts';
import { threeNumbers } from '../forecast/three-numbers.ts';
import type { ReportHarvest, ReportSowing, ReportStage } from '../report/plan-report.ts';
import type { ChosenSowing } from './chosen-sowings.ts';

function medianDay(days: readonly number[]): number {
  const sorted = [...days].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)]!;
}

function stagesOf(problem: PlanningProblem, sowing: ChosenSowing): ReportStage[] {
  const { plan } = sowing;
  const ground = problem.ground[sowing.ground]!;
  const first = sowing.placements[0]?.bed ?? ground.beds[0]!;
  const stages: ReportStage[] = sowing.bench.map((use, i) => {
    const bench = problem.benches[use.bench]!;
    const again = i > 0 && sowing.bench[i - 1]!.bench === use.bench;
    return {
      stage: ground.bench !== null ? 'tray' : again ? 'pots' : bench.stage,
      place: bench.place,
      placeName: bench.placeName,
      from: isoFromDay(Math.max(plan.startDay, mondayOf(use.fromWeek))),
      to: isoFromDay(mondayOf(use.toWeek)),
    };
  });
  if (ground.bench !== null) return stages;
  const from =
    plan.stages.length > 0
      ? (plan.plantDay ?? medianDay(sowing.runs.map((r) => r.groundDay)))
      : plan.startDay;
  stages.push({
    stage: ground.growsIn === 'tub' ? 'tub' : ground.growsIn === 'frame' ? 'frame' : 'bed',
    place: first.place,
    placeName: first.placeName,
    from: from >= NEVER ? isoFromDay(plan.startDay) : isoFromDay(from),
    to: isoFromDay(plan.clearDay ?? medianDay(sowing.runs.map((r) => r.clearDay))),
  });
  return stages;
}

/** When each part can be eaten, and how much of it. */
export function harvestsOf(sowing: ChosenSowing): ReportHarvest[] {
  return sowing.plan.kind.harvests.map((harvest, i) => {
    const runs = sowing.runs.map((run) => run.harvests[i]!);
    const reasons = runs.map((run) => run.reason);
    return {
      id: harvest.id,
      role: harvest.role,
      habit: harvest.habit,
      first: dayBandOf(
        runs.map((r) => r.firstDay),
        reasons,
      ),
      last: dayBandOf(
        runs.map((r) => r.lastDay),
        reasons,
      ),
      servings: bandOf(runs.map((r) => r.servings)),
    };
  });
}

/** Roles and weeks that it feeds in the mean. */
function feedsOf(problem: PlanningProblem, sowing: ChosenSowing): ReportSowing['reason']['feeds'] {
  const end = problem.fromWeek + problem.weekCount;
  const byRole = new Map<string, Map<number, number>>();
  for (const run of sowing.runs)
    for (const lot of run.lots) {
      const weeks = byRole.get(lot.role) ?? new Map<number, number>();
      byRole.set(lot.role, weeks);
      const from = Math.max(problem.fromWeek, lot.fromWeek);
      const to = Math.min(end, Math.max(from, lot.toWeek));
      if (lot.toWeek < problem.fromWeek) continue;
      for (let w = from; w <= to; w++)
        weeks.set(w, (weeks.get(w) ?? 0) + lot.servings / (to - from + 1) / sowing.runs.length);
    }
  return [...byRole].flatMap(([role, weeks]) => {
    const fed = [...weeks].filter(([, servings]) => servings >= 0.1).map(([week]) => week);
    if (fed.length === 0) return [];
    const servings = [...weeks.values()].reduce((sum, v) => sum + v, 0);
    return [{ role, from: isoOfWeek(Math.min(...fed)), to: isoOfWeek(Math.max(...fed)), servings }];
  });
}

/** Mid-May to mid-September, northern days: what fails to come up then fails for heat. */
const [summerFromDay, summerToDay] = [135, 258];
/** Delays and the last safe day are found in so many members. */
const triedMembers = 6;
const toldDelaysWeeks = [1, 2, 3] as const;

function delaysOf(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
): Pick<ReportSowing, 'delays' | 'lastSafeDay'> {
  const safe = lastSafeOf(problem, sowings, sowing);
  if (safe === null) return { delays: [], lastSafeDay: null };
  const base = meanServings(problem, sowing.runs.slice(0, triedMembers));
  const nextWeek = neededFromWeek(sowings, sowing);
  const delays = toldDelaysWeeks.map((weeks) => {
    const plan = delayed(sowing.plan, weeks, nextWeek);
    const servings = canBeHad(problem, plan) ? meanServings(problem, runsOf(problem, plan, triedMembers)) : 0;
    return { weeks, servingsChange: servings - base };
  });
  return { delays, lastSafeDay: isoFromDay(safe.day) };
}

/** Less than this of the seed coming up, for the warmth or for its age, is worth a word. */
const poorSeedShare = 0.75;

function seedRisks(
  problem: PlanningProblem,
  plan: SowingPlan,
  germinatingShare: number,
  tinLeftShare: number,
): { code: string; share: number }[] {
  const risks: { code: string; share: number }[] = [];
  const shift = problem.context.site.latitudeDeg < 0 ? 182 : 0;
  const north = ((dayOfYear(plan.startDay) - 1 + shift) % 365) + 1;
  if (germinatingShare < poorSeedShare)
    risks.push({
      code: north > summerFromDay && north < summerToDay ? 'hot-seedbed' : 'emergence',
      share: 1 - germinatingShare,
    });
  if (tinLeftShare < poorSeedShare) risks.push({ code: 'old-seed', share: 1 - tinLeftShare });
  return risks;
}

/** Share of the crop lost in pots or on a dim sill from which it is said. */
const worthSaying = 0.05;

function risksOf(
  problem: PlanningProblem,
  sowing: ChosenSowing,
  shares: ReportSowing['shares'],
  germinatingShare: number,
  tinLeftShare: number,
): ReportSowing['risks'] {
  const { plan } = sowing;
  const risks = seedRisks(problem, plan, germinatingShare, tinLeftShare);
  if (shares.bolted.p50 >= 0.05 && plan.kind.bolting?.effect !== 'ends')
    risks.push({ code: 'bolting', share: shares.bolted.p50 });
  if (shares.frosted.p90 >= 0.1) risks.push({ code: 'frost', share: shares.frosted.p90 });
  const checked = 1 - bandOf(sowing.runs.map((run) => run.keptYieldShare)).p50;
  const waits = sowing.bench.length > 1 && sowing.bench.at(-1)!.bench === sowing.bench.at(-2)!.bench;
  if (waits || checked >= worthSaying) risks.push({ code: 'pots-check', share: checked });
  const leggy = 1 - bandOf(sowing.runs.map((run) => run.sturdyYieldShare)).p50;
  if (leggy >= worthSaying) risks.push({ code: 'leggy', share: leggy });
  const from = Math.min(...sowing.runs.map((r) => r.groundDay));
  const to = plan.clearDay ?? from + 120;
  for (const hazard of hazardsOf(plan.kind.crop)) {
    const length = hazard.toDayOfYear - hazard.fromDayOfYear;
    const inWindow =
      from < NEVER && overlapsYearly(from, to, hazard.fromDayOfYear, length < 0 ? length + 365 : length);
    if (inWindow) risks.push({ code: hazard.id, share: hazard.lossShare });
  }
  return risks.sort((a, b) => b.share - a.share).slice(0, 3);
}

function overlapsYearly(from: number, to: number, dayOfYear: number, length: number): boolean {
  const yearStart = Math.floor(from / 365.2425) * 365.2425;
  return [-1, 0, 1, 2].some((k) => {
    const start = yearStart + k * 365.2425 + dayOfYear;
    return start <= to && start + length >= from;
  });
}

function kitOf(sowing: ChosenSowing, risks: ReportSowing['risks']): ReportSowing['kit'] {
  const hazards = hazardsOf(sowing.plan.kind.crop);
  const from = medianDay(sowing.runs.map((r) => r.groundDay));
  if (from >= NEVER) return [];
  const to = sowing.plan.clearDay ?? from + 120;
  const kits = new Map<string, string>();
  for (const risk of risks) {
    const hazard = hazards.find((h) => h.id === risk.code);
    if (hazard?.preventedBy && sowing.plan.protection.includes(hazard.preventedBy))
      kits.set(hazard.preventedBy, risk.code);
  }
  return [...kits].map(([kit, why]) => ({ kit, why, from: isoFromDay(from), to: isoFromDay(to) }));
}

/** Mesh and nets as lent; fleece has its nights, canes their ledger. */
function kitLent(uses: readonly KitUse[]): ReportSowing['kit'] {
  return uses
    .filter((use) => use.kit === 'mesh' || use.kit === 'net')
    .map((use) => ({
      kit: use.kit,
      why: use.why[0] ?? '',
      from: isoOfWeek(use.fromWeek),
      to: isoOfWeek(use.toWeek),
    }));
}

export function reportSowing(
  problem: PlanningProblem,
  sowings: readonly ChosenSowing[],
  sowing: ChosenSowing,
  missingWithout: number,
  tin: SeedTin,
): ReportSowing {
  const { plan, runs } = sowing;
  const ground = problem.ground[sowing.ground]!;
  const raised = plan.stages.length > 0;
  const shares = {
    bolted: bandOf(runs.map((r) => r.boltedShare)),
    frosted: bandOf(runs.map((r) => r.frostedShare)),
    lost: bandOf(runs.map((r) => r.lostShare)),
  };
  const germinatingShare = bandOf(runs.map((r) => r.germinatingShare)).p50;
  const seeds = sowing.state === 'done' ? openTin([]) : tin;
  const drawSeed = seeds.drawFor(plan.kind, plan.startDay);
  const count = threeNumbers(plan.kind, plan.plantsCount, raised, germinatingShare, drawSeed);
  const risks = risksOf(problem, sowing, shares, germinatingShare, count.tinLeftShare);
  const clearDay = plan.clearDay ?? medianDay(runs.map((r) => r.clearDay));
  const placed = new Map<string, ReportSowing['beds'][number]>();
  for (const p of sowing.placements) {
    const m2 = p.stripsCount * ground.stripM2;
    placed.set(`${p.bed.place}/${p.bed.number}/${p.stripsFrom}`, {
      place: p.bed.place,
      placeName: p.bed.placeName,
      number: p.bed.of > 1 ? p.bed.number : 0,
      stripsFrom: p.stripsFrom,
      stripsCount: p.stripsCount,
      m2: Math.round(m2 * 100) / 100,
    });
  }
  return {
    id: sowing.id,
    number: sowing.number,
    kind: plan.kind.id,
    kindName: plan.kind.name,
    cautions: [...plan.kind.cautions],
    startsAs: plan.kind.startsAs,
    state: sowing.state,
    ...(sowing.standing?.plantsBegun === undefined ? {} : { begun: { plants: sowing.standing.plantsBegun } }),
    sow: isoFromDay(plan.startDay),
    count,
    groundM2: Math.round(sowing.stripsCount * ground.stripM2 * 100) / 100,
    routeId: plan.route,
    route: stagesOf(problem, sowing),
    beds: [...placed.values()],
    area: sowing.placements[0]?.bed.area ?? ground.beds[0]!.area,
    plantOut: raised
      ? dayBandOf(
          runs.map((r) => r.groundDay),
          runs.map((r) => r.harvests[0]?.reason ?? null),
        )
      : null,
    clear: isoFromDay(clearDay),
    harvests: harvestsOf(sowing),
    spacingCm: { inRow: plan.kind.inRowCm, betweenRow: plan.kind.betweenRowCm },
    follows: [...new Set(sowing.placements.flatMap((p) => p.follows))],
    shares,
    risks,
    kit: sowing.kit === undefined ? kitOf(sowing, risks) : kitLent(sowing.kit),
    ...(sowing.guestOf === undefined
      ? {}
      : {
          guestOf: {
            from: isoOfWeek(sowing.guestOf.fromWeek),
            until: isoOfWeek(sowing.groundFromWeek),
            hosts: sowing.guestOf.hosts.map(({ host, strips }) => ({ sowing: host, strips })),
          },
        }),
    withoutKit: [...(sowing.withoutKit ?? [])],
    rests: (sowing.rests ?? []).map((rest) => ({
      family: rest.family,
      disease: familyById(rest.family)?.recordedDisease ?? null,
      onRecord: rest.onRecord,
      afterYears: rest.afterYears,
      restYears: rest.restYears,
      m2: Math.round(rest.stripsCount * ground.stripM2 * 100) / 100,
    })),
    reason: { feeds: feedsOf(problem, sowing), missingWithout },
    ...delaysOf(problem, sowings, sowing),
  };
}
