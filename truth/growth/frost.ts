/** How spinach hardens and softens: the killing temperature that the place's hardening gives it, in set weather. */
import { frostThresholdC, kindById } from '../../packages/growing/src/index.ts';
import { hardenedShares } from '../../packages/growing/src/places/hardening.ts';
import { type Answer, answers } from '../facts.ts';

interface Spell {
  readonly days: number;
  readonly tmaxC: number;
  readonly tminC: number;
}
const warm = (days: number): Spell => ({ days, tmaxC: 20, tminC: 17 });
const cold = (days: number): Spell => ({ days, tmaxC: 5, tminC: 2 });
const coldest = (days: number): Spell => ({ days, tmaxC: 2, tminC: -4 });

/** Killing temperature at the end of the spells, °C. */
function killingC(...spells: readonly Spell[]): number {
  const each = (pick: (spell: Spell) => number): number[] =>
    spells.flatMap((spell) => Array<number>(spell.days).fill(pick(spell)));
  const shares = hardenedShares(
    each((s) => s.tmaxC),
    each((s) => s.tminC),
  );
  return frostThresholdC(kindById('spinach-overwintering')!, shares[shares.length - 1]!);
}

export function frostAnswers(): Answer[] {
  const level = answers('spinach, killing temperature');
  const change = answers('spinach, change of killing temperature');
  const share = answers('spinach, share of a fortnight’s hardening');
  const soft = killingC(warm(21));
  const after = (days: number): number => soft - killingC(warm(21), cold(days));
  const fortnight = killingC(warm(21), cold(14));
  return [
    level('after three warm weeks', soft),
    level('after a month about −1 °C', killingC(warm(21), coldest(28))),
    change('gained in the first cold day', after(1)),
    share('gained by the third cold day (most)', after(3) / (soft - fortnight)),
    change('lost in one warm day after a cold fortnight', killingC(warm(21), cold(14), warm(1)) - fortnight),
  ];
}
