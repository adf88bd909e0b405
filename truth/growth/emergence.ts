/** Days to emergence at constant soil temperature, and the seedlings that came, cell by cell of a published leaflet. */
import {
  emergenceRate,
  germinatingShare,
  kindById,
  leastGerminatingShare,
} from '../../packages/growing/src/index.ts';
import { type Answer, answers } from '../facts.ts';
import { type Figure, numberIn, readFigures, sourceText } from '../figures.ts';
import { seedKindsFor } from '../published-crops.ts';
import type { Split } from '../split.ts';
import { type TruthRow, truthRows } from '../truth-row.ts';

/** Past this many days a seed counts as not having come up. */
const trialDays = 100;
/** Two lots of one crop may well differ so much at one temperature: the leaflet tested one lot of each. */
const lotSpreadShare = 0.15;

function rowsOf(figure: Figure): TruthRow[] {
  const soilC = numberIn(figure, 'soilC');
  const source = sourceText(figure);
  const kinds = seedKindsFor(figure.crop!);
  return kinds.map((kind, i): TruthRow => {
    const name = `${figure.crop} at ${soilC} °C${i === 0 ? '' : `, ${kind.crop}`}`;
    const rate = emergenceRate(kind, soilC);
    const row = (): TruthRow => {
      if (figure.days === 'NG')
        return truthRows('emergence where nothing came up, share of the way in 100 days', '1', source)(
          name,
          0,
          // What comes up in less than a twentieth of the seed has not come up.
          germinatingShare(kind, soilC) < leastGerminatingShare ? 0 : trialDays * rate,
          0.999,
          kind.id,
        );
      const days = numberIn(figure, 'days');
      const got = Math.ceil(1 / rate);
      if (soilC >= 10 && soilC <= 25)
        return truthRows('emergence at 10–25 °C', 'd', source)(
          name,
          days,
          got,
          Math.max(2, 0.15 * days),
          kind.id,
        );
      const quantity =
        soilC === 5 || soilC === 30 ? 'emergence at 5 and 30 °C' : 'emergence at 0, 35 and 40 °C';
      return truthRows(quantity, 'd', source)(name, days, got, Math.max(4, 0.25 * days), kind.id);
    };
    return { ...row(), figure: figure.id };
  });
}

/** Seedlings that came, against the lot's best temperature. */
function shareRowsOf(figure: Figure): TruthRow[] {
  const soilC = numberIn(figure, 'soilC');
  const expected = numberIn(figure, 'percent') / numberIn(figure, 'bestPercent');
  return seedKindsFor(figure.crop!).map((kind, i): TruthRow => {
    const name = `${figure.crop} at ${soilC} °C${i === 0 ? '' : `, ${kind.crop}`}`;
    const got = germinatingShare(kind, soilC);
    const row = truthRows('seedlings that come up, share of the best temperature', '1', sourceText(figure));
    return { ...row(name, expected, got, lotSpreadShare, kind.id), figure: figure.id };
  });
}

export const emergenceRows = (split: Split): TruthRow[] => [
  ...readFigures('emergence-days', split).flatMap(rowsOf),
  ...readFigures('emergence-percent', split).flatMap(shareRowsOf),
];

/** Onion by the thermal time that a second source gives. */
export function onionEmergenceAnswers(): Answer[] {
  const onion = kindById('spring-onion')!;
  const answer = answers('onion emergence by thermal time, 80 °C·d above 2.5 °C');
  return [22.5, 7.5].map((soilC) => answer(`at ${soilC} °C`, 1 / emergenceRate(onion, soilC)));
}
