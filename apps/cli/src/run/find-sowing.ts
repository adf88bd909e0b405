import type { Day } from '@twelvemonth/basis';
import { nearestName, type OpenPlan } from '@twelvemonth/workflows';
import { emptyPlanText, noSuchSowingText, notInFileText } from '../words/help-words.ts';
import { CliFailure } from './cli-failure.ts';

/** The sowing that is meant by an id, by the number on its label, or by its kind: the next of that kind to be begun. */
export function findSowing(open: OpenPlan, what: string, today: Day): string {
  const { sowings, lost } = open;
  if (lost.includes(what)) throw new CliFailure(notInFileText(what));
  const wanted = what.trim().toLowerCase();
  const named = sowings.filter(({ id, number, plan: { kind } }) =>
    [id.toLowerCase(), String(number), kind.id, kind.crop, kind.name.toLowerCase()].includes(wanted),
  );
  const exact = named.find((s) => s.id === what || String(s.number) === wanted);
  const next = named.find((s) => s.state !== 'done' && s.plan.startDay >= today);
  const found = exact ?? next ?? named[0];
  if (found !== undefined) return found.id;
  const nearest = nearestName(
    what,
    sowings.flatMap(({ id, plan: { kind } }) => [id, kind.id, kind.name]),
  );
  const numbers = sowings.map((s) => s.number);
  if (numbers.length === 0) throw new CliFailure(emptyPlanText);
  throw new CliFailure(noSuchSowingText(what, nearest, Math.min(...numbers), Math.max(...numbers)), 2);
}
