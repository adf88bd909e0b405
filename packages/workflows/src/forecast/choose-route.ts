import type { Issue } from '@twelvemonth/basis';
import type { CropType, RaisingStage, RouteId } from '@twelvemonth/growing';
import { type Bench, type PlanningProblem, routeChoice } from '@twelvemonth/planning';
import { workflowIssue } from '../workflow-issue-codes.ts';

export interface ChosenRoute {
  readonly route: RouteId;
  readonly stages: readonly RaisingStage[];
  readonly benches: readonly Bench[];
}

export interface RouteAnswer {
  readonly chosen: ChosenRoute | null;
  readonly issues: readonly Issue[];
}

const routeIds: readonly RouteId[] = ['direct', 'planted', 'module', 'warm', 'tray'];
const benchStages: readonly RaisingStage['stage'][] = ['mat', 'sill', 'bench', 'frame'];
const lastStages = ['bed', 'tub', 'tray'];
const allowed = [...routeIds, ...benchStages, ...lastStages].join(', ');

const isRoute = (text: string): text is RouteId => routeIds.some((id) => id === text);
const isBenchStage = (text: string): text is RaisingStage['stage'] =>
  benchStages.some((stage) => stage === text);
const refused = (issue: Issue): RouteAnswer => ({ chosen: null, issues: [issue] });

function routeHere(benches: readonly Bench[], route: RouteId): ChosenRoute | null {
  const choice = routeChoice({ benches } as PlanningProblem, route);
  if (choice === null) return null;
  return { route, stages: choice.stages, benches: choice.benches.map((index) => benches[index]!) };
}

function usualRoute(kind: CropType, benches: readonly Bench[]): RouteAnswer {
  for (const route of kind.routes) {
    const chosen = routeHere(benches, route);
    if (chosen !== null) return { chosen, issues: [] };
  }
  const route = kind.routes.join(', ');
  return refused(workflowIssue('route-without-bench', 'places', { route, stage: 'sill' }));
}

/** The engine germinates on the first stage, grows on the first bench or sill, and hardens off in a frame. */
function stagesInUse(stages: readonly RaisingStage['stage'][]): RaisingStage['stage'][] {
  const first = stages[0]!;
  const grow = stages.find((stage) => stage === 'bench' || stage === 'sill') ?? first;
  return stages.filter((stage, i) => i === 0 || (stage === grow && stage !== first) || stage === 'frame');
}

function routeOfStages(
  text: string,
  stages: readonly RaisingStage['stage'][],
  last: string | undefined,
  kind: CropType,
  benches: readonly Bench[],
): RouteAnswer {
  const inPlace: RouteId = last === 'tray' ? 'tray' : kind.startsAs === 'seed' ? 'direct' : 'planted';
  const raised: RouteId = stages[0] === 'mat' ? 'warm' : 'module';
  const route = stages.length === 0 ? inPlace : kind.routes.includes(raised) ? raised : 'module';
  const fits =
    stages.length === 0
      ? kind.routes.includes(route)
      : kind.raisingDays > 0 &&
        kind.startsAs === 'seed' &&
        kind.routes.some((r) => r === 'module' || r === 'warm');
  if (!fits)
    return refused(
      workflowIssue('route-not-for-kind', 'route', {
        kind: kind.name,
        route: text,
        allowed: kind.routes.join(', '),
      }),
    );
  const used = stages.length === 0 ? [] : stagesInUse(stages);
  const own: Bench[] = [];
  for (const stage of used) {
    const bench = benches.find((b) => b.stage === stage && b.capacityM2 > 0);
    if (bench === undefined)
      return refused(workflowIssue('route-without-bench', 'route', { route: text, stage }));
    own.push(bench);
  }
  const issues = stages
    .filter((stage) => !used.includes(stage))
    .map((stage) => workflowIssue('stage-passed-over', 'route', { stage, used: used.join(', ') }));
  return {
    chosen: { route, stages: own.map(({ stage, exposure }) => ({ stage, exposure })), benches: own },
    issues,
  };
}

/** The way it is raised: the usual one that this household has the benches for, a route by name, or stage by stage. */
export function chooseRoute(kind: CropType, benches: readonly Bench[], asked: string | null): RouteAnswer {
  if (asked === null) return usualRoute(kind, benches);
  const words = asked
    .split(/[,+]/)
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== '');
  const only = words[0];
  if (only === undefined) return refused(workflowIssue('route-unknown', 'route', { route: asked, allowed }));
  if (words.length === 1 && isRoute(only) && only !== 'tray') {
    if (!kind.routes.includes(only))
      return refused(
        workflowIssue('route-not-for-kind', 'route', {
          kind: kind.name,
          route: only,
          allowed: kind.routes.join(', '),
        }),
      );
    const chosen = routeHere(benches, only);
    if (chosen !== null) return { chosen, issues: [] };
    return refused(
      workflowIssue('route-without-bench', 'route', {
        route: only,
        stage: only === 'warm' ? 'mat' : 'bench',
      }),
    );
  }
  const last = lastStages.includes(words.at(-1)!) ? words.at(-1) : undefined;
  const raising = last === undefined ? words : words.slice(0, -1);
  if (!raising.every(isBenchStage)) {
    const route = raising.find((word) => !isBenchStage(word)) ?? asked;
    return refused(workflowIssue('route-unknown', 'route', { route, allowed }));
  }
  return routeOfStages(asked, raising, last, kind, benches);
}
