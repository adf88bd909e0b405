import type { PlanOptions, PlanReport } from '@twelvemonth/workflows';
import { cannotText } from '../words/plan-words.ts';
import { CliFailure } from './cli-failure.ts';
import type { SoundGarden } from './load-garden.ts';
import { planDefaults } from './plan-defaults.ts';
import { type ProgressWish, planInThread } from './plan-in-thread.ts';

export type PlanWishes = Partial<Omit<PlanOptions, 'fromDay' | 'checkMemberCount'>>;

export async function makePlan(
  { garden, daily, fromDay }: SoundGarden,
  wishes: PlanWishes,
  progress: ProgressWish,
): Promise<PlanReport> {
  const options: PlanOptions = { ...planDefaults, timeLimitSeconds: null, ...wishes, fromDay };
  const outcome = await planInThread({ garden, daily, options }, progress);
  if (outcome.kind === 'cannot') throw new CliFailure(cannotText(outcome.reason, outcome.detail));
  return outcome.value;
}
