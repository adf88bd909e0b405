import { bandOf } from '@twelvemonth/basis';
import { boltedShareBy, type CropType, firstHarvestDay, NEVER, withSetSize } from '@twelvemonth/growing';
import { dayOf, membersAround } from './garden-under-probe.ts';
import { dayBand } from './member-bands.ts';
import { growingIn } from './raised-members.ts';

type Inputs = Parameters<typeof membersAround>[0] & {
  readonly startDay: string;
  readonly byDay?: string | undefined;
  readonly setMm?: number | undefined;
};

/** Share of one sowing that runs to seed before it is taken, over the weather runs, at the pace of the tables. */
export function boltingOfSowing(kind: CropType, inputs: Inputs) {
  const sized = inputs.setMm === undefined ? kind : withSetSize(kind, inputs.setMm);
  const startDay = dayOf(inputs.startDay);
  const byDay = inputs.byDay === undefined ? null : dayOf(inputs.byDay);
  const context = membersAround(inputs, startDay, 800);
  const growings = growingIn(context, sized, sized.routes[0]!, startDay, null);
  const harvest = sized.harvests.find((h) => h.endsPlant) ?? sized.harvests[0]!;
  const takenDays = growings.map((growing) => byDay ?? firstHarvestDay(growing, harvest, () => NEVER));
  const shares = growings.map((growing, i) => boltedShareBy(growing, harvest, takenDays[i]!));
  return {
    harvest: harvest.id,
    takenDay: dayBand(takenDays),
    boltedShare: shares.reduce((sum, share) => sum + share, 0) / shares.length,
    boltedShareOverWinters: bandOf(shares),
  };
}
