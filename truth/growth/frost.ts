/** How spinach hardens and softens: the killing temperature that the place's hardening gives it, in set weather. */
import { frostThresholdC, kindById } from '../../packages/growing/src/index.ts';
import { hardenedShares } from '../../packages/growing/src/places/hardening.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

const source =
  'Fennell and Li (spinach at 5/2 °C gains 2–4 °C in one day, most by the third, loses 3–5 °C in one day at 20/17 °C); Tamura 2002 (−14 to −16 °C in the coldest weeks); −5 °C soft is judged';

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

export function frostRows(): TruthRow[] {
  const level = truthRows('spinach, killing temperature', '°C', source);
  const change = truthRows('spinach, change of killing temperature', '°C', source);
  const share = truthRows('spinach, share of a fortnight’s hardening', '1', source);
  const soft = killingC(warm(21));
  const after = (days: number): number => soft - killingC(warm(21), cold(days));
  const fortnight = killingC(warm(21), cold(14));
  return [
    level('after three warm weeks', -5, soft, 1),
    level('after a month about −1 °C', -15, killingC(warm(21), coldest(28)), 1),
    change('gained in the first cold day', 3, after(1), 1),
    share('gained by the third cold day (most)', 0.75, after(3) / (soft - fortnight), 0.25),
    change(
      'lost in one warm day after a cold fortnight',
      4,
      killingC(warm(21), cold(14), warm(1)) - fortnight,
      1,
    ),
  ];
}
