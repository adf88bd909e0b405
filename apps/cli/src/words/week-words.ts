import type { LeanReason, OtherSowing, WeekReasons, WeekRole, WeekSource } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { type Part, roleText, roundServings, spanText } from './explain-words.ts';
import { amountText, capital, countOf, listText, servingsText } from './number-words.ts';
import { bindsWord } from './plan-words.ts';

/** A week at table, said by a good neighbour: role by role, and what would mend the lean ones. */

const little = 0.5;
const sourcesNamed = 4;
const likely = 0.5;

function sourceText({ kindName, number, stored, standsIn, servings }: WeekSource): string {
  const label = number === null || number === 0 ? '' : ` (${number})`;
  const from = number === null ? ' from stock' : stored ? ' from the store' : '';
  return `${kindName}${label}${from}${standsIn ? ' instead' : ''} ${amountText(servings)}`;
}

function eatenText({ wanted, bought, eaten, sources, chanceLean }: WeekRole): string {
  if (wanted < 0.05)
    return bought < 0.05 ? 'Nobody wants any.' : `${servingsText(bought)}, all bought on purpose.`;
  const { p10, p50, p90 } = eaten;
  const spread = p90 - p10 >= little ? ` (${amountText(p10)} to ${amountText(p90)})` : '';
  const beside = bought >= little ? `, besides ${amountText(bought)} bought` : '';
  const often =
    chanceLean >= 0.95
      ? ''
      : chanceLean >= 0.1
        ? `, lean in ${Math.max(1, Math.round(chanceLean * 10))} years of ten`
        : '';
  const full = p50 >= wanted - 0.05 && spread === '';
  const amount = full
    ? `all ${servingsText(wanted)}`
    : p50 < 0.05
      ? `none of ${servingsText(wanted)}`
      : `${amountText(p50)}${spread} of ${servingsText(wanted)}`;
  const named = sources.slice(0, sourcesNamed).map(sourceText);
  const rest = sources.slice(sourcesNamed).reduce((sum, s) => sum + s.servings, 0);
  const from =
    named.length === 0 ? '' : `: ${named.join(', ')}${rest >= 0.1 ? `, others ${amountText(rest)}` : ''}`;
  return `${amount}${beside}${often}${from}.`;
}

const begin = ({ startsAs, sow }: OtherSowing, near: number): string =>
  `${startsAs === 'seed' ? 'sown' : 'planted'} by ${dayNear(dayOf(sow), near)}`;

const sizeText = (s: OtherSowing): string =>
  s.vessels > 0 ? countOf(s.plants, 'plant') : `${amountText(s.m2)} m²`;

function remedyText({ binds, remedy, makesWay }: LeanReason, near: number): string {
  const why = capital(bindsWord(binds));
  if (remedy === null) return `${why}: buy it, or eat something else.`;
  const { sowing, filled, code } = remedy;
  const what = `${sowing.kindName}, ${begin(sowing, near)} (${sizeText(sowing)})`;
  const fills = `about ${roundServings(filled)}`;
  const way =
    makesWay === null
      ? ''
      : ` Given the ground of ${makesWay.kindName} (${makesWay.number}), ${roundServings(makesWay.missingLess)} fewer would be missing in sum.`;
  switch (code) {
    case 'sow-more':
      return `There is room for more: ${what} in ${sowing.placeName} would fill ${fills}.`;
    case 'substitute':
      return `The nearest thing to it: ${what} in ${sowing.placeName} would stand in for ${fills}.`;
    case 'more-cover':
      return `${why}. ${amountText(sowing.m2)} m² more under cover for ${what.replace(/ \([^)]*\)$/, '')} would fill ${fills}.${way}`;
    case 'more-ground':
      return `${why}. ${amountText(sowing.m2)} m² more for ${what.replace(/ \([^)]*\)$/, '')} would fill ${fills}.${way}`;
    case 'more-bench':
      return `${why}. With room there for ${what} ${fills} would be filled.${way}`;
    default:
      return `${why}. With more time for ${what} ${fills} would be filled.${way}`;
  }
}

function leanText(reason: LeanReason, near: number): string {
  const weeks = reason.from === reason.to ? '' : ` ${capital(spanText(reason.from, reason.to, near))}:`;
  const missing = ` ${roundServings(reason.servingsMissing)} short${reason.from === reason.to ? '' : ` in ${countOf(Math.max(1, Math.round(reason.leanWeeks)), 'lean week')}`}.`;
  return `${weeks}${missing} ${remedyText(reason, near)}`;
}

export function weekParts(reasons: WeekReasons): { readonly title: string; readonly parts: readonly Part[] } {
  const near = dayOf(reasons.weekOf);
  const { roleNames, roles, spare } = reasons;
  const parts: Part[] = [];
  const order = [...roles].sort((a, b) => Number(b.chanceLean >= likely) - Number(a.chanceLean >= likely));
  for (const role of order) {
    const text = eatenText(role);
    parts.push([
      roleText(roleNames, role.role),
      role.lean === null ? text : `${text}${leanText(role.lean, near)}`,
    ]);
  }
  if (roles.length === 0) parts.push(['nothing', 'Nobody wants anything from the garden in this week.']);
  if (roles.some((role) => role.lean !== null) && spare.length > 0)
    parts.push([
      'meanwhile',
      `There is more than you eat of ${listText(spare.slice(0, 3).map((s) => roleText(roleNames, s.role)))}.`,
    ]);
  if (!reasons.shown)
    parts.push([
      'mind',
      'This week lies behind those that the plan shows: it is planned again before it comes.',
    ]);
  return { title: `Week of ${dateWords.dayInFull(near)}`, parts };
}
