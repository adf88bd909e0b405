import type { Day } from '@twelvemonth/basis';
import type { ChangedSowing, ComparedLeanWeek, ComparedSowing, PlanComparison } from '@twelvemonth/workflows';
import { dayOf, plainSpaces, wrapText } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { amountText, capital, countOf, listText, servingsText } from './number-words.ts';

const width = 80;
const mostLines = 12;

const heading = (text: string): string => `${text}\n${'='.repeat(width)}`;
const item = (text: string): string => wrapText(`- ${text}`, width, 2).join('\n');

/** The first of many, and how many more there are. */
function section(title: string, lines: readonly string[]): string[] {
  if (lines.length === 0) return [];
  const shown = lines.length > mostLines + 1 ? lines.slice(0, mostLines) : lines;
  const rest = lines.length - shown.length;
  return [[heading(title), ...shown.map(item), ...(rest > 0 ? [item(`and ${rest} more`)] : [])].join('\n')];
}

const plantsText = (plants: number): string => countOf(Math.round(plants), 'plant');
const sowingName = (sowing: ComparedSowing): string => `${capital(sowing.kindName)} (${sowing.number})`;

function sowingText(sowing: ComparedSowing, near: Day): string {
  const day = dayNear(dayOf(sowing.sow), near);
  return `${sowingName(sowing)}, ${day}: ${plantsText(sowing.plants)}, ${amountText(sowing.groundM2)} m², ${sowing.placeName}`;
}

function daysText(days: number): string {
  const size = Math.abs(days);
  const text = size % 7 === 0 ? countOf(size / 7, 'week') : countOf(size, 'day');
  return `${text} ${days > 0 ? 'later' : 'earlier'}`;
}

/** All that changed about one sowing, in one sentence. */
function changeText(change: ChangedSowing, near: Day): string {
  const { before, after } = change;
  const parts: string[] = [];
  if (change.movedDays !== 0)
    parts.push(
      `${daysText(change.movedDays)} (${dayNear(dayOf(before.sow), near)} → ${dayNear(dayOf(after.sow), near)})`,
    );
  if (Math.round(change.plantsChange) !== 0)
    parts.push(`${amountText(before.plants)} → ${plantsText(after.plants)}`);
  if (before.place !== after.place) parts.push(`${before.placeName} → ${after.placeName}`);
  return `${sowingName(after)}: ${parts.join('; ')}`;
}

const signed = (value: number): string => `${value < 0 ? '−' : '+'}${amountText(Math.abs(value))}`;

/** Neighbouring weeks of a role as one stretch: "cooked greens, early Feb – mid-Mar". */
function stretchesText(weeks: readonly ComparedLeanWeek[], nameOf: (role: string) => string): string[] {
  const stretches: { role: string; from: Day; to: Day }[] = [];
  for (const week of weeks) {
    const monday = dayOf(week.weekOf);
    const last = stretches.at(-1);
    if (last !== undefined && last.role === week.role && monday <= last.to + 8) last.to = monday + 6;
    else stretches.push({ role: week.role, from: monday, to: monday + 6 });
  }
  return stretches.map(
    ({ role, from, to }) =>
      `${capital(nameOf(role))}, ${dateWords.roughly(from, to)}: ${countOf(Math.round((to - from + 1) / 7), 'week')}`,
  );
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

function tableText(comparison: PlanComparison): string {
  const { lean, roles, shared, hours } = comparison;
  if (shared === null) return 'The two plans have no week in common, so what is eaten cannot be compared.';
  const change = sumOf(roles.map((role) => role.change));
  const weeks = `In the ${countOf(shared.weeks, 'week')} that both show`;
  const eaten =
    Math.abs(change) < 0.5
      ? 'as much is eaten as before'
      : `${servingsText(Math.abs(change))} ${change > 0 ? 'more are' : 'fewer are'} eaten`;
  const leanChange = lean.after - lean.before;
  const leanText =
    Math.abs(leanChange) < 0.05
      ? `lean role-weeks stay at ${amountText(lean.after)}`
      : `lean role-weeks go from ${amountText(lean.before)} to ${amountText(lean.after)}`;
  const hoursText =
    Math.abs(hours.change) < 0.5
      ? 'the work stays the same'
      : `work goes from ${amountText(hours.before)} to ${amountText(hours.after)} hours in the year that is counted`;
  return wrapText(`${weeks} ${eaten}, and ${leanText}; ${hoursText}.`, width).join('\n');
}

function countsText(comparison: PlanComparison): string {
  const { added, dropped, moved, grown, shrunk, elsewhere, further, past, unchanged } = comparison;
  const counts: readonly (readonly [number, string])[] = [
    [added.length, 'added'],
    [dropped.length, 'dropped'],
    [moved.length, 'moved'],
    [grown.length, 'grown'],
    [shrunk.length, 'shrunk'],
    [elsewhere.length, 'in another place'],
  ];
  const said = counts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  const changes = said.length === 0 ? 'No sowing changes' : `Sowings: ${listText(said)}`;
  const rest = [
    `${unchanged} as before`,
    ...(past.length > 0 ? [`${past.length} over by now`] : []),
    ...(further.length > 0 ? [`${further.length} beyond the weeks that the first plan shows`] : []),
  ];
  return wrapText(`${changes}; ${listText(rest)}.`, width).join('\n');
}

function headText({ before, after }: PlanComparison): string {
  const fromText = (from: string): string => dateWords.dayInFull(dayOf(from));
  const same = before.household === after.household && before.site === after.site;
  const who = same
    ? `${after.household}, ${after.site}`
    : `${before.household}, ${before.site}, against ${after.household}, ${after.site}. These are two gardens`;
  return wrapText(
    `${who}: the plan from ${fromText(before.from)} and the plan from ${fromText(after.from)}.`,
    width,
  ).join('\n');
}

/** Two plans side by side, for people. */
export function comparisonText(comparison: PlanComparison): string {
  const near = dayOf(comparison.after.from);
  const nameOf = (role: string): string =>
    comparison.roles.find((each) => each.role === role)?.roleName ?? role;
  const changed = new Set([
    ...comparison.moved,
    ...comparison.grown,
    ...comparison.shrunk,
    ...comparison.elsewhere,
  ]);
  const roles = comparison.roles
    .filter((role) => role.gained >= 0.5 || role.lost >= 0.5)
    .sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
  const parts = [
    [headText(comparison), countsText(comparison), tableText(comparison)].join('\n'),
    ...section(
      'Added',
      comparison.added.map((sowing) => sowingText(sowing, near)),
    ),
    ...section(
      'Changed',
      [...changed].map((change) => changeText(change, near)),
    ),
    ...section(
      'Dropped',
      comparison.dropped.map((sowing) => sowingText(sowing, near)),
    ),
    ...section(
      'Servings gained and lost',
      roles.map(
        (role) =>
          `${capital(role.roleName)}: ${signed(role.change)} (${amountText(role.before)} → ${amountText(role.after)})`,
      ),
    ),
    ...section('Lean weeks filled', stretchesText(comparison.lean.filled, nameOf)),
    ...section('Lean weeks opened', stretchesText(comparison.lean.opened, nameOf)),
  ];
  return plainSpaces(`${parts.join('\n\n')}\n`);
}
