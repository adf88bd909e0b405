import type { ReportSowing, Slot, SlotsReport } from '@twelvemonth/workflows';
import { dayOf, placeNamesOf } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { eatsText, otherText, type Part, roundServings } from './explain-words.ts';
import { dayReasonWord } from './garden-words.ts';
import { amountText, capital, countOf, listText, oftenText, percentText } from './number-words.ts';

/** Where and when one more sowing of a kind would fit, best first. */

const little = 0.5;

const failsOften = 0.1;

function whenText({ sow, startsAs, plantOut, route }: ReportSowing): string {
  const day = dayOf(sow);
  const begun = `${startsAs === 'seed' ? 'sow' : 'plant'} ${dateWords.dayInFull(day)}`;
  const raised = route.slice(0, -1).map((s) => s.placeName);
  if (plantOut === null || raised.length === 0) return begun;
  const out = plantOut.p50 === null ? '' : `, plant out about ${dayNear(dayOf(plantOut.p50), day)}`;
  return `${begun} on ${listText([...new Set(raised)], 'then')}${out}`;
}

function sizeText({ count, startsAs, groundM2 }: ReportSowing): string {
  if (startsAs !== 'seed') return `${count.plant} to plant, ${amountText(groundM2)} m²`;
  return `${count.sow} / ${count.plant} / ${count.keep} to sow, plant, keep; ${amountText(groundM2)} m²`;
}

function firstText(sowing: ReportSowing): string {
  const near = dayOf(sowing.sow);
  const first = sowing.harvests.find((h) => h.first.p50 !== null);
  if (first === undefined) {
    const reason = sowing.harvests[0]?.first.reason ?? null;
    return reason === null ? 'not in most years' : dayReasonWord(reason);
  }
  const { p10, p50, p90 } = first.first;
  const last = first.last.p50 === null ? '' : `, to about ${dayNear(dayOf(first.last.p50), near)}`;
  return p10 !== null && p90 !== null
    ? `from ${dateWords.roughly(dayOf(p10), dayOf(p90))}${last}`
    : `from about ${dayNear(dayOf(p50!), near)}, not every year${last}`;
}

function againstText({ sowing, neverShare }: Slot): string {
  const against: string[] = [];
  if (neverShare >= failsOften) against.push(`nothing comes of it in ${oftenText(neverShare)} years`);
  const bolting = sowing.risks.find((r) => r.code === 'bolting');
  if (bolting !== undefined) against.push(`${percentText(bolting.share)} run to seed`);
  const { frosted } = sowing.shares;
  if (frosted.p90 >= 0.1) against.push(`a hard winter takes ${percentText(frosted.p90)}`);
  return against.length === 0 ? '' : ` Against it: ${listText(against)}.`;
}

function slotText(slot: Slot, report: SlotsReport): string {
  const { sowing } = slot;
  const near = dayOf(sowing.sow);
  const own = new Set(sowing.harvests.map((h) => h.role as string));
  const fills =
    slot.missingFilled < little || slot.fills.length === 0
      ? `Gives ${roundServings(slot.servings)}, none of them missing.`
      : `Fills ${eatsText(slot.fills, own, report.roleNames, near)}${slot.leanFilled >= little ? ` (${countOf(Math.max(1, Math.round(slot.leanFilled)), 'lean week')} fewer)` : ''}.`;
  return `${capital(placeNamesOf(sowing))}: ${whenText(sowing)} (${sizeText(sowing)}). To eat ${firstText(sowing)}. ${fills}${againstText(slot)}`;
}

function noneText(report: SlotsReport): string {
  const why = {
    'nothing-free': 'There is no free ground or bench for it in any week that would do.',
    'no-such-place':
      'It grows in nothing that this garden has: look at its "grows in" with twelvemonth kinds.',
    banned: 'Everywhere that it could grow, a disease on record forbids its family.',
    'never-ready': 'Begun from now on, it is not ready anywhere in time.',
  };
  return report.none === null ? '' : why[report.none];
}

function insteadText(report: SlotsReport): string {
  const { instead } = report;
  if (instead === null) return 'Nothing in the plan could make way for it.';
  const { sowing, replaces, missingChange } = instead;
  const sum =
    missingChange >= little
      ? `in sum ${roundServings(missingChange)} more would be missing`
      : missingChange <= -little
        ? `in sum ${roundServings(-missingChange)} fewer would be missing`
        : 'in sum nothing would be lost';
  return `It would have to replace ${replaces.kindName} (${replaces.number}): ${otherText(sowing, dayOf(report.from))} in ${sowing.placeName}; ${sum}.`;
}

export function slotsParts(report: SlotsReport): { readonly title: string; readonly parts: readonly Part[] } {
  const { slots, inPlan, beside, unwanted, mostPlants } = report;
  const has =
    inPlan.filter((n) => n > 0).length === 0
      ? ''
      : `; the plan has ${countOf(inPlan.length, 'sowing')} of it already`;
  const parts: Part[] = slots.map((slot, i) => [String(i + 1), slotText(slot, report)]);
  if (report.fewer)
    parts.push(['but', 'So many as you asked for fit nowhere at once; these are as many as are well used.']);
  if (slots.length === 0) parts.push(['none', noneText(report)]);
  if (report.none === 'nothing-free') parts.push(['instead', insteadText(report)]);
  if (slots.length > 0 && slots.every((slot) => slot.missingFilled < little))
    parts.push(['but', 'What it feeds is not missing in these weeks: all of it would be more than you eat.']);
  if (beside === 'what-stands')
    parts.push(['note', 'There is no plan beside the file: only what stands was reckoned with.']);
  if (unwanted) parts.push(['note', 'Your own wishes or dislikes leave this kind out of the plan.']);
  if (mostPlants !== null) parts.push(['note', `You wished for at most ${mostPlants} of it.`]);
  return { title: `Room for ${report.kindName}${has}`, parts };
}
