/** The same growth answer from the engine's running sums and searches. */
import {
  type ForecastContext,
  firstHarvestDay,
  type Member,
  NEVER,
  raise,
  referenceDayCDays,
  type SowingPlan,
} from '../packages/growing/src/index.ts';
import { countedHarvests } from './naive-growth.ts';

export function engineFirstDays(context: ForecastContext, member: Member, plan: SowingPlan): number[] {
  const { kind } = plan;
  const pace = member.paceOf(kind);
  const reference = referenceDayCDays(kind);
  const growing = {
    kind,
    raised: raise(member, plan, reference, pace),
    sumOf: (referenceDays: number): number => (referenceDays * reference) / pace,
    lengthOfDay: context.lengthOfDay,
    southern: context.site.latitudeDeg < 0,
  };
  const days = new Map<string, number>();
  return countedHarvests(kind).map((harvest) => {
    const day = firstHarvestDay(growing, harvest, (id) => days.get(id) ?? NEVER);
    days.set(harvest.id, day);
    return day;
  });
}
