/** Beans and peas cut at their first flower against the same picked to the end: what stays in the ground. */
import { dayFromCivil } from '../../packages/basis/src/index.ts';
import {
  firstFlowerDay,
  type Growing,
  kindById,
  nitrogenLeftGPerM2,
  raise,
  referenceDayCDays,
  runSowing,
} from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

const legumes = ['broad-bean-hardy', 'broad-bean-spring', 'pea-round', 'pea-wrinkled', 'runner-bean'];

export function legumeNitrogenAnswers(): Answer[] {
  const context = contextAt('wattisham');
  const gains = legumes.flatMap((id) => {
    const kind = kindById(id)!;
    const month = id === 'broad-bean-hardy' ? 11 : id === 'runner-bean' ? 5 : 3;
    const plan = sowingPlan(kind, 'direct', 'open', dayFromCivil(2026, month, 15));
    const reference = referenceDayCDays(kind);
    return context.members.map((member) => {
      const pace = member.paceOf(kind);
      const growing: Growing = {
        kind,
        raised: raise(member, plan, reference, pace),
        sumOf: (days) => (days * reference) / pace,
        lengthOfDay: context.lengthOfDay,
        southern: false,
      };
      const cut = nitrogenLeftGPerM2(growing, firstFlowerDay(growing));
      return cut / nitrogenLeftGPerM2(growing, runSowing(context, member, plan, noStores).clearDay);
    });
  });
  const least = Math.min(...gains);
  const most = Math.max(...gains);
  const answer = answers('nitrogen that legumes leave');
  return [
    answer(
      'more when cut by first flower than after the harvest',
      least > 1 ? 1 : 0,
      `${least.toFixed(1)} to ${most.toFixed(1)} times as much, by kind and year`,
    ),
  ];
}
