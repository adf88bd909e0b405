/** Crisp lettuce from setting out to maturity: 589 effective day-degrees, f 0.14, base 0 °C. */
import { dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { effectiveDayDegrees, type Member } from '../../packages/growing/src/index.ts';
import { contextAt } from '../garden-under-test.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const sumCDays = 589;
const lightFactor = 0.14;
const source =
  'Wurr, Fellows and Suckling 1988, J. Agric. Sci.: 589 effective day-degrees (SD 39.5); 43 days in June, 72 in April; bounds judged 36–55 and 60–90';

function daysToSum(member: Member, fromDay: number): number {
  const { weather } = member.clockOf('open');
  let sum = 0;
  for (let i = fromDay - weather.startDay; i < weather.tmaxC.length; i++) {
    const meanC = (weather.tmaxC[i]! + weather.tminC[i]!) / 2;
    sum += effectiveDayDegrees(meanC, weather.radiationMJPerM2Day[i]!, lightFactor, 0);
    if (sum >= sumCDays) return i + 1 - (fromDay - weather.startDay);
  }
  return Number.NaN;
}

export function lettuceRows(): TruthRow[] {
  const fixed = truthRows('crisp lettuce, days to maturity at steady weather', 'd', source);
  const simulated = truthRows('crisp lettuce, days to maturity in generated weather', 'd', source);
  const daysAt = (meanC: number, radiation: number): number =>
    sumCDays / effectiveDayDegrees(meanC, radiation, lightFactor, 0);
  const median = (month: number): number => {
    const days = contextAt('wattisham').members.map((m) => daysToSum(m, dayFromCivil(2026, month, 1)));
    return quantileOfSorted(Float64Array.from(days).sort(), 0.5);
  };
  return [
    fixed('June values, 15.5 °C and 17 MJ', 43, daysAt(15.5, 17), 0.5),
    fixed('April values, 9 °C and 13 MJ', 72, daysAt(9, 13), 0.5),
    simulated('set out on 1 June at wattisham', 45.5, median(6), 9.5),
    simulated('set out on 1 April at wattisham', 75, median(4), 15),
  ];
}
