/** What one sowing would give in this garden: days, shares and servings over all members. */
import { civilFromDay, type Issue, isoFromDay } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import {
  type CropType,
  type DailyWeather,
  inSeasonDays,
  runSowing,
  type SowingPlan,
  weatherYearsIn,
} from '@twelvemonth/growing';
import { choosePlace, type GrowingPlace, mostPlants, usualCount } from './forecast/choose-place.ts';
import { chooseRoute } from './forecast/choose-route.ts';
import { routeStages } from './forecast/route-stages.ts';
import { openTin } from './forecast/seed-tin.ts';
import { sumUpRuns } from './forecast/sum-up-runs.ts';
import { threeNumbers } from './forecast/three-numbers.ts';
import { nearestName } from './issues/nearest-name.ts';
import { kindIdsOf, kindOf } from './kinds/garden-kinds.ts';
import { contextOf, protectionOf } from './problem/build-problem.ts';
import { exposureKey, exposureOf } from './problem/exposures.ts';
import { benchesOf, groundOf } from './problem/ground.ts';
import { storesOf } from './problem/stock.ts';
import type { ForecastReport } from './report/forecast-report.ts';
import { workflowIssue } from './workflow-issue-codes.ts';

export interface ForecastRequest {
  readonly kind: string;
  /** Day of sowing; of planting for sets, cloves, tubers, crowns. */
  readonly sowDay: number;
  /** A route id, or stages joined by + or a comma; null: the usual way. */
  readonly route: string | null;
  /** Place id; null: the first that suits. */
  readonly place: string | null;
  /** Stations to plant (or thin to); null: what a square metre, a tub or a tray carries. */
  readonly count: number | null;
  readonly memberCount: number;
  readonly seed: number;
}

export interface ForecastAnswer {
  readonly report: ForecastReport | null;
  readonly issues: readonly Issue[];
}

/** Long enough for what stands over winter and the stores behind it. */
const weeksAhead = 100;
const plausibleYears = { first: 1900, last: 2199 } as const;

/** Sets, cloves and tubers can be bought in their season only; the south has it half a year later. */
function inSeason(kind: CropType, day: number, southern: boolean): boolean {
  return inSeasonDays(day, kind.stockFromDayOfYear, kind.stockToDayOfYear, southern);
}

function doubtsAbout(
  garden: Garden,
  kind: CropType,
  found: GrowingPlace,
  sowDay: number,
  plants: number,
): Issue[] {
  const issues: Issue[] = [];
  if (kind.startsAs !== 'seed' && !inSeason(kind, sowDay, garden.site.latitudeDeg < 0))
    issues.push(workflowIssue('stock-out-of-season', 'sow', { kind: kind.name, sow: isoFromDay(sowDay) }));
  const most = mostPlants(kind, found);
  if (plants > most)
    issues.push(
      workflowIssue('plants-over-ground', 'count', {
        kind: kind.name,
        place: found.place.name,
        plants,
        most,
      }),
    );
  return issues;
}

function groundM2Of(kind: CropType, { ground }: GrowingPlace, plantsCount: number): number {
  if (ground.stripLitres === 0) return (plantsCount * kind.inRowCm * kind.betweenRowCm) / 10000;
  const perTub = Math.max(1, Math.floor(ground.stripLitres / Math.max(1, kind.tubLitresPerPlant)));
  return Math.ceil(plantsCount / perTub) * ground.stripM2;
}

function wrongRequest(garden: Garden, request: ForecastRequest, daily: DailyWeather | null): Issue[] {
  const issues: Issue[] = [];
  const { count, sowDay } = request;
  const kind = kindOf(garden, request.kind);
  if (kind === undefined) {
    const nearest = nearestName(request.kind, kindIdsOf(garden));
    issues.push(workflowIssue('kind-unknown', 'kind', { kind: request.kind, nearest }));
  } else if (kind.perennial) issues.push(workflowIssue('stands-for-years', 'kind', { kind: kind.name }));
  if (count !== null && !(count > 0 && Number.isFinite(count)))
    issues.push(workflowIssue('count-too-small', 'count', { count }));
  const { year } = civilFromDay(sowDay);
  if (!Number.isInteger(sowDay) || year < plausibleYears.first || year > plausibleYears.last)
    issues.push(
      workflowIssue('sow-day-not-plausible', 'sow', {
        sow: Number.isInteger(sowDay) ? isoFromDay(sowDay) : sowDay,
      }),
    );
  else if (daily !== null && weatherYearsIn(daily, sowDay).length === 0)
    issues.push(workflowIssue('no-climate', 'site.climate', {}));
  return issues;
}

export function forecastGarden(
  garden: Garden,
  request: ForecastRequest,
  daily: DailyWeather | null,
): ForecastAnswer {
  const wrong = wrongRequest(garden, request, daily);
  const kind = kindOf(garden, request.kind);
  if (kind === undefined || wrong.length > 0) return { report: null, issues: wrong };
  const benches = benchesOf(garden);
  const where = choosePlace(garden, kind, groundOf(garden, benches), request.place);
  const way = chooseRoute(kind, benches, request.route);
  const issues: Issue[] = [...where.issues, ...way.issues];
  if (where.found === null || way.chosen === null) return { report: null, issues };
  const { found } = where;
  const route = way.chosen;
  const usual = usualCount(kind, found, benches);
  if (usual.kind === 'cannot') {
    const { litres = 0, needsLitres = 0 } = usual.detail;
    const detail = { kind: kind.name, place: found.place.name, litres, needsLitres };
    return { report: null, issues: [...issues, workflowIssue('tub-too-small', 'place', detail)] };
  }
  const { sowDay, memberCount, seed } = request;
  const context = contextOf(garden, daily, 'plan', { fromDay: sowDay, weeks: weeksAhead, memberCount, seed });
  if (context === null)
    return { report: null, issues: [...issues, workflowIssue('no-climate', 'site.climate', {})] };

  const plantsCount = request.count ?? usual.value;
  const plan: SowingPlan = {
    id: `forecast/${kind.id}/${sowDay}`,
    kind,
    route: route.route,
    startDay: sowDay,
    startSpreadDays: 0,
    stages: route.stages,
    exposure: exposureKey(exposureOf(garden, found.place)),
    plantDay: null,
    clearDay: null,
    plantsCount,
    protection: protectionOf(garden),
    keepsSeed: garden.savesSeedOf.includes(kind.id),
    care: { visitsPerWeek: found.place.visitsPerWeek, inTub: found.place.use === 'tub' },
  };
  const stores = storesOf(garden);
  const runs = context.members.map((member) => runSowing(context, member, plan, stores));
  const raised = route.stages.length > 0;
  const summed = sumUpRuns(kind, runs, plantsCount, raised);
  const drawSeed = openTin(garden.seeds).drawFor(kind, sowDay);
  return {
    issues: [...issues, ...doubtsAbout(garden, kind, found, sowDay, plantsCount)],
    report: {
      schemaVersion: 1,
      kind: kind.id,
      kindName: kind.name,
      sow: isoFromDay(sowDay),
      place: found.place.id,
      route: routeStages(sowDay, route, found, runs),
      members: memberCount,
      seed,
      count: threeNumbers(kind, plantsCount, raised, summed.germinatingShare.p50, drawSeed),
      groundM2: groundM2Of(kind, found, plantsCount),
      ...summed,
    },
  };
}
