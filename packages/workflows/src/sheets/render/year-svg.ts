import { civilFromDay, type Day } from '@twelvemonth/basis';
import { mondayBefore } from '../sheet-days.ts';
import type { SheetWords } from '../words.ts';
import type { LaneWeek, RoleLane, YearPicture } from '../year-picture.ts';
import { escapeMarkup as e } from './escape.ts';
import { yearSvgStyle } from './year-svg-style.ts';

/**
 * The year as lanes: eaten = line, sureness = tint, from stock = hatching, appetite = dots, bought = grey, lean weeks =
 * ticks under the base line. Colour is never the only signal: every lane carries its name.
 */

const width = 1120;
const left = 244;
const right = 74;
const laneNameLength = 26;
const laneHeight = 62;
const laneGap = 26;
const top = 112;
/** Paul Tol's openly published 'muted' scheme, in a fixed order by role. */
const colourByRole: Readonly<Record<string, string>> = {
  'cooked-greens': '#117733',
  'salad-leaves': '#44AA99',
  onions: '#AA4499',
  garlic: '#882255',
  leeks: '#882255',
  broccoli: '#332288',
  cabbages: '#117733',
  'sweet-roots': '#CC6677',
  potatoes: '#999933',
  'beans-peas': '#88CCEE',
  'summer-fruits': '#999933',
  herbs: '#44AA99',
  stalks: '#DDCC77',
};
const two = (value: number): string => String(Math.round(value * 100) / 100);

/** Long names take two lines. */
function nameLines(name: string): readonly string[] {
  const cut = name.length > laneNameLength ? name.lastIndexOf(' ', laneNameLength) : -1;
  return cut < 0 ? [name] : [name.slice(0, cut), name.slice(cut + 1)];
}

interface Frame {
  readonly x: (day: Day) => number;
  readonly base: number;
  readonly y: (servings: number) => number;
}

function steps(weeks: readonly LaneWeek[], frame: Frame, pick: (w: LaneWeek) => number): string {
  return weeks
    .map((w, i) => {
      const y = two(frame.y(pick(w)));
      return `${i === 0 ? 'M' : 'L'}${two(frame.x(w.monday))} ${y}L${two(frame.x(w.monday + 7))} ${y}`;
    })
    .join('');
}

function line(weeks: readonly LaneWeek[], frame: Frame, pick: (w: LaneWeek) => number): string {
  return weeks
    .map((w, i) => `${i === 0 ? 'M' : 'L'}${two(frame.x(w.monday + 3.5))} ${two(frame.y(pick(w)))}`)
    .join('');
}

function area(
  weeks: readonly LaneWeek[],
  frame: Frame,
  low: (w: LaneWeek) => number,
  high: (w: LaneWeek) => number,
): string {
  const back = [...weeks]
    .reverse()
    .map((w) => `L${two(frame.x(w.monday + 3.5))} ${two(frame.y(low(w)))}`)
    .join('');
  return `${line(weeks, frame, high)}${back}Z`;
}

function laneSvg(lane: RoleLane, index: number, x: Frame['x'], words: SheetWords): string {
  const base = top + index * (laneHeight + laneGap) + laneHeight;
  const most = Math.max(
    0.5,
    ...lane.weeks.map((w) => Math.max(w.appetite, Math.min(w.eaten.p90, w.appetite * 1.6))),
  );
  const frame: Frame = {
    x,
    base,
    y: (servings) => base - laneHeight * Math.min(1, Math.max(0, servings) / most),
  };
  const colour = colourByRole[lane.role] ?? '#5c6670';
  const hatch = `hatch-${index}`;
  const peak = Math.max(...lane.weeks.map((w) => w.wanted));
  const labels = [
    ...nameLines(words.year.laneName(lane)).map((text) => ({ style: 'lane', text })),
    { style: 'lane-note', text: words.year.laneNote(lane) },
    { style: 'lane-note', text: words.year.laneEaten(lane) },
  ];
  const weeks = lane.weeks;
  const lean = weeks
    .filter((w) => w.lean)
    .flatMap((w) => [1.4, 3.5, 5.6].map((d) => `M${two(x(w.monday + d))} ${base + 3}v6`))
    .join('');
  const bought = weeks.some((w) => w.bought > 0.05)
    ? `<path class="bought" d="${area(
        weeks,
        frame,
        (w) => w.wanted,
        (w) => w.appetite,
      )}"/>`
    : '';
  return [
    `<g role="img" aria-label="${e(`${words.year.laneName(lane)}: ${words.year.laneNote(lane)}`)}">`,
    `<pattern id="${hatch}" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke="${colour}" stroke-width="1.6"/></pattern>`,
    bought,
    `<path d="${area(
      weeks,
      frame,
      () => 0,
      (w) => Math.min(w.fromStock, w.eaten.p50),
    )}" fill="url(#${hatch})" opacity=".55"/>`,
    `<path d="${area(
      weeks,
      frame,
      (w) => w.eaten.p10,
      (w) => w.eaten.p90,
    )}" fill="${colour}" opacity=".24"/>`,
    `<path class="eaten" d="${line(weeks, frame, (w) => w.eaten.p50)}" stroke="${colour}"/>`,
    `<path class="appetite" d="${steps(weeks, frame, (w) => w.wanted)}"/>`,
    `<path class="base" d="M${left} ${base}H${width - right}"/>`,
    lean === '' ? '' : `<path class="lean" d="${lean}"/>`,
    ...labels.map(
      ({ style, text }, i) =>
        `<text class="${style}" x="${left - 14}" y="${base - laneHeight + 18 + 15.5 * i}">${e(text)}</text>`,
    ),
    `<path class="base" d="M${width - right} ${two(frame.y(peak))}h5"/>`,
    `<text class="scale" x="${width - right + 9}" y="${two(frame.y(peak) + 4)}">${e(words.year.perWeek(peak))}</text>`,
    '</g>',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

/** First of each month that lies in the picture; every second or third label is left out where they would touch. */
function axisSvg(picture: YearPicture, x: Frame['x'], bottom: number, words: SheetWords): string {
  const firsts: Day[] = [];
  for (let day = picture.from; day <= picture.to; day++)
    if (civilFromDay(day).dayOfMonth === 1) firsts.push(day);
  const monthWidth = firsts.length > 1 ? x(firsts[1]!) - x(firsts[0]!) : width;
  const every = Math.max(1, Math.ceil(36 / monthWidth));
  const parts = firsts.map((day, i) => {
    const { year, month } = civilFromDay(day);
    const at = two(x(day));
    const label = month === 1 ? String(year) : words.dates.monthShort(month);
    const shown = month === 1 || (month - 1) % every === 0;
    const fits = x(day) + 30 < width - right || i < firsts.length - 1;
    const text =
      shown && fits ? `<text class="month" x="${two(x(day) + 4)}" y="${top - 12}">${e(label)}</text>` : '';
    return `<path class="grid" d="M${at} ${top - 6}V${bottom}"/>${text}`;
  });
  return parts.join('\n');
}

function legendSvg(y: number, words: SheetWords): string {
  const l = words.year.legend;
  const entries: [string, string][] = [
    ['<path class="eaten" stroke="#22303c" d="M0 6H24"/>', l.eaten],
    ['<path d="M0 0H24V12H0Z" fill="#22303c" opacity=".24"/>', l.sure],
    ['<path d="M0 0H24V12H0Z" fill="url(#hatch-legend)"/>', l.stock],
    ['<path class="appetite" d="M0 6H24"/>', l.appetite],
    ['<path class="lean" d="M2 3v6M8 3v6M14 3v6M20 3v6"/>', l.lean],
    ['<path class="bought" d="M0 0H24V12H0Z"/>', l.bought],
    ['<path class="standstill" d="M0 0H24V12H0Z"/>', l.standstill],
  ];
  const perRow = 4;
  const cell = (width - 48) / perRow;
  return entries
    .map(
      ([sign, text], i) =>
        `<g transform="translate(${two(24 + (i % perRow) * cell)} ${y + Math.floor(i / perRow) * 20})">${sign}<text class="key" x="32" y="10">${e(text)}</text></g>`,
    )
    .join('\n');
}

export function renderYearSvg(picture: YearPicture, words: SheetWords): string {
  const days = Math.max(1, picture.to - mondayBefore(picture.from) + 1);
  const start = mondayBefore(picture.from);
  const x = (day: Day): number => left + ((width - left - right) * (day - start)) / days;
  const bottom = top + picture.lanes.length * (laneHeight + laneGap) - 8;
  const height = bottom + 74;
  const within = (day: Day): Day => Math.min(Math.max(day, picture.from), picture.to + 1);
  const standstill = picture.head.standstill
    .map((s) => ({ from: within(s.from), to: within(s.to + 1), ...{ said: s } }))
    .filter((s) => s.to > s.from)
    .map((s) => {
      const room = x(s.to) - x(s.from);
      const text = words.year.standstill(s.said.from, s.said.to);
      const label =
        room > text.length * 6
          ? `<text class="note" x="${two(x(s.from) + 4)}" y="${bottom + 14}">${e(text)}</text>`
          : '';
      return `<path class="standstill" d="M${two(x(s.from))} ${top - 6}H${two(x(s.to))}V${bottom}H${two(x(s.from))}Z"/>${label}`;
    });
  const today = x(picture.head.planDay);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="year-title year-desc" lang="${e(words.language)}">
<title id="year-title">${e(words.year.title(picture))}</title>
<desc id="year-desc">${e(words.year.describe(picture))}</desc>
<style>${yearSvgStyle}</style>
<pattern id="hatch-legend" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke="#22303c" stroke-width="1.6"/></pattern>
<path fill="#faf6ec" d="M0 0H${width}V${height}H0Z"/>
<text class="title" x="24" y="44">${e(words.year.title(picture))}</text>
<text class="note" x="24" y="66">${e(words.aside(picture.head))}</text>
${standstill.join('\n')}
${axisSvg(picture, x, bottom, words)}
${picture.lanes.map((lane, i) => laneSvg(lane, i, x, words)).join('\n')}
<path class="today" d="M${two(today)} ${top - 6}V${bottom}"/>
<text class="today-note" x="${two(today)}" y="${bottom + 14}" text-anchor="end" dx="-6">${e(words.year.today(picture.head.planDay))}</text>
${legendSvg(bottom + 28, words)}
</svg>
`;
}
