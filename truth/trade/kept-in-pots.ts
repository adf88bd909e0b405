/**
 * Calabrese and cauliflower sown in the middle of October, kept in 9 cm pots in a tunnel and planted in the open on
 * 20 February, against the same sown in the middle of February and planted when fit. Eastbourne and Camborne.
 */
import { type Day, dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import { kindById, runSowing } from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

interface FirstHarvest {
  readonly medianDay: Day;
  readonly meanServings: number;
}

function firstHarvest(station: string, id: string, startDay: Day, plantDay: Day | null): FirstHarvest {
  const context = contextAt(station);
  const plan = { ...sowingPlan(kindById(id)!, 'module', 'open', startDay), plantDay };
  const runs = context.members.map((member) => runSowing(context, member, plan, noStores).harvests[0]!);
  return {
    medianDay: quantileOfSorted(Float64Array.from(runs.map((run) => run.firstDay)).sort(), 0.5),
    meanServings: runs.reduce((sum, run) => sum + run.servings, 0) / runs.length,
  };
}

export function keptInPotsAnswers(): Answer[] {
  const lead = answers('kept in pots, October before February sowing');
  const yields = answers('kept in pots, yield of the October sowing against February’s');
  return ['eastbourne', 'camborne'].flatMap((station) =>
    ['calabrese-early', 'cauliflower-summer'].flatMap((id) => {
      const kept = firstHarvest(station, id, dayFromCivil(2026, 10, 15), dayFromCivil(2027, 2, 20));
      const sown = firstHarvest(station, id, dayFromCivil(2027, 2, 15), null);
      return [
        lead(`${id} at ${station}`, (sown.medianDay - kept.medianDay) / 7),
        yields(`${id} at ${station}`, kept.meanServings / sown.meanServings),
      ];
    }),
  );
}
