import { emergenceRate, kindById } from '../../packages/growing/src/index.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';
import table from './harrington-minges-1954.json' with { type: 'json' };

/** Past this many days a seed counts as not having come up. */
const trialDays = 100;
const inner = truthRows('emergence at 10–25 °C', 'd', table.source);
const outer = truthRows('emergence at 5, 30 and 35 °C', 'd', table.source);
const none = truthRows(
  'emergence where nothing came up, share of the way in 100 days',
  '1',
  `${table.source}; cells marked NG`,
);
const thermalTime = truthRows(
  'onion emergence by thermal time, 80 °C·d above 2.5 °C',
  'd',
  'Brewster 2008, Onions and other vegetable alliums, chapter 4',
);

export function emergenceRows(): TruthRow[] {
  const rows: TruthRow[] = [];
  for (const { crop, kind: id, days } of table.crops) {
    const kind = kindById(id)!;
    table.temperaturesC.forEach((soilC, i) => {
      const cell = days[i];
      if (cell === null || cell === undefined) return;
      const name = `${crop} at ${soilC} °C`;
      const rate = emergenceRate(kind, soilC);
      if (typeof cell === 'string') rows.push(none(name, 0, trialDays * rate, 0.999));
      else if (soilC >= 10 && soilC <= 25)
        rows.push(inner(name, cell, Math.ceil(1 / rate), Math.max(2, 0.25 * cell)));
      // Outside 10–25 °C the leaflet's own copies differ: twice the tolerance.
      else rows.push(outer(name, cell, Math.ceil(1 / rate), Math.max(4, 0.5 * cell)));
    });
  }
  const onion = kindById('spring-onion')!;
  for (const [soilC, days] of [
    [22.5, 4],
    [7.5, 16],
  ] as const)
    rows.push(thermalTime(`at ${soilC} °C`, days, 1 / emergenceRate(onion, soilC), Math.max(1, 0.25 * days)));
  return rows;
}
