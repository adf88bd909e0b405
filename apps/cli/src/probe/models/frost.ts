import { frostLostShare, frostThresholdC } from '@twelvemonth/growing';
import { z } from 'zod';
import { kindField, measured, yesNo } from '../fields.ts';
import { harvestNamed, kindNamed, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';

export const frostProbe = probeModel({
  name: 'frost',
  about: 'share of plants that a cold night kills, by kind, hardening and cover',
  inputs: z.strictObject({
    kind: kindField,
    minimumC: measured(-60, 40, 'lowest temperature at the plants, °C'),
    hardenedShare: measured(0, 1, '0 = soft, 1 = fully hardened'),
    underCover: yesNo('under a rigid cover: dry leaves, no wind').default(false),
    fleece: yesNo('fleece for the night, in the open').default(false),
    seedling: yesNo('still in its first reference days').default(false),
    harvest: z.string().describe('harvest whose flowers, curds or pods are asked after').optional(),
  }),
  outputs: {
    lostShare: 'share of plants cut down',
    yieldKeptShare: 'share of the yield still had, plants that shoot again counted',
    partThresholdC:
      'half of the harvested part is spoiled at this minimum, uncovered, °C; null: as hardy as the leaves',
    partSpoiledShare: 'share of the harvested part spoiled; null: as the plants',
    thresholdC: 'half are lost at this minimum, uncovered, °C',
    coverGainC: 'how much colder it may be under the cover or fleece, °C',
    marginC: 'minimum above threshold, with the gain, °C',
  },
  example: { kind: 'broad-bean-hardy', minimumC: -8, hardenedShare: 0.8, underCover: false },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    sound(
      !(i.underCover && i.fleece),
      'fleece',
      'Both "underCover" and "fleece" are true; the model adds one of them only. Set one to false.',
    );
    const harvest = i.harvest === undefined ? null : harvestNamed(kind, i.harvest);
    const thresholdC = frostThresholdC(kind, i.hardenedShare) + (i.seedling ? kind.frostYoungC : 0);
    const coverGainC = i.underCover ? kind.frostCoverGainC : i.fleece ? kind.frostFleeceGainC : 0;
    const marginC = i.minimumC - thresholdC + coverGainC;
    const lostShare = frostLostShare(marginC);
    const partThresholdC = harvest?.partFrostC ?? null;
    return {
      lostShare,
      yieldKeptShare: 1 - lostShare * (1 - kind.frostRegrowthShare),
      partThresholdC,
      partSpoiledShare:
        partThresholdC === null ? null : frostLostShare(i.minimumC - partThresholdC + coverGainC),
      thresholdC,
      coverGainC,
      marginC,
    };
  },
});
