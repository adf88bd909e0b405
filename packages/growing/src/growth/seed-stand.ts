/**
 * From the share of the seed that comes up to a stand. Whoever sows into ground too cold or too warm sows thicker, but
 * not without end: up to `sown-thicker-most` times the ordinary rate. What is missing beyond is a thin stand.
 *
 *   thickness = min(m, 1/g),   stand = min(1, m·g)
 *
 * | symbol | meaning | unit |
 * | g | share that comes up against the best temperature (germination-share.ts) | 1 |
 * | m | thickest sowing, in times the ordinary rate | 1 |
 * Known weakness: plants in a thin stand do not grow larger for it.
 */
import { coversTable } from '../generated/covers.ts';

const { 'sown-thicker-most': thickerMost } = coversTable.seed;

/** Times the ordinary seed rate. */
export const sownThickness = (germinatingShare: number): number =>
  germinatingShare * thickerMost > 1 ? 1 / germinatingShare : thickerMost;

/** Share of the stations that carry a plant. */
export const standShare = (germinatingShare: number): number => Math.min(1, thickerMost * germinatingShare);
