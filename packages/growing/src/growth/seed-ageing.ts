/**
 * What is left of a packet's germination after years in the tin: the probit line of Ellis & Roberts (1980) under a
 * lot's own ceiling (the control viability of Mead & Gray 1999), read against fresh seed.
 *
 *   left(t) = Φ(K − t/σ) / Φ(K),   σ = life / K
 *
 * | symbol | meaning | unit |
 * | t | years since the year on the packet | years |
 * | life | listed years that a packet keeps, taken as the time to half viability | years |
 * | K | probits of viability of fresh seed | 1 |
 * | σ | years in which viability falls by one probit | years |
 * Range: paper packets in a cool dry room. Known weakness: the lists do not say what share they mean by keeping; half
 * is judged. Damp and heat halve the life, a closed jar with a drying agent doubles it and more.
 */
import { normalShareBelow } from '../climate/clipped-normal.ts';
import { coversTable } from '../generated/covers.ts';

const { 'fresh-viability-probits': freshProbits, 'least-worth-sowing-share': leastWorthSowing } =
  coversTable.seed;
const freshViability = normalShareBelow(freshProbits);

/** Share of fresh germination that seed of this age still has, 0–1. `lifeYears` above 0. */
export const agedShare = (ageYears: number, lifeYears: number): number =>
  normalShareBelow(freshProbits * (1 - Math.max(0, ageYears) / lifeYears)) / freshViability;

/** Whether anybody would still sow it: below this the packet is thrown away. */
export const worthSowing = (leftShare: number): boolean => leftShare >= leastWorthSowing;
