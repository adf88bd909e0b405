/** Formulas against figures worked out by hand from the published forms: they check our arithmetic, not nature. */
import {
  boltedShareOfUnits,
  coldUnitsCDays,
  effectiveDayDegrees,
  kindById,
} from '../../packages/growing/src/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';
import table from './worked-figures.json' with { type: 'json' };

function effectiveHeatRows(): TruthRow[] {
  const row = truthRows('effective day-degrees, arithmetic', '°C·d', table.effectiveDayDegrees.source);
  return table.effectiveDayDegrees.rows.flatMap(({ f, values }) =>
    values.map((expected, i) => {
      const [meanC = 0, radiation = 0] = table.effectiveDayDegrees.meanCAndRadiation[i] ?? [];
      const name = `f ${f} at ${meanC} °C and ${radiation} MJ`;
      return row(name, expected, effectiveDayDegrees(meanC, radiation, f, 0), 0.0051);
    }),
  );
}

function carrotRows(): TruthRow[] {
  const { source, relativeRates, daysToUnits } = table.carrot;
  const { bolting: bolts, cold: triangle } = kindById('carrot-maincrop')!;
  const bolting = bolts!;
  const rate = truthRows('carrot vernalisation, rate against the optimum', '1', source);
  const days = truthRows('carrot vernalisation, days to a sum', 'd', source);
  const share = truthRows('carrot vernalisation, share that bolts', '1', source);
  return [
    ...relativeRates.map(([meanC = 0, expected = 0]) =>
      rate(`at ${meanC} °C`, expected, coldUnitsCDays(triangle, meanC) / 7.5, 0.00051),
    ),
    ...daysToUnits.map(([units = 0, meanC = 0, expected = 0]) =>
      days(
        `${units} °C·d at ${meanC} °C`,
        expected,
        Math.ceil(units / coldUnitsCDays(triangle, meanC) - 1e-9),
        0,
      ),
    ),
    share('at 126 °C·d, where bolting begins', 0, boltedShareOfUnits(bolting, 126), 0.05),
    share('at 336 °C·d', 0.9, boltedShareOfUnits(bolting, 336), 0.005),
  ];
}

export const arithmeticRows = (): TruthRow[] => [...effectiveHeatRows(), ...carrotRows()];
