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
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const spinachSource =
  'Chun et al. 2001 and Utah State University: critical day length 12–15 h; sown mid-May at 52° N spinach bolts, sown mid-August not before winter';
const leekSource =
  'Brewster 2008: leek needs six weeks at 4–8 °C past three leaves, none at 18–20 °C; sown in spring it does not bolt before winter';

/** Left standing past its usual harvest, so that nothing but running to seed ends it. */
const leftStanding = (kind: CropType): CropType => ({
  ...kind,
  harvests: kind.harvests.map((harvest) => ({ ...harvest, windowDays: 500 })),
});

function runs(id: string, route: RouteId, startDay: Day): SowingRun[] {
  const context = contextAt('wattisham');
  const plan = sowingPlan(leftStanding(kindById(id)!), route, 'open', startDay);
  return context.members.map((member) => runSowing(context, member, plan, noStores));
}

const boltedBy = (sown: readonly SowingRun[], day: Day): number =>
  sown.filter((run) => run.emergenceDay < NEVER && run.boltedShare > 0.5 && run.clearDay <= day).length /
  sown.length;

export function boltingRows(): TruthRow[] {
  const spinach = truthRows('spinach, share run to seed', '1', spinachSource);
  const leek = truthRows('leek, share run to seed before midwinter', '1', leekSource);
  const midwinter = dayFromCivil(2026, 12, 21);
  const rows: TruthRow[] = [];
  for (const id of ['spinach-spring', 'spinach-overwintering']) {
    const may = runs(id, 'direct', dayFromCivil(2026, 5, 15));
    const august = runs(id, 'direct', dayFromCivil(2026, 8, 15));
    rows.push(spinach(`${id} sown 15 May, by 15 August`, 1, boltedBy(may, dayFromCivil(2026, 8, 15)), 0.1));
    rows.push(spinach(`${id} sown 15 August, by 21 December`, 0, boltedBy(august, midwinter), 0.05));
  }
  for (const month of [2, 3, 4, 5])
    rows.push(
      leek(
        `sown 15.${month}.`,
        0,
        boltedBy(runs('leek', 'module', dayFromCivil(2026, month, 15)), midwinter),
        0,
      ),
    );
  return rows;
}
