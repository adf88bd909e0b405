import type {
  EatenBecause,
  Neighbour,
  OtherSowing,
  ReportSowing,
  SowingReasons,
} from '@twelvemonth/workflows';
import { dayOf, placeNamesOf } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { dayReasonWord, plainCode, riskWord } from './garden-words.ts';
import {
  amountText,
  capital,
  countOf,
  listText,
  oftenText,
  percentText,
  servingsText,
} from './number-words.ts';

/** Why a sowing is in the plan, said by a good neighbour: each part a short paragraph under its word. */

export type Part = readonly [word: string, text: string];

/** Servings under this are not worth a word. */
const little = 0.5;
const mostNumbers = 8;

export const roleText = (names: Readonly<Record<string, string>>, role: string): string =>
  names[role] ?? plainCode(role);

const verbOf = (startsAs: string): string => (startsAs === 'seed' ? 'sown' : 'planted');

export function spanText(from: string, to: string, near: number): string {
  const [first, last] = [dayOf(from), dayOf(to) + 6];
  const year = dayNear(last, near).slice(dateWords.day(last).length);
  return `${dateWords.roughly(first, last)}${year}`;
}

function whatPart({ sowing, today }: SowingReasons): Part {
  const { count, startsAs } = sowing;
  const day = dayOf(sowing.sow);
  const raised = sowing.plantOut !== null;
  const out = sowing.plantOut?.p50 ?? null;
  const grow = `${countOf(count.plant, 'plant')} in ${placeNamesOf(sowing)}${sowing.groundM2 > 0 ? `, ${amountText(sowing.groundM2)} m²` : ''}`;
  const begun =
    sowing.state === 'done'
      ? `${verbOf(startsAs)} about ${dateWords.dayInFull(day)}`
      : `to be ${verbOf(startsAs)} ${dateWords.dayInFull(day)}${raised && out !== null ? `, planted out about ${dayNear(dayOf(out), day)}` : ''}`;
  const firsts = sowing.harvests.filter((h) => h.first.p50 !== null && h.servings.p50 >= little);
  const ready = firsts
    .map((h) => {
      const { p10, p90, p50 } = h.first;
      if (sowing.state === 'done' && dayOf(p90 ?? p50!) <= dayOf(today))
        return firsts.length > 1 ? `${plainCode(h.id)} already` : 'already';
      const when =
        p10 !== null && p90 !== null
          ? dateWords.roughly(dayOf(p10), dayOf(p90))
          : `about ${dateWords.day(dayOf(p50!))}, not every year`;
      return firsts.length > 1 ? `${plainCode(h.id)} ${when}` : when;
    })
    .join('; ');
  const not = sowing.harvests.find((h) => h.first.p50 === null);
  const eaten =
    ready !== ''
      ? ` First to eat: ${ready}.`
      : not === undefined || not.first.reason === null
        ? ''
        : ` ${capital(dayReasonWord(not.first.reason))}.`;
  const state = { done: 'stands', firm: 'firm', draft: 'draft' }[sowing.state];
  return [state, `${grow}; ${begun}.${eaten} Its ground is free again ${dayNear(dayOf(sowing.clear), day)}.`];
}

const roundText = (servings: number): string => amountText(servings >= 1 ? Math.round(servings) : servings);
export const roundServings = (servings: number): string =>
  servingsText(servings >= 1 ? Math.round(servings) : servings);

/** "12 servings of salad leaves, Nov – Feb; 3 in place of broccoli, Dec". */
export function eatsText(
  eats: readonly EatenBecause[],
  own: ReadonlySet<string>,
  names: Readonly<Record<string, string>>,
  near: number,
): string {
  const ownFirst = [...eats].sort((a, b) => Number(own.has(b.role)) - Number(own.has(a.role)));
  return ownFirst
    .map((e, i) => {
      const role = `${own.has(e.role) ? 'of' : 'in place of'} ${roleText(names, e.role)}`;
      const amount = i === 0 ? roundServings(e.servings) : roundText(e.servings);
      return `${amount} ${role}, ${spanText(e.from, e.to, near)}`;
    })
    .join('; ');
}

const ownRoles = (sowing: ReportSowing): Set<string> => new Set(sowing.harvests.map((h) => h.role as string));

function feedsPart(reasons: SowingReasons): Part {
  const { sowing, eats, servings, roleNames } = reasons;
  const near = dayOf(sowing.sow);
  const kept = eats.reduce((sum, e) => sum + e.servings, 0);
  if (servings < little) return ['feeds', 'Hardly anything comes of it within the weeks looked at.'];
  if (kept < little)
    return [
      'feeds',
      `About ${roundServings(servings)} come of it, but nothing that something else would not give as well.`,
    ];
  const rest =
    servings > kept * 1.5 + 1
      ? ` It gives about ${roundServings(servings)} in all; the rest is more than you eat, or others would give it.`
      : '';
  return ['feeds', `${capital(eatsText(eats, ownRoles(sowing), roleNames, near))}.${rest}`];
}

export function otherText(other: OtherSowing, near: number): string {
  const size = other.vessels > 0 ? countOf(other.plants, 'plant') : `${amountText(other.m2)} m²`;
  return `${other.kindName}, ${verbOf(other.startsAs)} ${dayNear(dayOf(other.sow), near)} (${size})`;
}

function worthPart(reasons: SowingReasons): Part {
  const { missingWithout, leanWithout, refill, sowing } = reasons;
  const near = dayOf(sowing.sow);
  if (missingWithout < little)
    return [
      'worth',
      `Little: in the weather tried you would not miss it.${sowing.state === 'draft' ? ' If you want one job less, leave this one out.' : ''}`,
    ];
  const lean = Math.round(leanWithout);
  const weeks = lean >= 1 ? `, ${countOf(lean, 'lean week')} more` : '';
  const without = `Without it ${roundServings(missingWithout)} would be missing${weeks}.`;
  if (refill === null)
    return ['worth', `${without} Nothing else is waiting for its ground: there is room beside it.`];
  const kinds = listText([...new Set(refill.sowings.map((s) => s.kindName))].slice(0, 3));
  const first = refill.sowings[0]!;
  const named = refill.sowings.length === 1 ? otherText(first, near) : kinds;
  const filled =
    refill.asGood || refill.missing < little
      ? `Fill its ground with other things (${named}) and you would eat as well, only differently.`
      : refill.missing < missingWithout - little
        ? `Fill its ground with other things (${named}) and ${roundText(refill.missing)} would still be missing.`
        : `Other things in its ground (${named}) would not make up for it.`;
  return ['worth', `${without} ${filled}`];
}

const laterText = (weeks: number): string =>
  ({ 1: 'a week later', 2: 'two weeks', 3: 'three weeks' })[weeks] ?? countOf(weeks, 'week');

const stockWord = (startsAs: string): string =>
  ({ set: 'sets', clove: 'cloves', tuber: 'tubers' })[startsAs] ?? 'plants';

function waitPart(reasons: SowingReasons): Part | null {
  const { delays, lastSafe, after, sowing } = reasons;
  if (lastSafe === null) return null;
  const near = dayOf(sowing.sow);
  const size = (change: number): string =>
    change >= little ? `${roundServings(change)} missing` : 'no harm';
  if (delays.length === 0 && lastSafe.afterwards === 'not-sold')
    return ['if late', `It cannot wait: a week later there are no ${stockWord(sowing.startsAs)} to be had.`];
  const week = delays[0];
  if (reasons.missingWithout < little && week !== undefined)
    return [
      'if late',
      week.servingsChange <= -little
        ? `A week later ${roundServings(-week.servingsChange)} fewer come of it; nobody would miss them.`
        : 'No harm.',
    ];
  const texts = delays.map((d) => size(d.missingChange));
  const same = texts.every((text) => text === texts[0]);
  const steps = same
    ? `A week, two or three later: ${texts[0]}.`
    : `${capital(delays.map((d, i) => `${laterText(d.weeks)}: ${texts[i]}`).join('; '))}.`;
  const next = after[0];
  const why = {
    'gives-little': 'after that it does less than half of what it is there for',
    'not-ready':
      next === undefined
        ? 'after that it is not ready in most years'
        : `after that it is not ready in most years before ${next.kindName} (${next.number}) wants the ground`,
    'not-sold': `after that there are no ${stockWord(sowing.startsAs)} to be had`,
  };
  const safe =
    lastSafe.afterwards === null
      ? `It can wait: still safe ${dayNear(dayOf(lastSafe.day), near)} and perhaps later.`
      : lastSafe.weeks === 0
        ? `Do not put it off: ${why[lastSafe.afterwards].replace('after that', 'a week later')}.`
        : `Last safe day ${dayNear(dayOf(lastSafe.day), near)}; ${why[lastSafe.afterwards]}.`;
  return ['if late', `${steps} ${safe}`];
}

function insteadPart(reasons: SowingReasons): Part | null {
  const { runnerUp, roleNames, sowing, refill } = reasons;
  if (runnerUp === null) {
    if (refill === null) return null;
    return ['instead', 'No other kind would do as well there at that time.'];
  }
  const near = dayOf(sowing.sow);
  const gives = eatsText(runnerUp.eats, new Set(runnerUp.eats.map((e) => e.role)), roleNames, near);
  const given = gives === '' ? 'which would give nothing that is missing' : `which would give ${gives}`;
  const sum =
    runnerUp.missing >= little && !runnerUp.asGood
      ? `in sum ${roundText(runnerUp.missing)} more would be missing than now`
      : 'in sum about as good: take which you like better';
  return ['instead', `Next best there: ${otherText(runnerUp.sowing, near)}, ${given}; ${sum}.`];
}

const named = (n: Neighbour): string => `${n.kindName} (${n.number})`;

function groundPart(reasons: SowingReasons): Part {
  const { before, after, sowing } = reasons;
  const near = dayOf(sowing.sow);
  const first =
    before.length === 0
      ? 'Nothing before it in these weeks'
      : `Follows ${listText(before.map((b) => `${named(b)}, out by ${dayNear(dayOf(b.day), near)}`))}`;
  const next =
    after.length === 0
      ? 'nothing waits behind it'
      : `then ${listText(after.map((a) => `${named(a)} from ${dayNear(dayOf(a.day), near)}`))}`;
  const rest = sowing.rests?.[0];
  const again =
    rest === undefined
      ? ''
      : ` Its family was there ${rest.afterYears === 1 ? 'the year' : `${rest.afterYears} years`} before and should rest ${countOf(rest.restYears, 'year')}${rest.onRecord ? `: ${plainCode(rest.disease ?? 'its disease')} is on record` : ''}.`;
  return ['its ground', `${first}; ${next}.${again}`];
}

const endsAllShare = 0.95;
/** What stands already is past these. */
const onlyYoung = new Set(['emergence', 'old-seed', 'hot-seedbed', 'slugs-young', 'pots-check', 'leggy']);

function riskText(code: string, share: number): string {
  if (code === 'frost' && share >= endsAllShare) return 'the first hard frost ends it';
  if (code === 'frost') return `in the hardest winters frost takes ${percentText(share)}: fleece at hand`;
  if (code === 'bolting')
    return `${share >= endsAllShare ? 'nearly all' : oftenText(share)} run to seed: eat those first`;
  return `${riskWord(code)}${share >= 0.02 ? ` (may cost ${percentText(share)})` : ''}`;
}

function mindPart({ sowing }: SowingReasons): Part | null {
  const risks = sowing.risks.filter((r) => sowing.state !== 'done' || !onlyYoung.has(r.code));
  if (risks.length === 0) return null;
  return ['mind', `${capital(risks.map((r) => riskText(r.code, r.share)).join('; '))}.`];
}

/** Heading and parts of the answer about one sowing. */
export function sowingParts(reasons: SowingReasons): {
  readonly title: string;
  readonly parts: readonly Part[];
} {
  const { sowing, likeIt } = reasons;
  const parts = [
    whatPart(reasons),
    feedsPart(reasons),
    worthPart(reasons),
    waitPart(reasons),
    insteadPart(reasons),
    groundPart(reasons),
    mindPart(reasons),
  ];
  const more =
    likeIt.length === 0
      ? ''
      : likeIt.length > mostNumbers
        ? `, one of ${likeIt.length + 1} sowings of its kind`
        : `; its kind again: ${likeIt.join(', ')}`;
  return {
    title: `${capital(sowing.kindName)} (${sowing.number})${more}`,
    parts: parts.filter((part) => part !== null),
  };
}
