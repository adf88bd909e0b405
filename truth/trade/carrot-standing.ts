/** Until when meshed maincrop carrots are sound in light ground: half of them still there, none run to seed. */
import { dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { kindById, NEVER, runSowing } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

export function carrotStandingAnswers(): Answer[] {
  const answer = answers('maincrop carrots in the ground, last day on which they are sound');
  const context = contextAt('camborne');
  const plan = sowingPlan(kindById('carrot-maincrop')!, 'direct', 'open', dayFromCivil(2026, 6, 10));
  const days = context.members.map((member) => {
    const [roots] = runSowing(context, member, plan, noStores).harvests;
    return roots === undefined || roots.firstDay >= NEVER ? Number.NaN : roots.lastDay;
  });
  const last = quantileOfSorted(Float64Array.from(days).sort(), 0.5) - dayFromCivil(2027, 1, 1) + 1;
  return [answer('sown 10 June at camborne', Math.round(last))];
}
