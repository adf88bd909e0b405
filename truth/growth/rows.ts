import type { TruthRow } from '../truth-row.ts';
import { arithmeticRows } from './arithmetic.ts';
import { boltingRows } from './bolting.ts';
import { emergenceRows } from './emergence.ts';
import { frostRows } from './frost.ts';
import { lettuceRows } from './lettuce.ts';
import { onionSetRows } from './onion-sets.ts';
import { winterFactRows } from './winter-facts.ts';

export const growthTruthRows = (): TruthRow[] => [
  ...emergenceRows(),
  ...arithmeticRows(),
  ...lettuceRows(),
  ...frostRows(),
  ...boltingRows(),
  ...winterFactRows(),
  ...onionSetRows(),
];
