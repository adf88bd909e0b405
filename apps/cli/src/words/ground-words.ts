import type { HandoverLine, PlanReport, ReportRest } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { kitWord, plainCode } from './garden-words.ts';
import { amountText, countOf, listText } from './number-words.ts';

/** What is said of the ground itself: rests, handovers, feeding, kit, what found no bed. */

const families: Readonly<Record<string, string>> = {
  Brassicaceae: 'brassicas',
  Alliaceae: 'onion family',
  Fabaceae: 'legumes',
  Solanaceae: 'potato family',
  Apiaceae: 'carrot family',
  Amaranthaceae: 'beet family',
  Cucurbitaceae: 'squash family',
  Asteraceae: 'lettuce family',
  Poaceae: 'grasses',
};

export function restWords({ family, disease, onRecord, afterYears, m2 }: ReportRest): string {
  const again = `${families[family] ?? family} again after ${countOf(afterYears, 'year')} on ${amountText(m2)}\u00a0m²`;
  if (disease === null) return again;
  const name = plainCode(disease);
  return `${again}; ${onRecord ? `${name} is on record there` : `no ${name} on record`}`;
}

export function handoverWords(line: HandoverLine): string {
  const passes = line.passes.map(
    ({ monday, m2, toNumber }) => `${dateWords.day(monday)} ${amountText(m2)}\u00a0m² (${toNumber})`,
  );
  const steps = line.passes.length > 1 ? `in ${countOf(line.passes.length, 'pass', 'passes')}: ` : '';
  return `${line.fromKindName} (${line.fromNumber}), ${line.placeName}, to ${line.toKindName}: ${steps}${listText(passes)}`;
}

/** Lines under the plan: what was left out for want of a bed, canes to get, compost in all. */
export function planGroundTexts(report: PlanReport): readonly string[] {
  const lost = (report.notPlaced ?? []).map(({ kindName, sow, wantedM2, placedM2 }) => {
    const what = `${kindName}, to be begun on ${dateWords.dayInFull(dayOf(sow))}`;
    return placedM2 > 0
      ? `${what}: the beds have room for ${amountText(placedM2)} of ${amountText(wantedM2)} m².`
      : `${what}: no bed has ${amountText(wantedM2)} m² free for it, so it is left out.`;
  });
  const barrows = (report.feeding ?? []).reduce((sum, { barrows: own }) => sum + own, 0);
  const compost =
    barrows < 1 ? [] : [`Compost for the beds: about ${countOf(Math.round(barrows), 'barrow')} in all.`];
  const short = (report.kitLedger ?? []).flatMap(({ kit, owned, most }) =>
    kit === 'canes' && most > owned
      ? [
          `${Math.ceil(most)} ${kitWord(kit)} are out at most, and you have ${owned}: get ${Math.ceil(most - owned)} more.`,
        ]
      : [],
  );
  const bare = report.sowings.filter(({ withoutKit }) => (withoutKit ?? []).length > 0);
  const kits = [...new Set(bare.flatMap(({ withoutKit }) => withoutKit ?? []))].map((kit) => kitWord(kit));
  const without =
    bare.length === 0
      ? []
      : [
          `There is not enough ${listText(kits)} for ${countOf(bare.length, 'sowing')}: they are forecast without.`,
        ];
  return [...lost, ...compost, ...short, ...without];
}
