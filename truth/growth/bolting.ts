/** Which sowings run to seed and which stand the winter: share of members, at 52° N. */
import { type Day, dayFromCivil } from '../../packages/basis/src/index.ts';
import {
  type CropType,
  kindById,
  NEVER,
  type RouteId,
  runSowing,
  type SowingRun,
} from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

/** Left standing past its usual harvest, so that nothing but running to seed ends it. */
const leftStanding = (kind: CropType): CropType => ({
  ...kind,
  harvests: kind.harvests.map((harvest) => ({ ...harvest, windowDays: 500, standingDays: null })),
});

function runs(id: string, route: RouteId, startDay: Day): SowingRun[] {
  const context = contextAt('wattisham');
  const plan = sowingPlan(leftStanding(kindById(id)!), route, 'open', startDay);
  return context.members.map((member) => runSowing(context, member, plan, noStores));
}

const boltedBy = (sown: readonly SowingRun[], day: Day): number =>
  sown.filter((run) => run.emergenceDay < NEVER && run.boltedShare > 0.5 && run.clearDay <= day).length /
  sown.length;

export function boltingAnswers(): Answer[] {
  const spinach = answers('spinach, share run to seed');
  const leek = answers('leek, share run to seed before midwinter');
  const midwinter = dayFromCivil(2026, 12, 21);
  const found: Answer[] = [];
  for (const id of ['spinach-spring', 'spinach-overwintering']) {
    const may = runs(id, 'direct', dayFromCivil(2026, 5, 15));
    const august = runs(id, 'direct', dayFromCivil(2026, 8, 15));
    found.push(spinach(`${id} sown 15 May, by 15 August`, boltedBy(may, dayFromCivil(2026, 8, 15))));
    found.push(spinach(`${id} sown 15 August, by 21 December`, boltedBy(august, midwinter)));
  }
  for (const month of [2, 3, 4, 5])
    found.push(
      leek(`sown 15.${month}.`, boltedBy(runs('leek', 'module', dayFromCivil(2026, month, 15)), midwinter)),
    );
  return found;
}
