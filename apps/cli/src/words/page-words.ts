import { civilFromDay } from '@twelvemonth/basis';
import type { DarkWords, FridgeWords, SeedWords, YearWords } from '@twelvemonth/workflows';
import { dateWords, dayNear } from './date-words.ts';
import { makeOrBreakWords } from './decision-words.ts';
import { areaWord, habitWord, startWord, storeWord } from './garden-words.ts';
import { handoverWords } from './ground-words.ts';
import { changeWords, jobWords } from './line-words.ts';
import { amountText, capital, countOf, listText, percentText, servingsText } from './number-words.ts';
import { materialsByText } from './work-words.ts';

export const darkWords: DarkWords = {
  title: (page) =>
    `The dark months, ${dateWords.month(civilFromDay(page.from))} to ${dateWords.month(civilFromDay(page.to))}`,
  intro: (page) => [
    `Counted back from the plate: what must come out by when, and what must be sown by when, so that there is something to eat in winter and in the hungry gap of spring. What gives fewer than ${amountText(page.leastServings)} servings in these months is left out.`,
  ],
  columns: {
    number: 'No.',
    what: 'What goes in',
    count: 'Count',
    where: 'Where',
    comesOut: 'What comes out, by when',
    sownBy: 'Sown by, planted by',
    feeds: 'Feeds',
    fortnight: 'A fortnight late',
    did: 'What I did',
  },
  labels: { comesOut: 'out first:', sownBy: '', feeds: 'feeds:', fortnight: 'a fortnight late:' },
  what: (line) => line.kindName,
  count: (line) => String(line.keepCount),
  comesOut: (line) =>
    line.comesOut.map((c) => `${c.kindName} (${c.number}) by ${dayNear(c.by, line.sow)}`).join('; '),
  sownBy(line) {
    const verb = line.startsAs === 'seed' ? 'sown' : 'planted';
    const out = line.plantOut === null ? '' : `, planted out about ${dayNear(line.plantOut, line.sow)}`;
    const by = line.lastSafeDay === null ? '' : `, at the latest ${dayNear(line.lastSafeDay, line.sow)}`;
    const look = line.decision === null ? '' : `; ${makeOrBreakWords(line.decision, line.sow)}`;
    return `${verb} ${dateWords.day(line.sow)}${by}${out}${look}`;
  },
  feeds: (line, page) =>
    line.feeds
      .map((f) => {
        const role = page.roleNames[f.role] ?? f.role;
        return `${role} ${dateWords.roughly(f.from, f.to)}, ${servingsText(f.servings)}`;
      })
      .join('; '),
  fortnight: (line) =>
    line.state === 'done' || line.fortnightLateServings === null
      ? ''
      : changeWords(line.fortnightLateServings).replace(' ', '\u00a0'),
  standingHeading: 'Stands already and feeds',
  standing: (line, page) =>
    `${line.kindName} (${line.number}), ${line.placeName}: ${darkWords.feeds(line, page)}${
      line.decision === null ? '' : `; ${makeOrBreakWords(line.decision, page.head.planDay)}`
    }`,
  handoversHeading: 'How the ground changes hands',
  handover: handoverWords,
  totalsHeading: 'What that comes to',
  total: (t) =>
    `${capital(t.roleName)}: ${amountText(t.eaten)} of ${amountText(t.appetite)} servings wanted${
      t.fromStock >= 0.5 ? `, ${amountText(t.fromStock)} of them from the store` : ''
    }`,
  leanHeading: 'Where it stays lean',
  lean: (l) =>
    `${capital(l.roleName)}, ${dateWords.roughly(l.from, l.to)}: ${servingsText(l.servings)} missing`,
};

export const fridgeWords: FridgeWords = {
  title: (page) => `This week, ${dateWords.days(page.monday, page.monday + 6)}`,
  intro: () => [],
  eatFirstHeading: 'Eat first: about to go over',
  readyHeading: 'Ready as well',
  putByHeading: 'More than we shall eat: put by or give away',
  leftHeading: 'What is left, and until when',
  nothing: 'Nothing.',
  eatFirst: (i) =>
    `${i.kindName}, ${i.placeName}${i.endsMiddle === null ? '' : `: until about ${dateWords.day(i.endsMiddle)}`}`,
  ready: (i) => `${i.kindName}, ${i.placeName}: ${habitWord(i.habit)}`,
  putBy: (p) => `${capital(p.roleName)}: about ${servingsText(p.servings)}`,
  leftColumns: { what: 'What', where: 'Where', amount: 'How much', until: 'Until' },
  leftWhere: storeWord,
  leftAmount: (servings, kg) =>
    kg === null ? servingsText(servings) : `${amountText(kg)} kg, ${servingsText(servings)}`,
  leftUntil: (from, to) =>
    to === null ? '' : from === null || to - from < 2 ? dateWords.day(to) : dateWords.roughly(from, to),
  neighbourTitle: (page) => `For whoever waters, ${dateWords.days(page.monday, page.monday + 6)}`,
  neighbourIntro: () => [
    'Thank you. Water in the morning, at the foot of the plants. Trays and pots every day in warm weather; beds twice a week if it does not rain. Air what is under cover when the sun is on it, and close it for the night.',
  ],
  waterHeading: 'To water, the thirstiest first',
  water: (l) =>
    `${capital(l.placeName)} (${areaWord(l.area)}): ${listText(l.kindNames)}${l.thirsty ? '; dries out fast' : ''}`,
  helpYourselfHeading: 'Help yourself',
  helpYourself: (i) => `${i.kindName}, ${i.placeName}: ${habitWord(i.habit)}`,
  nightsHeading: 'Cold nights',
  night: jobWords,
};

export const yearWords: YearWords = {
  title: (p) =>
    `What there will be to eat, ${dateWords.month(civilFromDay(p.from))} to ${dateWords.month(civilFromDay(p.to))}`,
  describe: (p) =>
    `${countOf(p.lanes.length, 'kitchen role')}, week by week. ${p.lanes
      .map((lane) => `${capital(lane.name)}: ${yearWords.laneNote(lane)}, ${yearWords.laneEaten(lane)}.`)
      .join(' ')}`,
  legend: {
    text: [
      'One sign a week, the higher the more of what is wanted is eaten (full block: all).',
      'Under it: ! lean week · s mostly from the store · + more than wanted · dot: not wanted · ~ standstill',
    ],
    eaten: 'eaten, middle of the forecast',
    sure: 'how sure: eight years of ten',
    stock: 'from the store',
    appetite: 'what you would eat',
    lean: 'lean week',
    bought: 'bought on purpose',
    standstill: 'standstill',
  },
  laneName: (lane) => capital(lane.name),
  laneNote(lane) {
    const weeks = Math.round(lane.leanWeeks);
    if (weeks === 0) return 'no lean week';
    return `${countOf(weeks, 'lean week')}, ${servingsText(lane.servingsMissing)} short`;
  },
  laneEaten: (lane) => `${amountText(lane.eaten)} of ${amountText(lane.wanted)} servings`,
  perWeek: (servings) => `${amountText(servings)} a week`,
  today: (day) => `today, ${dateWords.day(day)}`,
  standstill: (from, to) => `${dateWords.day(from)} – ${dateWords.day(to)}`,
  columns: {
    week: 'Week of',
    appetite: 'Wanted',
    bought: 'Bought',
    eaten: 'Eaten',
    fromStock: 'From store',
    stockLeft: 'Store left',
    chanceLean: 'Lean',
  },
  band: (b) => `${amountText(b.p50)} (${amountText(b.p10)}–${amountText(b.p90)})`,
  percent: percentText,
};

export const seedWords: SeedWords = {
  title: () => 'Seeds, sets and tubers',
  intro: () => ['Whole packets. Order by the day given, so that they are there when they are wanted.'],
  columns: {
    what: 'What',
    need: 'Needed',
    inTin: 'In the tin',
    buy: 'To buy',
    orderBy: 'Order by',
    firstUse: 'First used',
  },
  materialsHeading: 'Compost by month, trays and pots at once',
  material: materialsByText,
  need: (line) => `${Math.ceil(line.needCount)} ${startWord(line.startsAs, Math.ceil(line.needCount))}`,
  buy: (line) =>
    line.isOwn
      ? 'own, kept back'
      : line.packets === 0
        ? 'nothing'
        : line.startsAs === 'seed'
          ? `${countOf(line.packets, 'packet')} of ${line.packetCount}`
          : `${countOf(line.packets, 'bag')} of ${line.packetCount}`,
  nothing: 'The plan needs no seed.',
};
