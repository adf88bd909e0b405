/**
 * One sowing of the plan moved, while somebody drags its bar: only it is run again, and the kitchen rule only from the
 * week in which the change is first felt to the one in which the shelves are as they were. What is slow is made once,
 * by `preparePreview`.
 */
import { bandOf, isoOfWeek, meanOf } from '@twelvemonth/basis';
import { type EatenAgain, eatAgain, eatMarked, isLean, type MarkedKitchen } from '@twelvemonth/growing';
import type { KitUse, PlanningProblem } from '@twelvemonth/planning';
import { dayBandOf } from '../forecast/day-band.ts';
import type { ChosenSowing } from '../plan/chosen-sowings.ts';
import { harvestsOf } from '../plan/report-sowings.ts';
import type { Clash, LeanChange, MovePreview, RoleChange } from '../report/preview-report.ts';
import { clashesOf, kitUses } from './clashes.ts';
import { forbiddenBecause, movedSowing, type SowingMove } from './moved-sowing.ts';
import type { OpenPlan } from './open-plan.ts';

/** Members that eat; days and risks are of all members. */
const eatingMembers = 6;
const worthAWeekServings = 0.05;
const likely = 0.5;

export interface PreviewState {
  readonly problem: PlanningProblem;
  readonly sowings: readonly ChosenSowing[];
  readonly kitchens: readonly MarkedKitchen[];
  readonly byId: ReadonlyMap<string, { readonly sowing: ChosenSowing; readonly rank: number }>;
  /** Kit that each sowing has, or would have. */
  readonly kit: ReadonlyMap<ChosenSowing, readonly KitUse[]>;
  /** Clashes that the plan has already, by sowing; found when first asked for. */
  readonly clashesBefore: Map<string, readonly string[]>;
}

export function preparePreview({ problem, sowings }: Pick<OpenPlan, 'problem' | 'sowings'>): PreviewState {
  const kitchens = problem.context.members
    .slice(0, eatingMembers)
    .map((_, m) =>
      eatMarked([problem.stock, ...sowings.map((s) => s.runs[m]!.lots)], problem.appetite, problem.roles),
    );
  return {
    problem,
    sowings,
    kitchens,
    byId: new Map(sowings.map((sowing, i) => [sowing.id, { sowing, rank: i + 1 }])),
    kit: new Map(sowings.map((sowing) => [sowing, kitUses(problem, sowing)])),
    clashesBefore: new Map(),
  };
}

function foodChange(
  state: PreviewState,
  again: readonly EatenAgain[],
): Pick<MovePreview, 'changes' | 'lean' | 'missingChange'> {
  const { appetite, fromWeek } = state.problem;
  const from = Math.min(...again.map((a) => a.from));
  const to = Math.max(...again.map((a) => a.to));
  const count = again.length;
  const changes: RoleChange[] = [];
  const filled: LeanChange[] = [];
  const opened: LeanChange[] = [];
  let [leanChange, missingChange] = [0, 0];
  appetite.roles.forEach((role, r) => {
    const weeks: { weekOf: string; servings: number }[] = [];
    let servings = 0;
    for (let w = from; w < to; w++) {
      let [gain, leanBefore, leanAfter] = [0, 0, 0];
      for (let m = 0; m < count; m++) {
        const before = state.kitchens[m]!.eaten.eaten[r]![w]!;
        const after = again[m]!.eaten.eaten[r]![w]!;
        gain += (after - before) / count;
        if (isLean(appetite, r, w, before)) leanBefore += 1 / count;
        if (isLean(appetite, r, w, after)) leanAfter += 1 / count;
      }
      servings += gain;
      leanChange += leanAfter - leanBefore;
      const weekOf = isoOfWeek(fromWeek + w);
      if (leanBefore >= likely && leanAfter < likely) filled.push({ role, weekOf });
      if (leanBefore < likely && leanAfter >= likely) opened.push({ role, weekOf });
      if (Math.abs(gain) >= worthAWeekServings) weeks.push({ weekOf, servings: gain });
    }
    missingChange -= servings;
    if (weeks.length > 0) changes.push({ role, servings, weeks });
  });
  return { changes, missingChange, lean: { filled, opened, change: leanChange } };
}

const keyOf = ({ over, where, with: others }: Pick<Clash, 'over' | 'where' | 'with'>): string =>
  `${over}/${where}/${over === 'ground' || over === 'rotation' ? others.join() : ''}`;

function clashesAfter(state: PreviewState, sowing: ChosenSowing, moved: ChosenSowing): Clash[] {
  const { problem, sowings, kit, clashesBefore } = state;
  const usesOf = (other: ChosenSowing): readonly KitUse[] => kit.get(other) ?? [];
  const others = sowings.filter((other) => other !== sowing);
  const before =
    clashesBefore.get(sowing.id) ?? clashesOf(problem, sowing, others, usesOf).map((clash) => keyOf(clash));
  clashesBefore.set(sowing.id, before);
  return clashesOf(problem, moved, others, usesOf).map((clash) => ({
    ...clash,
    before: before.includes(keyOf(clash)),
  }));
}

const nothingShare = ({ runs }: ChosenSowing): number =>
  meanOf(runs.map((run) => (run.harvests.every((h) => h.servings <= 0) ? 1 : 0)));

function riskOf(before: ChosenSowing, after: ChosenSowing): MovePreview['risk'] {
  const bolted = (s: ChosenSowing): number => bandOf(s.runs.map((run) => run.boltedShare)).p50;
  const frosted = (s: ChosenSowing): number => bandOf(s.runs.map((run) => run.frostedShare)).p90;
  return {
    bolted: { before: bolted(before), after: bolted(after) },
    frosted: { before: frosted(before), after: frosted(after) },
    nothing: { before: nothingShare(before), after: nothingShare(after) },
  };
}

/** Null when the plan has no such sowing. */
export function previewMove(state: PreviewState, move: SowingMove): MovePreview | null {
  const found = state.byId.get(move.sowing);
  if (found === undefined) return null;
  const { sowing, rank } = found;
  const { problem, sowings, kitchens } = state;
  const forbidden = forbiddenBecause(problem, sowing, move);
  const moved = forbidden.length > 0 ? sowing : movedSowing(problem, sowings, sowing, move);
  const again = kitchens.map((kitchen, m) => eatAgain(kitchen, rank, moved.runs[m]!.lots));
  return {
    sowing: sowing.id,
    forbidden,
    plantOut:
      moved.plan.stages.length === 0
        ? null
        : dayBandOf(
            moved.runs.map((run) => run.groundDay),
            moved.runs.map((run) => run.harvests[0]?.reason ?? null),
          ),
    harvests: harvestsOf(moved),
    ...foodChange(state, again),
    clashes: forbidden.length > 0 ? [] : clashesAfter(state, sowing, moved),
    risk: riskOf(sowing, moved),
  };
}
