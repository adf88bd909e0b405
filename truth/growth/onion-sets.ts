/** Red onion sets under cover, early October against early November: earlier bulbs, more of them bolted, those not kept. */
import { type Day, dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { kindById, runSowing, type SowingRun, type StoreId } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, sowingPlan } from '../garden-under-test.ts';

const dry: ReadonlySet<StoreId> = new Set(['dry']);

function runs(station: string, startDay: Day): SowingRun[] {
  const context = contextAt(station);
  const plan = sowingPlan(kindById('onion-autumn-red')!, 'planted', 'cover', startDay);
  return context.members.map((member) => runSowing(context, member, plan, dry));
}

const median = (sown: readonly SowingRun[]): number =>
  quantileOfSorted(Float64Array.from(sown, (run) => run.harvests[0]!.firstDay).sort(), 0.5);
const meanBolted = (sown: readonly SowingRun[]): number =>
  sown.reduce((sum, run) => sum + run.boltedShare, 0) / sown.length;
const keptBolted = (sown: readonly SowingRun[]): number =>
  sown.flatMap((run) => run.lots).filter((lot) => lot.bolted && lot.store !== null).length;

/** 1 when the later set gives more than the earlier, else 0: the direction is all that is known. */
const isMore = (more: number, less: number): number => (more > less ? 1 : 0);

export function onionSetAnswers(): Answer[] {
  const row = answers('red onion sets under cover, October against November');
  return ['dublin', 'valentia'].flatMap((station) => {
    const october = runs(station, dayFromCivil(2026, 10, 3));
    const november = runs(station, dayFromCivil(2026, 11, 3));
    const [earlier, later] = [median(october), median(november)];
    const [more, less] = [meanBolted(october), meanBolted(november)];
    const days = `${(later - earlier).toFixed(0)} days earlier`;
    const shares = `${more.toFixed(3)} against ${less.toFixed(3)}`;
    return [
      row(`bulbs earlier at ${station}`, isMore(later, earlier), days),
      row(`larger share bolted at ${station}`, isMore(more, less), shares),
      row(`bolted bulbs in store at ${station}`, keptBolted(october)),
    ];
  });
}
