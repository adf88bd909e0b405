/** Which sowing of a plan is which of another: by id, else by kind, route and place within three weeks. */
import { dayFromIso } from '@twelvemonth/basis';
import type { ReportSowing } from '../report/plan-report.ts';

export const sameSowingWithinDays = 21;

export interface MatchedSowings {
  readonly before: ReportSowing;
  readonly after: ReportSowing;
  readonly by: 'id' | 'likeness';
}

export const sowDayOf = (sowing: ReportSowing): number => dayFromIso(sowing.sow)!;

/** Of what stands nobody knows more than whether it was raised or sown in place. */
function sameRoute(a: ReportSowing, b: ReportSowing): boolean {
  if (a.routeId === b.routeId) return true;
  const raised = (sowing: ReportSowing): boolean => sowing.plantOut !== null;
  return (a.state === 'done' || b.state === 'done') && raised(a) === raised(b);
}

const placesOf = (sowing: ReportSowing): readonly string[] =>
  sowing.beds.length > 0
    ? sowing.beds.map((bed) => bed.place)
    : sowing.route.slice(-1).map((stage) => stage.place);

export function isAlike(a: ReportSowing, b: ReportSowing): boolean {
  const places = placesOf(b);
  return (
    a.kind === b.kind &&
    sameRoute(a, b) &&
    Math.abs(sowDayOf(a) - sowDayOf(b)) <= sameSowingWithinDays &&
    placesOf(a).some((place) => places.includes(place))
  );
}

/** The nearest days find each other first, then the likest sizes; nobody is matched twice. */
export function matchSowings(
  before: readonly ReportSowing[],
  after: readonly ReportSowing[],
): MatchedSowings[] {
  const matches: MatchedSowings[] = [];
  const [taken, found] = [new Set<ReportSowing>(), new Set<ReportSowing>()];
  const match = (a: ReportSowing, b: ReportSowing, by: MatchedSowings['by']): void => {
    matches.push({ before: a, after: b, by });
    taken.add(a);
    found.add(b);
  };
  for (const a of before) {
    const b = after.find((sowing) => sowing.id === a.id && sowing.kind === a.kind && !found.has(sowing));
    if (b !== undefined) match(a, b, 'id');
  }
  const open = after.filter((b) => !found.has(b));
  const pairs = before
    .filter((a) => !taken.has(a))
    .flatMap((a) => open.filter((b) => isAlike(a, b)).map((b) => ({ a, b })))
    .map(({ a, b }) => ({
      a,
      b,
      days: Math.abs(sowDayOf(a) - sowDayOf(b)),
      plants: Math.abs(a.count.plant - b.count.plant),
    }))
    .sort((x, y) => x.days - y.days || x.plants - y.plants || x.a.number - y.a.number);
  for (const { a, b } of pairs) if (!taken.has(a) && !found.has(b)) match(a, b, 'likeness');
  return matches;
}
