/**
 * What growers of a mild south coast know of cold: onion sets that run to seed, carrots that overwinter in a tunnel,
 * field beans in frost, garlic of autumn and of spring. Eastbourne and Camborne, near 51° N.
 */
import { type Day, dayFromCivil, quantileOfSorted } from '../../packages/basis/src/index.ts';
import {
  boltedShareBy,
  clovedShare,
  coldUnitsCDays,
  frostLostShare,
  frostThresholdC,
  type Growing,
  kindById,
  raise,
  referenceDayCDays,
  runSowing,
  withSetSize,
} from '../../packages/growing/src/index.ts';
import { hardenedShares } from '../../packages/growing/src/places/hardening.ts';
import { type Answer, answers } from '../facts.ts';
import { contextAt, noStores, sowingPlan } from '../garden-under-test.ts';

const stations = ['eastbourne', 'camborne'] as const;
type Where = 'open' | 'cover';

/** Share bolted in each member, smallest first. */
function setsBolted(station: string, id: string, where: Where, day: Day, setMm?: number): Float64Array {
  const context = contextAt(station);
  const kind = setMm === undefined ? kindById(id)! : withSetSize(kindById(id)!, setMm);
  const plan = sowingPlan(kind, 'planted', where, day);
  const shares = context.members.map((member) => runSowing(context, member, plan, noStores).boltedShare);
  return Float64Array.from(shares).sort();
}

const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((a, b) => a + b, 0) / values.length;
const spreadOf = (sorted: Float64Array): string =>
  `tenth to nine tenths of the winters ${quantileOfSorted(sorted, 0.1).toFixed(2)} to ${quantileOfSorted(sorted, 0.9).toFixed(2)}`;
const yes = (holds: boolean): number => (holds ? 1 : 0);

function onionAnswers(): Answer[] {
  const red = answers('red autumn onion sets, share run to seed by spring');
  const yellow = answers('yellow autumn onion sets, share run to seed by spring');
  const [september, october, middle, november] = [
    dayFromCivil(2026, 9, 25),
    dayFromCivil(2026, 10, 3),
    dayFromCivil(2026, 10, 18),
    dayFromCivil(2026, 11, 3),
  ];
  return stations.flatMap((station) => {
    const early = setsBolted(station, 'onion-autumn-red', 'cover', october);
    const between = setsBolted(station, 'onion-autumn-red', 'cover', middle);
    const late = setsBolted(station, 'onion-autumn-red', 'cover', november);
    const open = setsBolted(station, 'onion-autumn-red', 'open', october);
    const pale = setsBolted(station, 'onion-autumn-yellow', 'open', september);
    const spread = quantileOfSorted(early, 0.9) - quantileOfSorted(early, 0.1);
    const steadily = mean(early) > mean(between) + 0.1 && mean(between) > mean(late) + 0.1;
    return [
      red(`early October under cover, mostly, at ${station}`, mean(early), spreadOf(early)),
      red(`early November under cover, few, at ${station}`, mean(late), spreadOf(late)),
      red(
        `falls steadily in between at ${station}`,
        yes(steadily),
        `mid-October ${mean(between).toFixed(2)}`,
      ),
      red(
        `more under cover than in the open at ${station}`,
        yes(mean(early) > mean(open)),
        mean(open).toFixed(2),
      ),
      red(`moved by the winter's weather at ${station}`, spread, spreadOf(early)),
      yellow(`late September in the open, less than half, at ${station}`, mean(pale), spreadOf(pale)),
    ];
  });
}

function setSizeAnswers(): Answer[] {
  const size = answers('onion sets, larger ones run to seed more');
  const day = dayFromCivil(2027, 3, 1);
  const of = (mm: number): number => mean(setsBolted('eastbourne', 'onion-spring-set', 'open', day, mm));
  return [
    size(
      '25 mm against 15 mm, planted 1 March',
      yes(of(25) > of(15)),
      `${of(25).toFixed(3)}, ${of(15).toFixed(3)}`,
    ),
  ];
}

function growingOf(
  station: string,
  id: string,
  route: 'direct' | 'planted',
  where: Where,
  day: Day,
): Growing[] {
  const kind = kindById(id)!;
  const context = contextAt(station);
  const plan = sowingPlan(kind, route, where, day);
  const reference = referenceDayCDays(kind);
  return context.members.map((member) => {
    const pace = member.paceOf(kind);
    return {
      kind,
      raised: raise(member, plan, reference, pace),
      sumOf: (days) => (days * reference) / pace,
      lengthOfDay: context.lengthOfDay,
      southern: false,
    };
  });
}

function carrotAnswers(): Answer[] {
  const lost = answers('carrots sown in mid-October in a tunnel, share run to seed by the beginning of May');
  const may = dayFromCivil(2027, 5, 1);
  return stations.map((station) => {
    const sown = growingOf(station, 'carrot-early', 'direct', 'cover', dayFromCivil(2026, 10, 15));
    return lost(
      `at ${station}`,
      mean(sown.map((growing) => boltedShareBy(growing, growing.kind.harvests[0]!, may))),
    );
  });
}

function garlicAnswers(): Answer[] {
  const cloves = answers('garlic, share that divides into cloves');
  const of = (day: Day): number =>
    mean(
      growingOf('eastbourne', 'garlic-bulb', 'planted', 'open', day).map((growing) => {
        const gate = growing.kind.harvests[0]!.startGate;
        return gate.gate === 'day-length' ? clovedShare(growing, gate) : Number.NaN;
      }),
    );
  return [
    cloves('planted in mid-October', of(dayFromCivil(2026, 10, 15))),
    cloves('planted in mid-March, mostly', of(dayFromCivil(2027, 3, 15))),
    cloves('planted in late April, rounds among them', of(dayFromCivil(2027, 4, 25))),
  ];
}

function beanAnswers(): Answer[] {
  const lost = answers('field beans, share killed by a night');
  const spell = (tmaxC: number, tminC: number): number[][] => [Array(21).fill(tmaxC), Array(21).fill(tminC)];
  const [tmax, tmin] = spell(5, 0);
  const hardened = hardenedShares(tmax!, tmin!).at(-1)!;
  const of = (minimumC: number): number =>
    frostLostShare(minimumC - frostThresholdC(kindById('field-bean-tips')!, hardened));
  return [lost('−8 °C after three weeks of cool winter weather', of(-8)), lost('−14 °C, most', of(-14))];
}

/** Low temperature broken by hours of warmth, against the same without: share of the cold's effect that is gone. */
function radishAnswers(): Answer[] {
  const undone = answers('cold broken by warm hours, share of its effect undone');
  const { cold } = kindById('carrot-early')!;
  const of = (hours: number, warmC: number): number => {
    const meanC = (6 * (24 - hours) + warmC * hours) / 24;
    return 1 - coldUnitsCDays(cold, meanC) / (coldUnitsCDays(cold, 6) * ((24 - hours) / 24));
  };
  return [undone('24 °C for 8 hours a day', of(8, 24)), undone('30 °C for 6 hours a day', of(6, 30))];
}

export const coldPracticeAnswers = (): Answer[] => [
  ...onionAnswers(),
  ...setSizeAnswers(),
  ...carrotAnswers(),
  ...garlicAnswers(),
  ...beanAnswers(),
  ...radishAnswers(),
];
