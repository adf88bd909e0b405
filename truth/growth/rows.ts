import { coverLiftAnswers, coverLightRows } from '../climate/covers.ts';
import { winterHeatAnswers } from '../climate/winter-heat.ts';
import { type Answer, factRows } from '../facts.ts';
import type { Split } from '../split.ts';
import { beanAnswers } from '../trade/beans.ts';
import { carrotStandingAnswers } from '../trade/carrot-standing.ts';
import { coldPracticeAnswers } from '../trade/cold-practice.ts';
import { keptInPotsAnswers } from '../trade/kept-in-pots.ts';
import { legumeNitrogenAnswers } from '../trade/legume-nitrogen.ts';
import type { TruthRow } from '../truth-row.ts';
import { boltingAnswers } from './bolting.ts';
import { coldOfBoltingAnswers } from './cold-of-bolting.ts';
import { emergenceRows, onionEmergenceAnswers } from './emergence.ts';
import { firstHarvestRows } from './first-harvest.ts';
import { frostAnswers } from './frost.ts';
import { frostDamageRows } from './frost-damage.ts';
import { lettuceAnswers } from './lettuce.ts';
import { onionSetAnswers } from './onion-sets.ts';
import { temperatureRows } from './temperatures.ts';
import { winterFactAnswers } from './winter-facts.ts';

let given: readonly Answer[] | null = null;

/** What the engine says of every fact; run once, whatever the split. */
export function factAnswers(): readonly Answer[] {
  given ??= [
    ...onionEmergenceAnswers(),
    ...lettuceAnswers(),
    ...frostAnswers(),
    ...boltingAnswers(),
    ...coldOfBoltingAnswers(),
    ...winterFactAnswers(),
    ...winterHeatAnswers(),
    ...onionSetAnswers(),
    ...coverLiftAnswers(),
    ...carrotStandingAnswers(),
    ...coldPracticeAnswers(),
    ...keptInPotsAnswers(),
    ...beanAnswers(),
    ...legumeNitrogenAnswers(),
  ];
  return given;
}

export const growthTruthRows = (split: Split): TruthRow[] => [
  ...emergenceRows(split),
  ...firstHarvestRows(split),
  ...temperatureRows(split),
  ...frostDamageRows(split),
  ...coverLightRows(split),
  ...factRows(split, factAnswers()),
];
