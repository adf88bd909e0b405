/**
 * The rule of a make-or-break day: of what can be seen over the bed, the sign that best parts the members in which the
 * sowing succeeds from those in which it fails.
 *
 *   J = seen among those that succeed − seen among those that fail        (Youden 1950)
 *
 * Signs are tried at plain values only (two true leaves, half grown), so that thirty members are not fitted to the digit.
 */
import type { SowingState } from '@twelvemonth/growing';

export type SignCode = 'up' | 'standing' | 'not-bolted' | 'leaves' | 'size';

export interface Sign {
  readonly code: SignCode;
  /** Least leaves, size or standing share; most bolted share; 1 for up. */
  readonly value: number;
}

export interface PartingRule extends Sign {
  /** J, 0–1. */
  readonly parts: number;
  /** Chance of failing where the sign is seen, and where it is not. */
  readonly failsWhenSeen: number;
  readonly failsWhenNot: number;
}

/** In the order in which they are easier to judge over the bed: of two that part alike the first is taken. */
const signs: readonly Sign[] = [
  { code: 'up', value: 1 },
  ...[0.5, 0.3, 0.7, 0.8, 0.9].map((value): Sign => ({ code: 'standing', value })),
  ...[0.1, 0.25, 0.5].map((value): Sign => ({ code: 'not-bolted', value })),
  ...[2, 1, 3, 4, 5, 6, 7, 8, 10].map((value): Sign => ({ code: 'leaves', value })),
  ...[0.5, 0.33, 0.25, 0.66, 0.75, 0.2, 0.4, 0.6, 0.8, 0.1, 0.9, 1].map(
    (value): Sign => ({ code: 'size', value }),
  ),
];

export function isSeen(sign: Sign, state: SowingState): boolean {
  switch (sign.code) {
    case 'up':
      return state.isUp;
    case 'standing':
      return state.isUp && state.standingShare >= sign.value;
    case 'not-bolted':
      return state.isUp && state.boltedShare <= sign.value;
    case 'leaves':
      return state.trueLeaves >= sign.value;
    case 'size':
      return state.sizeShare >= sign.value;
  }
}

/** Null where there is nothing to part: all succeed, or all fail, or nothing seen tells them apart. */
export function partingRule(
  states: readonly SowingState[],
  succeeds: readonly boolean[],
): PartingRule | null {
  const good = succeeds.filter((ok) => ok).length;
  const bad = succeeds.length - good;
  if (good === 0 || bad === 0) return null;
  let best: PartingRule | null = null;
  for (const sign of signs) {
    let [seenGood, seenBad] = [0, 0];
    states.forEach((state, m) => {
      if (!isSeen(sign, state)) return;
      if (succeeds[m]) seenGood++;
      else seenBad++;
    });
    const parts = seenGood / good - seenBad / bad;
    if (parts <= (best?.parts ?? 0) + 1e-9) continue;
    const notSeen = states.length - seenGood - seenBad;
    best = {
      ...sign,
      parts,
      failsWhenSeen: seenBad / Math.max(1, seenGood + seenBad),
      failsWhenNot: (bad - seenBad) / Math.max(1, notSeen),
    };
  }
  return best;
}

/** Share of members in which the rule says rightly whether the sowing will succeed. */
export function rightShareOf(
  sign: Sign,
  states: readonly SowingState[],
  succeeds: readonly boolean[],
): number {
  const right = states.filter((state, m) => isSeen(sign, state) === succeeds[m]).length;
  return right / Math.max(1, states.length);
}
