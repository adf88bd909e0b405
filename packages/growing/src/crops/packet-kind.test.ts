import { expect, test } from 'vitest';
import { kindById } from './catalogue.ts';
import { type PacketKind, packetDaysOf, readPacket } from './packet-kind.ts';

const packet = (changes: Partial<PacketKind>): PacketKind => ({
  id: 'our-beet',
  parent: 'beetroot',
  name: 'our quick beet',
  packetDays: null,
  countedFrom: 'sowing',
  inRowCm: null,
  betweenRowCm: null,
  changes: {},
  ...changes,
});

function kindOfPacket(changes: Partial<PacketKind>) {
  const { own, warnings } = readPacket(packet(changes));
  if (!('kind' in own)) throw new Error(JSON.stringify(own.issues));
  return { kind: own.kind, codes: warnings.map((warning) => warning.code) };
}

const beetroot = kindById('beetroot')!;

test("the packet's days are met by the kind that is made of them", () => {
  const packetDays = Math.round(packetDaysOf(beetroot, 'sowing') * 0.8);
  const { kind, codes } = kindOfPacket({ packetDays });
  expect(packetDaysOf(kind, 'sowing')).toBeCloseTo(packetDays, 0);
  expect(kind.emergenceSumCDays).toBe(beetroot.emergenceSumCDays);
  expect(codes).toEqual([]);
});

test('size and first harvest stretch in one proportion', () => {
  const { kind } = kindOfPacket({ packetDays: packetDaysOf(beetroot, 'sowing') * 1.3 });
  const [own, usual] = [kind.harvests[0]!, beetroot.harvests[0]!];
  expect(own.fullDays / usual.fullDays).toBeCloseTo(own.startDays / usual.startDays, 2);
  expect(own.startDays).toBeGreaterThan(usual.startDays);
});

test('spacing is taken as printed, and days from planting leave the raising out', () => {
  const { kind } = kindOfPacket({ inRowCm: 7, betweenRowCm: 20 });
  expect([kind.inRowCm, kind.betweenRowCm]).toEqual([7, 20]);
  const cabbage = kindById('cabbage-winter')!;
  expect(packetDaysOf(cabbage, 'planting')).toBeLessThan(
    packetDaysOf(cabbage, 'sowing') - cabbage.raisingDays,
  );
});

test.each([0.5, 2])('%s times the time of its parent is a warning with both numbers', (share) => {
  const usualDays = packetDaysOf(beetroot, 'sowing');
  const { warnings } = readPacket(packet({ packetDays: usualDays * share }));
  expect(warnings).toEqual([
    {
      code: 'own-kind.days-contradict',
      severity: 'warning',
      where: 'kind:our-beet',
      detail: {
        parent: beetroot.name,
        days: Math.round(usualDays * share),
        usualDays: Math.round(usualDays),
      },
    },
  ]);
});

test('days that are over before it is up, and days of a kind that waits for its season, are said', () => {
  expect(kindOfPacket({ packetDays: 3 }).codes).toEqual([
    'own-kind.days-contradict',
    'own-kind.days-too-few',
  ]);
  const onion = kindOfPacket({ parent: 'onion-spring-set', packetDays: 110 });
  expect(onion.codes).toContain('own-kind.days-without-effect');
  expect(onion.kind.harvests).toEqual(kindById('onion-spring-set')!.harvests);
});
