/**
 * What growers of a mild south coast know of beans: when broad beans of October flower in a tunnel, and how soon a
 * pinched tip of field beans is back in the open. Eastbourne and Camborne.
 */
import { type Day, dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import {
  dayOfSum,
  firstFlowerDay,
  kindById,
  raise,
  referenceDayCDays,
} from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, sowingPlan } from '../garden-under-test.ts';

const medianOf = (days: readonly number[]): number => quantileOfSorted(Float64Array.from(days).sort(), 0.5);

function flowerDay(station: string, startDay: Day): Day {
  const kind = kindById('broad-bean-hardy')!;
  const context = contextAt(station);
  const plan = sowingPlan(kind, 'direct', 'cover', startDay);
  const reference = referenceDayCDays(kind);
  return medianOf(
    context.members.map((member) => {
      const pace = member.paceOf(kind);
      return firstFlowerDay({
        kind,
        raised: raise(member, plan, reference, pace),
        sumOf: (days) => (days * reference) / pace,
        lengthOfDay: context.lengthOfDay,
        southern: false,
      });
    }),
  );
}

function tipDays(station: string, pinchDay: Day): number {
  const kind = kindById('field-bean-tips')!;
  const { cutDays } = kind.harvests.find((harvest) => harvest.habit === 'tips')!;
  return medianOf(
    contextAt(station).members.map((member) => {
      const clock = member.clockOf('open');
      const sum = (cutDays * referenceDayCDays(kind)) / member.paceOf(kind);
      return dayOfSum(clock, clock.growth(kind), pinchDay, sum) - pinchDay;
    }),
  );
}

export function beanAnswers(): Answer[] {
  const flower = answers('hardy broad beans in a tunnel, first flower');
  const tips = answers('pinched field-bean tips');
  return ['eastbourne', 'camborne'].flatMap((station) => {
    const november = tipDays(station, dayFromCivil(2026, 11, 10));
    const january = tipDays(station, dayFromCivil(2027, 1, 10));
    const february = tipDays(station, dayFromCivil(2027, 2, 15));
    const march = tipDays(station, dayFromCivil(2027, 3, 25));
    const days = `${november} and ${january} days`;
    return [
      flower(
        `sown 15 October at ${station}`,
        flowerDay(station, dayFromCivil(2026, 10, 15)) - dayFromCivil(2027, 1, 1) + 1,
      ),
      tips(`weeks until they are back, pinched 15 February, at ${station}`, february / 7),
      tips(`sooner back on 10 November than on 10 January at ${station}`, november < january ? 1 : 0, days),
      tips(
        `days in late March as a share of January’s at ${station}`,
        march / january,
        `${march} and ${january} days`,
      ),
    ];
  });
}
