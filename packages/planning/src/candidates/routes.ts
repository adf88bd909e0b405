import { type CropType, type RaisingStage, type RouteId, seldomVisitsPerWeek } from '@twelvemonth/growing';
import type { Bench, GroundClass, PlanningProblem } from '../problem.ts';

export interface RouteChoice {
  readonly route: RouteId;
  readonly stages: readonly RaisingStage[];
  /** Index into the problem's benches for each stage. */
  readonly benches: readonly number[];
}

function benchOf(benches: readonly Bench[], stages: readonly RaisingStage['stage'][]): number {
  for (const stage of stages) {
    const index = benches.findIndex((b) => b.stage === stage && b.capacityM2 > 0);
    if (index >= 0) return index;
  }
  return -1;
}

/** The benches that a route goes over at this household, or null when it lacks one. */
export function routeChoice(problem: Pick<PlanningProblem, 'benches'>, route: RouteId): RouteChoice | null {
  const { benches } = problem;
  if (route === 'direct' || route === 'planted' || route === 'tray')
    return { route, stages: [], benches: [] };
  const cold = benchOf(benches, ['bench', 'frame', 'sill']);
  const warm = benchOf(benches, ['mat', 'sill']);
  const grow = benchOf(benches, ['sill', 'bench']);
  const frame = benchOf(benches, ['frame']);
  const path = route === 'module' ? [cold] : [warm, grow];
  if (path.some((index) => index < 0)) return null;
  if (frame >= 0 && !path.includes(frame)) path.push(frame);
  const distinct = path.filter((index, i) => path.indexOf(index) === i);
  return {
    route,
    stages: distinct.map((index) => ({ stage: benches[index]!.stage, exposure: benches[index]!.exposure })),
    benches: distinct,
  };
}

/** Ground of the right sort that no disease on record bans the family from. */
export function couldGrowIn(kind: CropType, ground: GroundClass): boolean {
  return kind.growsIn.includes(ground.growsIn) && !ground.bannedFamilies.includes(kind.family);
}

/** All that it gives is leaves taken for tonight's salad: no head of it can be carried home and kept. */
export function isForTonight(kind: Pick<CropType, 'harvests'>): boolean {
  return kind.harvests.every(
    ({ role, habit }) => role === 'salad-leaves' && habit !== 'once' && habit !== 'stands',
  );
}

/** Could grow there, and somebody comes by often enough for it. */
export function canGrowIn(kind: CropType, ground: GroundClass): boolean {
  const often = ground.visitsPerWeek > seldomVisitsPerWeek;
  return couldGrowIn(kind, ground) && (often || !isForTonight(kind));
}

/** Stations of a kind on one strip: by spacing in beds, by litres in tubs. */
export function plantsPerStrip(kind: CropType, ground: GroundClass): number {
  const bySpace = (ground.stripM2 * 10000) / (kind.inRowCm * kind.betweenRowCm);
  if (ground.stripLitres === 0) return bySpace;
  return Math.max(0, Math.floor(ground.stripLitres / Math.max(1, kind.tubLitresPerPlant)));
}
