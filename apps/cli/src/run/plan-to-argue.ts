import type { Day } from '@twelvemonth/basis';
import type { OpenPlan, PlanReport } from '@twelvemonth/workflows';
import { cannotText } from '../words/plan-words.ts';
import { CliFailure } from './cli-failure.ts';
import { type SoundGarden, soundGarden } from './load-garden.ts';
import { makePlan } from './make-plan.ts';
import { planDefaults } from './plan-defaults.ts';
import { planBeside, readStoredPlan } from './stored-plan.ts';
import type { Terminal } from './terminal.ts';
import { workflowFunction } from './workflow-functions.ts';

export interface ArgueWishes {
  readonly plan?: string;
  readonly from?: Day;
  readonly members?: number;
}

/** The plan given, else the one beside the garden file, else none. */
export async function storedPlanFor(
  file: string,
  sound: SoundGarden,
  wishes: ArgueWishes,
  terminal: Terminal,
): Promise<PlanReport | null> {
  if (wishes.plan === undefined) return planBeside(file, sound.garden, terminal);
  return readStoredPlan(wishes.plan);
}

/** A plan opened to be argued with; without a stored one a new one is made, or only what stands is taken. */
export async function planToArgue(
  file: string,
  wishes: ArgueWishes,
  orElse: 'make' | 'standing-alone',
  terminal: Terminal,
): Promise<{ readonly open: OpenPlan; readonly sound: SoundGarden }> {
  const sound = await soundGarden(file, wishes.from ?? null, terminal);
  const stored = await storedPlanFor(file, sound, wishes, terminal);
  const report =
    stored ?? (orElse === 'make' ? await makePlan(sound, {}, { terminal, always: false }) : null);
  const openPlan = await workflowFunction('openPlan');
  const { weeks, memberCount, seed } = planDefaults;
  const opened = openPlan(sound.garden, sound.daily, report, {
    fromDay: sound.fromDay,
    weeks,
    memberCount: wishes.members ?? memberCount,
    seed,
  });
  if (opened.kind !== 'done') throw new CliFailure(cannotText(opened.reason, opened.detail));
  return { open: opened.value, sound };
}
