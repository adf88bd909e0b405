import type { Day, Issue } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import { firmIssues } from './issues/firm-issues.ts';
import { nameIssues } from './issues/name-issues.ts';
import { standingIssues } from './issues/standing-issues.ts';
import { stockIssues } from './issues/stock-issues.ts';
import { ownKindIssues } from './kinds/garden-kinds.ts';
import { benchesOf, groundOf } from './problem/ground.ts';

/** What only the catalogue and the engine can find in a garden that its file's own rules let through. */
export function issuesOfGarden(garden: Garden, fromDay: Day): Issue[] {
  const benches = benchesOf(garden);
  const ground = groundOf(garden, benches);
  const all = [
    ...ownKindIssues(garden),
    ...nameIssues(garden),
    ...standingIssues(garden, ground, benches, fromDay),
    ...firmIssues(garden, ground, benches, fromDay),
    ...stockIssues(garden, fromDay),
  ];
  const seen = new Set<string>();
  return all.filter(({ code, where }) => {
    const key = `${code} ${where}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
