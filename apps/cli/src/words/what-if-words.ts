import { civilFromDay } from '@twelvemonth/basis';
import type { WhatIfChange, WhatIfRemedy, WhatIfReport, WhatIfRole } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { plainCode, startWord } from './garden-words.ts';
import { amountText, capital, countOf, listText, servingsText } from './number-words.ts';

/** What `what-if` says: as a neighbour would. */

const degrees = (value: number): string => `${value.toFixed(1).replace('-', '−')}\u00a0°C`;

function changeText(change: WhatIfChange, near: number): string {
  switch (change.change) {
    case 'lost':
      return `${capital(change.kindName)} (${change.number}) is lost on ${dayNear(dayOf(change.day), near)}.`;
    case 'cover': {
      const grow =
        change.grow.length === 0
          ? 'Nothing of the plan grows there then or later'
          : `${countOf(change.grow.length, 'sowing')} of the plan ${change.grow.length === 1 ? 'grows' : 'grow'} there then or later`;
      const raised =
        change.raised.length === 0 ? '' : `, and ${countOf(change.raised.length, 'is', 'are')} raised there`;
      return `A gale takes the cover of ${change.coverName} on ${dayNear(dayOf(change.day), near)}, and it stays off. ${grow}${raised}.`;
    }
    case 'weather': {
      const dry = change.weather === 'dry-may';
      const season = dateWords.roughly(dayOf(change.from), dayOf(change.to));
      const month = dateWords.month(civilFromDay(dayOf(change.from)));
      const value = dry ? `${Math.round(change.value)} mm of rain` : `${degrees(change.value)} in the mean`;
      const usual = dry ? `${Math.round(change.usual)} mm` : degrees(change.usual);
      const name = dry ? `A dry ${month}` : `A late spring (${season})`;
      return `${name}: ${value}, where ${usual} is usual; the ${change.members} ${dry ? 'driest' : 'coldest'} of ${change.ofMembers} weather runs.`;
    }
  }
}

const leanText = (weeks: number): string => {
  const whole = Math.round(Math.abs(weeks) * 10) / 10;
  return `${amountText(whole)} lean ${whole === 1 ? 'week' : 'weeks'}`;
};

function roleText(role: WhatIfRole, near: number): string {
  const name = capital(role.roleName);
  if (role.servingsLost < 0) return `${name}: ${servingsText(-role.servingsLost)} more than before`;
  const when =
    role.from === null || role.to === null
      ? ''
      : `, ${dateWords.roughly(dayOf(role.from), dayOf(role.to) + 6)}${dayNear(dayOf(role.to) + 6, near).slice(dateWords.day(dayOf(role.to) + 6).length)}`;
  const lean =
    Math.abs(role.leanWeeksMore) < 0.05
      ? ''
      : `, ${leanText(role.leanWeeksMore)} ${role.leanWeeksMore < 0 ? 'fewer' : 'more'}`;
  return `${name}${when}: ${servingsText(role.servingsLost)} fewer${lean}`;
}

function remedyText(remedy: WhatIfRemedy, report: WhatIfReport, near: number): string {
  const verb = remedy.startsAs === 'seed' ? 'sow' : 'plant';
  const what = `${remedy.plants} ${remedy.startsAs === 'seed' ? (remedy.plants === 1 ? 'plant' : 'plants') : startWord(remedy.startsAs, remedy.plants)}`;
  const latest = remedy.by === remedy.sow ? '' : `, at the latest ${dayNear(dayOf(remedy.by), near)}`;
  const names = new Map(report.roles.map((role) => [role.role, role.roleName]));
  const feeds = remedy.roles.filter((role) => names.has(role)).map((role) => names.get(role)!);
  const where = listText(remedy.placeNames.slice(0, 3), 'or');
  return `${capital(verb)} ${remedy.kindName} by ${dayNear(dayOf(remedy.sow), near)}${latest}: ${what}, ${amountText(remedy.m2)} m² in ${where}; brings back ${servingsText(remedy.filled)}${feeds.length === 0 ? '' : ` of ${listText(feeds)}`}`;
}

/** Less than this of a role is chance, servings. */
const worthALine = 0.3;

export interface WhatIfSection {
  readonly heading: string | null;
  readonly lines: readonly string[];
}

export function whatIfSections(report: WhatIfReport): readonly WhatIfSection[] {
  const near = dayOf(report.from);
  const lost = report.after.servingsMissing - report.before.servingsMissing;
  const lean = report.after.leanWeeks - report.before.leanWeeks;
  const missed = report.roles.filter((role) => Math.abs(role.servingsLost) >= worthALine);
  const back = report.remedies.reduce((sum, remedy) => sum + remedy.filled, 0);
  const worse =
    lost < 0.05 && lean < 0.05
      ? 'All in all the table would not notice.'
      : `From ${dayNear(dayOf(report.countedFrom), near)} to the end of the plan ${servingsText(Math.max(0, lost))} more are missing, and there are ${leanText(Math.max(0, lean))} more than the ${amountText(report.before.leanWeeks)} of the plan as it is.`;
  const rest =
    report.remedies.length === 0
      ? lost < 0.5
        ? 'Nothing need be done about it.'
        : `Nothing that can still be begun after ${dayNear(dayOf(report.knownDay), near)} would bring back any of it: buy or go without.`
      : back >= lost
        ? `Together they bring back all of it.`
        : `Together they bring back ${amountText(Math.max(0, back))} of ${servingsText(Math.max(0, lost))}.`;
  return [
    { heading: null, lines: report.changes.map((change) => changeText(change, near)) },
    { heading: null, lines: [worse] },
    ...(missed.length === 0
      ? []
      : [{ heading: 'What is missed', lines: missed.map((role) => roleText(role, near)) }]),
    {
      heading: `What can still be done after ${dayNear(dayOf(report.knownDay), near)}`,
      lines: [...report.remedies.map((remedy) => remedyText(remedy, report, near)), rest],
    },
    ...(report.leftOut.length === 0
      ? []
      : [
          {
            heading: null,
            lines: [
              `Left out, since the garden file has no kind, place or route for them any more: ${report.leftOut.join(', ')}. Plan again to have them counted.`,
            ],
          },
        ]),
  ];
}

export function whatIfRefusal(reason: string, detail: Readonly<Record<string, string | number>>): string {
  const text = (name: string): string => String(detail[name] ?? '');
  const meant = text('nearest') === '' ? '' : ` Was "${text('nearest')}" meant?`;
  const sentences: Readonly<Record<string, string>> = {
    'nothing-asked': 'What if what? Give at least one of --lose, --cover and --weather.',
    'sowing-unknown': `The plan has no sowing "${text('sowing')}".${meant} Its numbers and ids stand on the sheets and in plan.json.`,
    'cover-unknown': `The garden has no cover "${text('cover')}".${meant} ${text('known') === '' ? 'It has none at all.' : `It has: ${text('known')}.`}`,
    'cover-indoors': `No gale reaches ${text('cover')}: name a tunnel, a glasshouse, a frame, cloches or fleece.`,
    'day-outside-plan': `${text('day')} lies outside the plan, which runs from ${text('from')} to ${text('to')}. Give a day within it with --on.`,
    'season-outside-plan': `The next such season begins on ${text('day')}, after the plan, which runs from ${text('from')} to ${text('to')}. Plan more --weeks.`,
    'no-climate': 'The garden has no climate to draw weather from: see site.climate in the file.',
    'no-ground': 'There is no ground in this garden: add beds, tubs or benches under places.',
    'no-appetite': 'Nobody wants anything from the garden: look at household.appetite.',
  };
  return sentences[reason] ?? `This cannot be answered: ${plainCode(reason)}.`;
}
