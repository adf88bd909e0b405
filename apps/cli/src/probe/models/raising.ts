import { meanOf } from '@twelvemonth/basis';
import { firstFlowerDay } from '@twelvemonth/growing';
import { z } from 'zod';
import { climateFields, placeFields } from '../climate-inputs.ts';
import { isoDay, kindField, oneOf } from '../fields.ts';
import { dayOf, memberFields, membersAround } from '../garden-under-probe.ts';
import { dayBand } from '../member-bands.ts';
import { kindNamed, sound } from '../named-things.ts';
import { probeModel } from '../probe-model.ts';
import { growingIn } from '../raised-members.ts';

export const raisingProbe = probeModel({
  name: 'raising',
  about:
    'from sowing to a plant in the ground, at the pace of the tables: up, fit to set out, set out, what waiting costs',
  inputs: z.strictObject({
    kind: kindField,
    startDay: isoDay('day of sowing or planting'),
    route: oneOf(
      ['direct', 'planted', 'module', 'warm', 'tray'],
      'how it is raised (default: the usual way)',
    ).optional(),
    plantDay: isoDay('day from which its ground is free (default: as soon as it is fit)').optional(),
    ...climateFields,
    ...placeFields,
    ...memberFields,
  }),
  outputs: {
    route: 'how it is raised',
    emergenceDay: 'p10, p50, p90 over the weather runs; null where it never comes up',
    readyDay: 'fit to set out (in place: the ground day)',
    groundDay: 'in the ground',
    firstFlowerDay: 'first open flower (null where the kind has no flowering-days)',
    sizeAtGroundShare: 'size when set out, share of its planting size (null where sown in place)',
    checkedDays: 'growth that the pot withheld, reference days, mean',
    restartDays: 'growth lost after setting out until there are new roots, reference days, mean',
    heldYieldShare: 'yield left after waiting in the pot, share, mean',
    leggyShare: '0 sturdy to 1 all stem, by the light they had for their warmth, mean',
    raisedYieldShare: 'yield left after waiting and after dim raising, share, mean',
  },
  example: {
    kind: 'calabrese-early',
    startDay: '2026-10-15',
    plantDay: '2027-02-20',
    station: 'camborne',
    cover: 'polytunnel',
  },
  answer: (i) => {
    const kind = kindNamed(i.kind);
    const route = i.route ?? kind.routes[0]!;
    sound(
      kind.routes.includes(route),
      'route',
      `"${i.kind}" is not raised by "${route}". It takes: ${kind.routes.join(', ')}.`,
    );
    const startDay = dayOf(i.startDay);
    const plantDay = i.plantDay === undefined ? null : dayOf(i.plantDay);
    sound(
      plantDay === null || (plantDay >= startDay && plantDay <= startDay + 400),
      'plantDay',
      `Input "plantDay" (${i.plantDay}) is not within 400 days after "startDay" (${i.startDay}). Mend one of them.`,
    );
    const growings = growingIn(membersAround(i, startDay, 500), kind, route, startDay, plantDay);
    const raised = growings.map((growing) => growing.raised);
    const inPlace = route === 'direct' || route === 'planted' || route === 'tray';
    return {
      route,
      emergenceDay: dayBand(raised.map((r) => r.emergenceDay)),
      readyDay: dayBand(raised.map((r) => r.readyDay)),
      groundDay: dayBand(raised.map((r) => r.groundDay)),
      firstFlowerDay: kind.floweringDays === 0 ? null : dayBand(growings.map(firstFlowerDay)),
      sizeAtGroundShare:
        inPlace || kind.raisingDays <= 0
          ? null
          : meanOf(raised.map((r) => r.kept.sizeDays / kind.raisingDays)),
      checkedDays: meanOf(raised.map((r) => r.kept.checkedDays)),
      restartDays: meanOf(raised.map((r) => r.kept.restartDays)),
      heldYieldShare: meanOf(raised.map((r) => r.kept.yieldShare)),
      leggyShare: meanOf(raised.map((r) => r.leggyShare)),
      raisedYieldShare: meanOf(raised.map((r) => r.raisedYieldShare)),
    };
  },
});
