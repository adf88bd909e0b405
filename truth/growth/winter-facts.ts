/** What growers under cover know of winter: growth by the season in an unheated tunnel, from the clocks of the place. */
import { civilFromDay, type Day, dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { type CropType, kindById, runSowing, sumBetween } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

/** Growth in the tunnel between two days, mean of the members, °C·d a day. */
function growthPerDay(station: string, kind: CropType, from: Day, to: Day): number {
  const { members } = contextAt(station);
  const sums = members.map((member) => {
    const clock = member.clockOf('cover');
    return sumBetween(clock, clock.growth(kind), from, to);
  });
  return sums.reduce((total, sum) => total + sum, 0) / sums.length / (to - from);
}

const midwinter = [dayFromCivil(2026, 12, 6), dayFromCivil(2027, 1, 6)] as const;
const lateFebruary = [dayFromCivil(2027, 2, 15), dayFromCivil(2027, 3, 1)] as const;

/** Growth a day in the tunnel in late February, as so many times midwinter's. */
export const februaryRatio = (station: string, kind: CropType): number =>
  growthPerDay(station, kind, ...lateFebruary) / growthPerDay(station, kind, ...midwinter);

/** Weeks by which early carrots sown under cover in mid-October come before those sown in mid-February, medians. */
export function octoberLeadWeeks(station: string, carrot: CropType): number {
  const context = contextAt(station);
  const firstOf = (startDay: Day): number => {
    const plan = sowingPlan(carrot, 'direct', 'cover', startDay);
    const days = context.members.map((m) => runSowing(context, m, plan, noStores).harvests[0]!.firstDay);
    return quantileOfSorted(Float64Array.from(days).sort(), 0.5);
  };
  return (firstOf(dayFromCivil(2027, 2, 15)) - firstOf(dayFromCivil(2026, 10, 15))) / 7;
}

/** Servings that the cuts of a month give, mean of the members, and their share of October's. */
function decemberShare(station: string, id: string): number {
  const context = contextAt(station);
  const plan = sowingPlan(kindById(id)!, 'module', 'cover', dayFromCivil(2026, 8, 1));
  const byMonth = new Map<number, number>();
  for (const member of context.members)
    for (const lot of runSowing(context, member, plan, noStores).lots) {
      const { month } = civilFromDay(lot.fromWeek * 7);
      if (lot.fromWeek * 7 < dayFromCivil(2027, 1, 1))
        byMonth.set(month, (byMonth.get(month) ?? 0) + lot.servings);
    }
  return (byMonth.get(12) ?? 0) / (byMonth.get(10) ?? Number.NaN);
}

export function winterFactAnswers(): Answer[] {
  const ratio = answers('growth in a tunnel, late February over midwinter');
  const lead = answers('early carrots in a tunnel, mid-October before mid-February sowing');
  const cuts = answers('leaves cut under cover, December as a share of October');
  const found: Answer[] = [];
  for (const station of ['valentia', 'dublin']) {
    found.push(lead(`at ${station}`, octoberLeadWeeks(station, kindById('carrot-early')!)));
    for (const id of ['spinach-overwintering', 'lettuce-leaf']) {
      const kind = kindById(id)!;
      const name = `${id} at ${station}`;
      found.push(ratio(name, februaryRatio(station, kind)));
    }
  }
  for (const id of ['spinach-overwintering', 'lettuce-leaf'])
    found.push(cuts(`${id} sown 1 August at valentia`, decemberShare('valentia', id)));
  return found;
}
