import { leftShares } from '@twelvemonth/growing';
import { z } from 'zod';
import { kindField, measured, oneOf } from '../fields.ts';
import { kindNamed, sound } from '../named-things.ts';
import { ProbeRefusal, probeModel } from '../probe-model.ts';

export const keepingProbe = probeModel({
  name: 'keeping',
  about: 'what is left of a lot in a place of keeping, week by week, and when it ends',
  inputs: z.strictObject({
    kind: kindField,
    store: oneOf(['dry', 'cool-damp', 'frost-free', 'sand', 'fridge', 'freezer', 'jar'], 'place of keeping'),
    harvest: z.string().describe('harvest of the kind (default: the first that keeps there)').optional(),
    amountServings: measured(0, 100000, 'what is put in, servings').default(1),
  }),
  outputs: {
    harvest: 'harvest that it belongs to',
    lifeWeeks: 'weeks after curing at which it ends',
    cureDays: 'days of curing before, in which it can be eaten',
    lossPerWeekShare: 'share lost a week',
    leftShare: 'share left at the end of weeks 0, 1, 2 … until the end',
    keptBackShare:
      'share of the harvest that plants as much again, kept back by a household that saves its own',
    leftAtEndServings: 'servings left in the last week',
  },
  example: { kind: 'onion-spring-set', store: 'dry' },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    if (i.harvest !== undefined)
      sound(
        kind.harvests.some((h) => h.id === i.harvest),
        'harvest',
        `"${i.kind}" has no harvest "${i.harvest}". It has: ${kind.harvests.map((h) => h.id).join(', ')}.`,
      );
    for (const harvest of kind.harvests) {
      if (i.harvest !== undefined && harvest.id !== i.harvest) continue;
      const rule = harvest.stores.find((store) => store.store === i.store);
      if (rule === undefined) continue;
      const leftShare = leftShares(rule);
      return {
        harvest: harvest.id,
        lifeWeeks: rule.lifeWeeks,
        cureDays: rule.cureDays,
        lossPerWeekShare: rule.lossPerWeekShare,
        leftShare,
        keptBackShare: harvest.keptBackShare,
        leftAtEndServings: leftShare.at(-1)! * i.amountServings,
      };
    }
    const known = [...new Set(kind.harvests.flatMap((h) => h.stores.map((s) => s.store as string)))];
    throw new ProbeRefusal(
      'store',
      known.length === 0
        ? `"${i.kind}" is not kept anywhere. Take another kind.`
        : `"${i.kind}" does not keep in "${i.store}". It keeps in: ${known.join(', ')}.`,
    );
  },
});
