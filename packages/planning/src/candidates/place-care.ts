import type { PlaceCare } from '@twelvemonth/growing';
import type { GroundClass } from '../problem.ts';

export const careOf = ({
  visitsPerWeek,
  growsIn,
}: Pick<GroundClass, 'visitsPerWeek' | 'growsIn'>): PlaceCare => ({
  visitsPerWeek,
  inTub: growsIn === 'tub',
});
