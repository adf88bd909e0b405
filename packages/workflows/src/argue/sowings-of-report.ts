/** A plan that was written down, as sowings that can be simulated again: places, weeks, stages and plants from the report. */
import { weekOfDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { type RouteId, runSowing, type SowingPlan, seedlingOfModuleShare } from '@twelvemonth/growing';
import {
  type BenchUse,
  careOf,
  type Placement,
  type PlanningProblem,
  placeInStrips,
  plantsPerStrip,
  routeChoice,
  type StandingCrop,
} from '@twelvemonth/planning';
import { kindOf } from '../kinds/garden-kinds.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import { classOf } from '../problem/standing.ts';
import type { PlanReport, ReportSowing } from '../report/plan-report.ts';
import { dayOf } from '../sheets/sheet-days.ts';

type Planned = Omit<ChosenSowing, 'runs'>;

/** Plants as counted in the report are whole; a strip holds a broken number of them. */
const countTolerance = 1;

function placementsOf(problem: PlanningProblem, ground: number, sowing: ReportSowing): Placement[] {
  return sowing.beds.flatMap((at) => {
    const bed = problem.ground[ground]!.beds.find(
      (b) => b.place === at.place && (at.number === 0 || b.number === at.number),
    );
    if (bed === undefined) return [];
    const { stripsFrom, stripsCount } = at;
    return [{ booking: sowing.id, bed, stripsFrom, stripsCount, follows: sowing.follows }];
  });
}

function benchesOf(problem: PlanningProblem, sowing: ReportSowing, plan: SowingPlan): BenchUse[] {
  return sowing.route.flatMap((stage) => {
    const bench = problem.benches.findIndex((b) => b.place === stage.place);
    if (bench < 0) return [];
    const seedTray = stage.stage === 'mat' && plan.route === 'warm' ? seedlingOfModuleShare : 1;
    const each = stage.stage === 'pots' ? plan.kind.potM2PerPlant : plan.kind.moduleM2PerPlant * seedTray;
    const [fromWeek, toWeek] = [weekOfDay(dayOf(stage.from)), weekOfDay(dayOf(stage.to))];
    return fromWeek < toWeek ? [{ bench, fromWeek, toWeek, m2: plan.plantsCount * each }] : [];
  });
}

/** What the plan could not lend it, it goes without. */
const withoutKit = (
  protection: SowingPlan['protection'],
  sowing: ReportSowing | undefined,
): SowingPlan['protection'] => protection.filter((kit) => sowing?.withoutKit?.includes(kit) !== true);

/** A sowing as the report has it; null where kind, place or route are no longer in the garden file. */
export function plannedOf(garden: Garden, problem: PlanningProblem, sowing: ReportSowing): Planned | null {
  const kind = kindOf(garden, sowing.kind);
  const place = sowing.beds[0]?.place ?? sowing.route.at(-1)?.place;
  const number = sowing.beds[0]?.number ?? 0;
  const ground = classOf(problem.ground, { id: place ?? '' }, number === 0 ? null : number);
  const choice = routeChoice(problem, sowing.routeId as RouteId);
  if (kind === undefined || ground < 0 || choice === null) return null;
  const own = problem.ground[ground]!;
  const placements = placementsOf(problem, ground, sowing);
  const inBeds = placements.reduce((sum, p) => sum + p.stripsCount, 0);
  const stripsCount = inBeds > 0 ? inBeds : Math.max(1, Math.round(sowing.groundM2 / own.stripM2));
  const full = plantsPerStrip(kind, own) * stripsCount;
  const raised = choice.stages.length > 0;
  const last = sowing.route.at(-1);
  const plan: SowingPlan = {
    id: sowing.id,
    kind,
    route: choice.route,
    startDay: dayOf(sowing.sow),
    startSpreadDays: 0,
    stages: choice.stages,
    exposure: own.exposure,
    plantDay: raised && last !== undefined ? dayOf(last.from) : null,
    clearDay: dayOf(sowing.clear),
    plantsCount: Math.abs(full - sowing.count.plant) <= countTolerance ? full : sowing.count.plant,
    protection: withoutKit(problem.protection, sowing),
    keepsSeed: problem.savesSeedOf.has(kind.id),
    care: careOf(own),
  };
  const groundFromWeek = weekOfDay(
    sowing.guestOf === undefined ? (plan.plantDay ?? plan.startDay) : dayOf(sowing.guestOf.until),
  );
  const groundToWeek = Math.max(groundFromWeek + 1, weekOfDay(dayOf(sowing.clear)) + 1);
  return {
    id: sowing.id,
    number: sowing.number,
    state: sowing.begun === undefined ? 'draft' : 'done',
    plan,
    ground,
    stripsCount,
    groundFromWeek,
    groundToWeek,
    bench:
      own.bench === null
        ? benchesOf(problem, sowing, plan)
        : [
            {
              bench: own.bench,
              fromWeek: groundFromWeek,
              toWeek: groundToWeek,
              m2: own.stripM2 * stripsCount,
            },
          ],
    placements,
    standing: null,
  };
}

/** What stands goes on as the report has it cleared, or to its natural end where the report does not know it. */
function standingOf(problem: PlanningProblem, crop: StandingCrop, sowing: ReportSowing | undefined): Planned {
  const wanted = sowing === undefined ? null : dayOf(sowing.clear);
  const clearDay = crop.clearDays.find((day) => day === wanted) ?? crop.clearDays.at(-1)!;
  const end = problem.fromWeek + problem.weekCount;
  const toWeek = crop.plan.kind.perennial ? end : Math.min(end, weekOfDay(clearDay) + 1);
  return {
    id: crop.plan.id,
    number: sowing?.number ?? 0,
    state: crop.state,
    plan: { ...crop.plan, clearDay, protection: withoutKit(crop.plan.protection, sowing) },
    ground: crop.ground,
    stripsCount: crop.stripsCount,
    groundFromWeek: crop.groundFromWeek,
    groundToWeek: Math.max(crop.groundFromWeek, toWeek),
    bench: [],
    placements: sowing === undefined ? [] : placementsOf(problem, crop.ground, sowing),
    standing: crop,
  };
}

/** What the report does not know gets the strips where it is said to stand. */
function laidOut(problem: PlanningProblem, all: readonly Planned[]): Planned[] {
  const homeless = all.filter(({ placements }) => placements.length === 0);
  const placed = problem.ground.flatMap((ground, g) => {
    const bookings = homeless
      .filter((s) => s.ground === g)
      .map((s) => ({
        id: s.id,
        family: s.plan.kind.family,
        fromWeek: s.groundFromWeek,
        toWeek: s.groundToWeek,
        stripsCount: s.stripsCount,
        place: s.standing?.place ?? null,
        placeNumber: s.standing?.placeNumber ?? null,
      }));
    return placeInStrips(ground, bookings).placements;
  });
  return all.map((s) =>
    s.placements.length > 0 ? s : { ...s, placements: placed.filter((p) => p.booking === s.id) },
  );
}

export interface ReadBack {
  readonly sowings: readonly ChosenSowing[];
  /** Ids of sowings that the garden file no longer has room, kind or route for. */
  readonly lost: readonly string[];
}

/** The sowings of a report with their runs in the problem's members; without a report, what stands alone. */
export function sowingsOfReport(
  garden: Garden,
  problem: PlanningProblem,
  report: PlanReport | null,
): ReadBack {
  const standingIds = new Set(problem.standing.map((crop) => crop.plan.id));
  const byId = new Map((report?.sowings ?? []).map((sowing) => [sowing.id, sowing]));
  const lost: string[] = [];
  const drafts = (report?.sowings ?? []).flatMap((sowing) => {
    if (standingIds.has(sowing.id)) return [];
    const fromFile = sowing.state === 'done' && sowing.begun === undefined;
    const draft = fromFile ? null : plannedOf(garden, problem, sowing);
    if (draft === null) lost.push(sowing.id);
    return draft ?? [];
  });
  const standing = problem.standing.map((crop) => standingOf(problem, crop, byId.get(crop.plan.id)));
  const sowings = laidOut(problem, [...standing, ...drafts]).map((planned) => ({
    ...planned,
    runs: problem.context.members.map((member) =>
      runSowing(problem.context, member, planned.plan, problem.stores),
    ),
  }));
  return { sowings, lost };
}
