/**
 * How one sowing looks on a day in one member, in what can be seen over the bed: is it up, how many true leaves, how big
 * against the size at which its first harvest begins, how many plants stand, how many run to seed.
 *
 *   leaves = G(D) / (days per leaf · day)      size = G(D) / (start days · day)
 *
 * | symbol | meaning | unit |
 * | G | growth since emergence (since planting for sets and tubers) | °C·d |
 * | day | a reference day at the member's pace | °C·d |
 */
import type { Day } from '@twelvemonth/basis';
import { coversTable } from '../generated/covers.ts';
import type { Growing } from '../growth/growing.ts';
import { hazardsOf } from '../growth/hazards-of-crop.ts';
import { NEVER } from '../growth/place-clock.ts';
import { raise } from '../growth/raising.ts';
import { referenceDayCDays } from '../growth/reference-growth.ts';
import { survivalOf } from '../growth/survival.ts';
import type { ForecastContext, Member } from './member.ts';
import { boltedShareBy, endByBolting } from './run-to-seed.ts';
import type { SowingPlan } from './sowing-plan.ts';

export interface SowingState {
  readonly isUp: boolean;
  /** Of a plant of the middle; 0 before it is up. */
  readonly trueLeaves: number;
  /** 1: the size at which its first harvest begins. */
  readonly sizeShare: number;
  /** Of what was set out or came up. */
  readonly standingShare: number;
  readonly boltedShare: number;
}

export function sowingStateOn(
  context: ForecastContext,
  member: Member,
  plan: SowingPlan,
  day: Day,
): SowingState {
  const { kind } = plan;
  const reference = referenceDayCDays(kind);
  const pace = member.paceOf(kind);
  const raised = raise(member, plan, reference, pace);
  const southern = context.site.latitudeDeg < 0;
  const sumOf = (referenceDays: number): number => (referenceDays * reference) / pace;
  const growing: Growing = { kind, raised, sumOf, lengthOfDay: context.lengthOfDay, southern };
  const isUp = raised.emergenceDay <= day && raised.germinatingShare > 0;
  const grownCDays = isUp ? raised.growthAt(day) : 0;
  const [first] = kind.harvests;
  const material = context.exposures.get(plan.exposure)?.cover.material ?? 'open';
  const youngUntil = raised.emergenceDay >= NEVER ? NEVER : raised.dayOfGrowth(sumOf(kind.frostYoungDays));
  const covered = material !== 'open' && material !== 'fleece';
  const survival = survivalOf(member, plan, raised, hazardsOf(kind.crop), covered, southern, youngUntil);
  const inGround = raised.groundDay <= day;
  const ended = endByBolting(growing) <= day;
  return {
    isUp,
    trueLeaves: grownCDays / Math.max(1, sumOf(coversTable.leaf['reference-days-per-leaf'])),
    sizeShare: first === undefined ? 0 : grownCDays / Math.max(1, sumOf(first.startDays)),
    standingShare: inGround ? survival.frost(day) * survival.hazards(day) : 1,
    boltedShare: ended ? 1 : first === undefined ? 0 : boltedShareBy(growing, first, day),
  };
}
