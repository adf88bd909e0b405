/** Sowings that the household has fixed, against the ground that is free for them by then. */
import { type Day, type Issue, isoFromDay, mondayOf } from '@twelvemonth/basis';
import type { Garden, Wish } from '@twelvemonth/garden';
import { type CropType, type ForecastContext, NEVER, runSowing, type StoreId } from '@twelvemonth/growing';
import { type Bench, type GroundClass, plantsPerStrip, type StandingCrop } from '@twelvemonth/planning';
import {
  diseaseAgainst,
  type GrowingPlace,
  groundOfPlace,
  growsInText,
  mostPlants,
} from '../forecast/choose-place.ts';
import { chooseRoute } from '../forecast/choose-route.ts';
import { middleDay } from '../forecast/route-stages.ts';
import { kindOf } from '../kinds/garden-kinds.ts';
import { buildProblem, contextOf, protectionOf } from '../problem/build-problem.ts';
import { exposureKey, exposureOf } from '../problem/exposures.ts';
import { storesOf } from '../problem/stock.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';

type Firm = Extract<Wish, { wish: 'firm' }>;

/** A rough look is enough for a warning. */
const memberCount = 6;
const lookedAtWeeks = 60;
const seed = 1;

interface Stay {
  readonly name: string;
  readonly fromDay: Day;
  /** Earliest day on which it may be cleared. */
  readonly toDay: Day;
  readonly strips: number;
}

interface FirmSowing {
  readonly firm: Firm;
  readonly kind: CropType;
  readonly found: GrowingPlace;
}

const whereOf = (firm: Firm): string => `wishes about ${firm.kind}`;

function fitIssues({ firm, kind, found: { place, ground } }: FirmSowing): Issue[] {
  const names = { kind: kind.name, place: place.name };
  if (!kind.growsIn.includes(ground.growsIn))
    return [workflowIssue('kind-not-for-place', whereOf(firm), { ...names, growsIn: growsInText(kind) })];
  const disease = diseaseAgainst(kind, ground);
  return disease === null ? [] : [workflowIssue('disease-on-record', whereOf(firm), { ...names, disease })];
}

function standingStays(standing: readonly StandingCrop[], place: string): Stay[] {
  return standing
    .filter((crop) => crop.state === 'done' && crop.place === place && crop.stripsCount > 0)
    .map((crop) => ({
      name: crop.plan.kind.name,
      fromDay: mondayOf(crop.groundFromWeek),
      toDay: crop.plan.kind.perennial ? NEVER : crop.clearDays[0]!,
      strips: crop.stripsCount,
    }));
}

/** Days in its ground, middle of a few members; null when it never gets there. */
function stayOf(
  sowing: FirmSowing,
  garden: Garden,
  benches: readonly Bench[],
  context: ForecastContext,
  stores: ReadonlySet<StoreId>,
): Stay | null {
  const { firm, kind, found } = sowing;
  const { chosen } = chooseRoute(kind, benches, firm.route);
  if (chosen === null) return null;
  const runs = context.members.map((member) =>
    runSowing(
      context,
      member,
      {
        id: firm.id,
        kind,
        route: chosen.route,
        startDay: firm.sowDay,
        startSpreadDays: 0,
        stages: chosen.stages,
        exposure: exposureKey(exposureOf(garden, found.place)),
        plantDay: null,
        clearDay: null,
        plantsCount: firm.plantsCount,
        protection: protectionOf(garden),
      },
      stores,
    ),
  );
  const fromDay = chosen.stages.length === 0 ? firm.sowDay : middleDay(runs.map((run) => run.groundDay));
  if (fromDay >= NEVER) return null;
  const strips = Math.max(
    1,
    Math.ceil(firm.plantsCount / Math.max(0.01, plantsPerStrip(kind, found.ground)) - 0.05),
  );
  return { name: kind.name, fromDay, toDay: middleDay(runs.map((run) => run.clearDay)), strips };
}

/** The day from which enough strips are free, and what stands there longest until then; null: free in time. */
function waitingFor(
  stay: Stay,
  there: readonly Stay[],
  allStrips: number,
): { until: Day; by: string } | null {
  const taken = (day: Day): Stay[] => there.filter((other) => other.fromDay <= day && other.toDay > day);
  const fits = (day: Day): boolean =>
    allStrips - taken(day).reduce((sum, other) => sum + other.strips, 0) >= stay.strips;
  if (fits(stay.fromDay)) return null;
  const ends = there
    .map((other) => other.toDay)
    .filter((day) => day > stay.fromDay)
    .sort((a, b) => a - b);
  const until = ends.find(fits) ?? NEVER;
  const last = taken(stay.fromDay).reduce((most, other) => (other.strips > most.strips ? other : most));
  return { until, by: last.name };
}

export function firmIssues(
  garden: Garden,
  ground: readonly GroundClass[],
  benches: readonly Bench[],
  fromDay: Day,
): Issue[] {
  const sowings = garden.wishes.flatMap((wish): FirmSowing[] => {
    if (wish.wish !== 'firm') return [];
    const kind = kindOf(garden, wish.kind);
    const place = garden.places.find((each) => each.id === wish.place);
    const own = place === undefined ? undefined : groundOfPlace(ground, place);
    if (kind === undefined || place === undefined || own === undefined) return [];
    return [{ firm: wish, kind, found: { place, ground: own } }];
  });
  const issues = sowings.flatMap(fitIssues);
  const size = { fromDay, weeks: lookedAtWeeks, memberCount, seed };
  const context = sowings.length === 0 ? null : contextOf(garden, null, 'plan', size);
  const standing = context === null ? [] : buildProblem(garden, context, size).standing;
  const fixed = new Map<string, Stay[]>();
  for (const sowing of [...sowings].sort((a, b) => a.firm.sowDay - b.firm.sowDay)) {
    const { firm, kind, found } = sowing;
    const names = { kind: kind.name, place: found.place.name };
    const most = mostPlants(kind, found);
    if (firm.plantsCount > most) {
      const detail = { ...names, plants: firm.plantsCount, most };
      issues.push(workflowIssue('plants-over-ground', whereOf(firm), detail));
      continue;
    }
    const stay = context === null ? null : stayOf(sowing, garden, benches, context, storesOf(garden));
    if (stay === null) continue;
    const earlier = fixed.get(found.place.id) ?? [];
    const strips = found.ground.beds.reduce(
      (n, bed) => n + (bed.place === found.place.id ? bed.stripCount : 0),
      0,
    );
    const wait = waitingFor(stay, [...standingStays(standing, found.place.id), ...earlier], strips);
    if (wait !== null) {
      const until = wait.until >= NEVER ? '' : isoFromDay(wait.until);
      const detail = { ...names, sow: isoFromDay(stay.fromDay), by: wait.by, until };
      issues.push(workflowIssue('sown-before-free', whereOf(firm), detail));
    }
    fixed.set(found.place.id, [...earlier, stay]);
  }
  return issues;
}
