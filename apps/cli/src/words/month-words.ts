import type { Caution, MonthSheet, MonthWords, SheetHead } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { areaWord } from './garden-words.ts';
import { handoverWords } from './ground-words.ts';
import * as line from './line-words.ts';
import { capital } from './number-words.ts';
import { materialsText, workText } from './work-words.ts';

export const cautionWords: Readonly<Record<Caution, string>> = {
  'green-potatoes': 'Green potatoes are not food.',
  'raw-beans': 'Runner and French beans, pods and seeds, must be boiled before they are eaten.',
  'dried-beans':
    'Dried beans: soak for five hours or more, throw that water away and boil hard in fresh water for half an hour. A slow cooker alone does not make them safe.',
  favism: 'Broad and field beans and their tops are dangerous for people with favism (G6PD deficiency).',
  'rhubarb-leaves': 'Rhubarb leaves are poisonous: only the stalks are eaten.',
  'bitter-squash': 'A squash or courgette that tastes bitter is spat out and thrown away.',
  'plant-sap':
    'Leaves of parsnip, celery and their like blister the skin in sun: cover your arms to work among them.',
  'oxalate-leaves':
    'Spinach, chard and leaf beet hold much oxalate: take turns with cabbage greens, and eat little of them if you have had kidney stones.',
  'nitrate-leaves': 'Leaves grown in winter hold much nitrate: not for infants.',
  'compost-dust': 'Damp the compost before you handle it and do not breathe its dust.',
  'spray-label': 'Follow the label and the local rules for anything you spray.',
};

function seasonNote(head: SheetHead): string {
  const standstill = head.standstill.find((s) => s.to >= head.printedDay);
  const parts = [
    ...(head.frostFrom === null
      ? []
      : [`First frost: not before ${dateWords.day(head.frostFrom)} in nine years of ten.`]),
    ...(standstill === undefined
      ? []
      : [
          `Next to nothing grows between ${dateWords.day(standstill.from)} and ${dateWords.day(standstill.to)}.`,
        ]),
  ];
  return parts.join(' ');
}

function workLines(sheet: MonthSheet): string[] {
  const work = sheet.work === null ? '' : workText(sheet.work);
  const materials = sheet.materials === null ? '' : materialsText(sheet.materials);
  const text = `${work} ${materials}`.trim();
  return text === '' ? [] : [text];
}

export const monthWords: MonthWords = {
  title: (sheet) => dateWords.month(sheet.month),
  intro: (sheet, medium) => [
    `${medium === 'page' ? 'Firm lines are bold, drafts dotted.' : 'Firm [ ], draft [·], waiting from before [!].'} Three numbers: sow / plant / expect to keep. Dates are ranges that hold in most years (eight of ten); where a kind's figures come from: twelvemonth kinds. ${seasonNote(sheet.head)}`.trim(),
    ...workLines(sheet),
  ],
  areaHeading: (area) => capital(areaWord(area)),
  lateHeading: 'Still waiting from before',
  jobsHeading: 'Other jobs',
  handoversHeading: 'Ground that changes hands',
  handover: handoverWords,
  ordersHeading: 'To order',
  nothing: 'Nothing to sow or plant.',
  columns: {
    number: 'No.',
    what: 'What',
    amount: 'Sow / plant / keep',
    how: 'How',
    where: 'Where, then where',
    eaten: 'Eaten, most years',
    lastSafe: 'Last safe day',
    mind: 'Mind',
    did: 'What I did',
  },
  labels: { eaten: 'eaten:', lastSafe: 'last safe day:', mind: 'mind:' },
  what: (l) => (l.act === 'plant-out' ? `${l.kindName}, plants` : l.kindName),
  amount: line.amountWords,
  how: line.howWords,
  where: line.whereWords,
  eaten: line.eatenWords,
  lastSafe: line.lastSafeWords,
  mind: line.mindWords,
  job: line.jobWords,
  jobs: line.jobsWords,
  order: line.orderWords,
  caution: (caution) => cautionWords[caution],
  eventTitle: line.eventTitle,
  eventText: line.eventText,
  jobTitle: line.jobTitle,
  orderTitle: (order) => `Order ${order.kindName}`,
};
