import { bandOf } from '@twelvemonth/basis';
import { clovedShare, firstHarvestDay, gateDay, NEVER } from '@twelvemonth/growing';
import { z } from 'zod';
import { climateFields, placeFields } from '../climate-inputs.ts';
import { isoDay, kindField } from '../fields.ts';
import { dayOf, memberFields, membersAround } from '../garden-under-probe.ts';
import { dayBand } from '../member-bands.ts';
import { kindNamed } from '../named-things.ts';
import { ProbeRefusal, probeModel } from '../probe-model.ts';
import { growingIn } from '../raised-members.ts';

export const bulbingProbe = probeModel({
  name: 'bulbing',
  about:
    'when size and day length set bulbing off, when the bulb is ready, and whether cold lets it divide, at the pace of the tables',
  inputs: z.strictObject({
    kind: kindField,
    startDay: isoDay('day of planting'),
    ...climateFields,
    ...placeFields,
    ...memberFields,
  }),
  outputs: {
    harvest: 'harvest of bulbs',
    criticalHours: 'day length that sets bulbing off, h',
    hoursAtTrigger: 'day length on that day (median), h; null when it never comes',
    triggerDay: 'p10, p50, p90 over the weather runs; null where it never comes',
    readyDay: 'bulb ready to lift: p10, p50, p90',
    clovedShare:
      'share of the bulbs that divide (garlic: had its cold by midsummer): p10, p50, p90; null where none is needed',
  },
  example: { kind: 'onion-spring-set', startDay: '2027-03-20', station: 'dublin' },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    const harvest = kind.harvests.find((h) => h.startGate.gate === 'day-length');
    if (harvest === undefined || harvest.startGate.gate !== 'day-length')
      throw new ProbeRefusal(
        'kind',
        `"${i.kind}" does not bulb by day length. Take one that does, as onion-spring-set.`,
      );
    const gate = harvest.startGate;
    const startDay = dayOf(i.startDay);
    const context = membersAround(i, startDay, 800);
    const growings = growingIn(context, kind, kind.routes[0]!, startDay, null);
    const triggers = growings.map((growing) => gateDay(growing, harvest));
    const middle = [...triggers].sort((a, b) => a - b)[Math.floor(triggers.length / 2)]!;
    return {
      harvest: harvest.id,
      criticalHours: gate.dayLengthHours,
      hoursAtTrigger: middle >= NEVER ? null : context.lengthOfDay(middle),
      triggerDay: dayBand(triggers),
      readyDay: dayBand(growings.map((growing) => firstHarvestDay(growing, harvest, () => NEVER))),
      clovedShare: gate.coldCDays > 0 ? bandOf(growings.map((growing) => clovedShare(growing, gate))) : null,
    };
  },
});
