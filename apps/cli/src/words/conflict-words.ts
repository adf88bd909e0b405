import type { ReportConflict, ReportDemand } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { capital, countOf, listText } from './number-words.ts';

export const headingConflicts = 'What cannot be met together';

const dayWords = (iso: string | null): string => (iso === null ? '' : dateWords.dayInFull(dayOf(iso)));

export function demandText(demand: ReportDemand): string {
  const { kindName, placeName, from, to } = demand;
  const plants = countOf(demand.plants ?? 0, 'plant');
  const span = to === null ? `from ${dayWords(from)} on` : `from ${dayWords(from)} to ${dayWords(to)}`;
  switch (demand.demand) {
    case 'at-least':
      return `at least ${plants} of ${kindName}`;
    case 'yearly':
      return `${plants} of ${kindName} a year`;
    case 'at-most':
      return `at most ${plants} of ${kindName}`;
    case 'firm':
      return `the promised sowing of ${kindName} on ${dayWords(from)} (${placeName}, ${plants})`;
    case 'forbid':
      return `no ${kindName}`;
    case 'rest':
      return `"${placeName}" rests ${span}`;
    case 'no-planting':
      return `nothing planted ${span}`;
    case 'hours':
      return 'the limit of hours (hoursPerWeek)';
  }
}

function howToMend({ set, drop, possiblePlants }: ReportConflict): string {
  const others = set.filter((demand) => JSON.stringify(demand) !== JSON.stringify(drop)).map(demandText);
  const ways = [
    ...(possiblePlants !== null && possiblePlants >= 1 ? [`ask for ${possiblePlants} at most`] : []),
    ...(others.length === 0 ? [] : [`give up ${listText(others, 'or')}`]),
  ];
  if (ways.length > 0) return capital(ways.join(', or '));
  return possiblePlants === null
    ? 'Name another place or day for it, or take it out of the file'
    : 'There is no ground here that it grows in: make some, or take it out of the file';
}

/** Which demands clash, which of them the plan leaves out, and what could be done about it. */
export function conflictText(conflict: ReportConflict): string {
  const all = capital(listText(conflict.set.map(demandText)));
  const clash =
    conflict.set.length === 1
      ? `${all} cannot be met in this garden; the plan leaves it out.`
      : `${all} cannot all be met; the plan leaves out ${demandText(conflict.drop)}.`;
  return `${clash} ${howToMend(conflict)}.`;
}
