/** Ids and label numbers that survive: what was told keeps its id where kind and route match and the day moves little. */
import type { Choice, LastPlan } from '@twelvemonth/planning';
import { sameSowingWithinDays } from '../compare/match-sowings.ts';

/** By choice, the id of the last plan's sowing that it goes on; the unmoved first, then the nearest. */
export function keptIds(last: LastPlan | null, choices: readonly Choice[]): Map<Choice, string> {
  const kept = new Map<Choice, string>();
  if (last === null) return kept;
  const pairs = choices
    .filter(({ candidate }) => candidate.group === null)
    .flatMap((choice) => last.sowings.map((sowing) => ({ choice, sowing })))
    .map(({ choice, sowing }) => {
      const { plan, ground, stays } = choice.candidate;
      const alike = plan.kind.id === sowing.kind && plan.route === sowing.route;
      const days = Math.abs(plan.startDay - sowing.startDay);
      const near = alike && days <= sameSowingWithinDays;
      const rank = stays?.id === sowing.id ? -1 : days + (ground === sowing.ground ? 0 : 0.5);
      return { choice, id: sowing.id, rank: near ? rank : null };
    })
    .filter((pair): pair is typeof pair & { rank: number } => pair.rank !== null)
    .sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : 1));
  const taken = new Set<string>();
  for (const { choice, id } of pairs) {
    if (kept.has(choice) || taken.has(id)) continue;
    kept.set(choice, id);
    taken.add(id);
  }
  return kept;
}

/** A number that is on a label already stays; what is new is numbered on from the highest. */
export function keptNumbers(
  ids: readonly string[],
  before: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  let next = 1 + Math.max(0, ...before.values());
  return new Map(ids.map((id) => [id, before.get(id) ?? next++]));
}
