/** Crisp lettuce from setting out to maturity: 589 effective day-degrees, f 0.14, base 0 °C. */
import { dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { effectiveDayDegrees, type Member } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt } from '../garden-under-test.ts';

const sumCDays = 589;
const lightFactor = 0.14;

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

export function lettuceAnswers(): Answer[] {
  const fixed = answers('crisp lettuce, days to maturity at steady weather');
  const simulated = answers('crisp lettuce, days to maturity in generated weather');
  const daysAt = (meanC: number, radiation: number): number =>
    sumCDays / effectiveDayDegrees(meanC, radiation, lightFactor, 0);
  const median = (month: number): number => {
    const days = contextAt('wattisham').members.map((m) => daysToSum(m, dayFromCivil(2026, month, 1)));
    return quantileOfSorted(Float64Array.from(days).sort(), 0.5);
  };
  return [
    fixed('June values, 15.5 °C and 17 MJ', daysAt(15.5, 17)),
    fixed('April values, 9 °C and 13 MJ', daysAt(9, 13)),
    simulated('set out on 1 June at wattisham', median(6)),
    simulated('set out on 1 April at wattisham', median(4)),
  ];
}
