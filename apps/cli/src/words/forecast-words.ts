import type { Band } from '@twelvemonth/basis';
import type { ClimateReport, DayBand, ForecastReport } from '@twelvemonth/workflows';
import { dayOf } from '@twelvemonth/workflows';
import { dateWords } from './date-words.ts';
import { dayReasonWord, plainCode, stageWord } from './garden-words.ts';
import { amountText, percentText } from './number-words.ts';

export function dayBandText(band: DayBand): string {
  if (band.p50 === null) return band.reason === null ? 'not in most years' : dayReasonWord(band.reason);
  const middle = dayOf(band.p50);
  const seldom = band.reason === null ? '' : ` (${plainCode(band.reason)})`;
  if (band.p90 === null && band.p10 !== null)
    return `from ${dateWords.day(dayOf(band.p10))}, middle ${dateWords.dayInFull(middle)}; not in every year${seldom}`;
  if (band.p10 === null || band.p90 === null)
    return `about ${dateWords.dayInFull(middle)}; not in every year${seldom}`;
  return `${dateWords.days(dayOf(band.p10), dayOf(band.p90))}, middle ${dateWords.dayInFull(middle)}`;
}

const nitrogenRows = (left: ForecastReport['nitrogenLeft']): [string, string][] =>
  left === null
    ? []
    : [
        ['nitrogen left, g/m²', `${bandText(left.atItsEndGPerM2)} with tops and roots left`],
        ['  if cut at first flower', amountText(left.atFirstFlowerGPerM2)],
      ];

const shareText = (band: Band): string =>
  `${percentText(band.p50)} (${percentText(band.p10)} – ${percentText(band.p90)})`;
const bandText = (band: Band): string =>
  `${amountText(band.p50)} (${amountText(band.p10)} – ${amountText(band.p90)})`;

export function forecastText(report: ForecastReport): string[] {
  const { sow, plant, keep, fromTin, tinLeftShare } = report.count;
  const route = report.route.map(
    (s) => `${s.placeName || stageWord(s.stage)} from ${dateWords.day(dayOf(s.from))}`,
  );
  const rows: [string, string][] = [
    ['sown or planted', dateWords.dayInFull(dayOf(report.sow))],
    ['route', route.join(' → ') || report.place],
    ['sow / plant / expect to keep', `${sow} / ${plant} / ${keep}, on ${amountText(report.groundM2)} m²`],
    ...(fromTin === 0
      ? []
      : [
          [
            'seed from the tin',
            `${fromTin} of them, as good as ${percentText(tinLeftShare)} of fresh seed`,
          ] as [string, string],
        ]),
    ['up', dayBandText(report.emergence)],
    ['comes up, of seed that can', shareText(report.germinatingShare)],
    ...(report.plantingOut === null
      ? []
      : [['planted out', dayBandText(report.plantingOut)] as [string, string]]),
    ['harvest begins', dayBandText(report.firstHarvest)],
    ['harvest ends', dayBandText(report.lastHarvest)],
    ...Object.entries(report.harvests).flatMap(([id, h]): [string, string][] => [
      [`${plainCode(id)}, first`, dayBandText(h.first)],
      [`${plainCode(id)}, last`, dayBandText(h.last)],
      [`${plainCode(id)}, servings`, bandText(h.servings)],
    ]),
    ['run to seed early', shareText(report.boltedShare)],
    ['lost to frost', shareText(report.frostedShare)],
    ['lost otherwise', shareText(report.lostShare)],
    ['servings a plant', bandText(report.servingsPerPlant)],
    ...nitrogenRows(report.nitrogenLeft),
  ];
  const width = Math.max(...rows.map(([name]) => name.length));
  return [
    `${report.kindName}, ${report.members} weather runs, seed ${report.seed}. Ranges hold in eight years of ten.`,
    '',
    ...rows.map(([name, text]) => `${name.padEnd(width)}  ${text}`),
    '',
    'Week of       servings   any at all   ready by then',
    ...report.weeks.map(
      (w) =>
        `${w.weekOf}  ${amountText(w.meanServings).padStart(10)}${percentText(w.chanceAny).padStart(13)}   ${bandText(w.cumulative)}`,
    ),
  ];
}

const climateOriginWord = (station: string): string =>
  station === 'normals'
    ? 'from the twelve months in the file'
    : station === 'daily-csv'
      ? 'from the daily record beside the file'
      : `of ${station}`;

const number = (value: number, width: number, digits = 1): string => value.toFixed(digits).padStart(width);

export function climateText(report: ClimateReport): string[] {
  const lines = [
    `${report.site}: climate ${climateOriginWord(report.station)}`,
    '',
    'Outdoors    day h   max °C  min °C  rain mm  sun MJ/m²  frost nights',
    ...report.months.map(
      (m) =>
        `${dateWords.monthShort(m.month).padEnd(10)}${number(m.dayLengthHours, 7)}${number(m.tmaxC, 9)}${number(m.tminC, 8)}${number(m.rainMm, 9, 0)}${number(m.radiationMJPerM2Day, 11)}${number(m.frostNights, 14)}`,
    ),
  ];
  const names = report.months[0]?.places ?? [];
  names.forEach((place, i) => {
    const title = place.placeNames.length > 0 ? place.placeNames.join(', ') : 'uncovered level ground';
    lines.push(
      '',
      title,
      '            max °C  min °C  light MJ/m²  soil °C  growth °C·d a day  frost nights',
    );
    for (const m of report.months) {
      const p = m.places[i];
      if (p === undefined) continue;
      lines.push(
        `${dateWords.monthShort(m.month).padEnd(10)}${number(p.tmaxC, 8)}${number(p.tminC, 8)}${number(p.radiationMJPerM2Day, 13)}${number(p.soilC, 9)}${number(p.growth, 19)}${number(p.frostNights, 14)}`,
      );
    }
  });
  const { standstill, frost } = report;
  lines.push('');
  lines.push(
    standstill === null
      ? 'No standstill: days stay longer than ten hours.'
      : `Standstill (days under ten hours): ${dateWords.day(dayOf(standstill.from))} to ${dateWords.day(dayOf(standstill.to))}.`,
    `Last frost in spring: ${dayBandText(frost.lastSpring)}.`,
    `First frost in autumn: ${dayBandText(frost.firstAutumn)}.`,
  );
  return lines;
}
