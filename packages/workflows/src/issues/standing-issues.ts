/** What stands against the ground that it stands on. */
import { type Day, type Issue, isoFromDay } from '@twelvemonth/basis';
import { type Garden, type GardenPlace, gardenIssue, type StandingSowing } from '@twelvemonth/garden';
import type { CropType } from '@twelvemonth/growing';
import type { Bench, GroundClass } from '@twelvemonth/planning';
import { diseaseAgainst, groundOfPlace, growsInText } from '../forecast/choose-place.ts';
import { kindOf } from '../kinds/garden-kinds.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';

/** Plants may stand this much closer than usual before it is a slip. */
const closerFactor = 2;

interface Known {
  readonly standing: StandingSowing;
  readonly index: number;
  readonly kind: CropType;
  readonly place: GardenPlace;
  readonly ground: GroundClass | undefined;
}

const nameOf = ({ place, standing }: Known): string =>
  standing.placeNumber === null || place.count === 1 ? place.name : `${place.name} ${standing.placeNumber}`;

/** A tub that is large enough carries what the catalogue only knows from beds: the household has it growing. */
function carriesInTub({ kind, ground }: Known): boolean {
  return ground !== undefined && ground.stripLitres > 0 && ground.stripLitres >= kind.tubLitresPerPlant;
}

function placeIssues(known: Known): Issue[] {
  const { kind, ground, place, index } = known;
  if (ground === undefined) return [];
  const names = { kind: kind.name, place: place.name };
  if (!kind.growsIn.includes(ground.growsIn) && !carriesInTub(known))
    return [
      workflowIssue('kind-not-for-place', `standing[${index}]`, { ...names, growsIn: growsInText(kind) }),
    ];
  const disease = diseaseAgainst(kind, ground);
  return disease === null
    ? []
    : [workflowIssue('disease-on-record', `standing[${index}]`, { ...names, disease })];
}

function plantIssues(known: Known): Issue[] {
  const { kind, ground, place, standing, index } = known;
  if (ground === undefined) return [];
  const likePlaces = standing.placeNumber === null ? place.count : 1;
  const strips = ground.beds.find((bed) => bed.place === place.id)!.stripCount * likePlaces;
  const most =
    ground.stripLitres > 0
      ? (strips * ground.stripLitres) / Math.max(1, kind.tubLitresPerPlant)
      : (Math.min(strips * ground.stripM2, standing.groundM2 ?? Number.POSITIVE_INFINITY) * 10000) /
        (kind.inRowCm * kind.betweenRowCm);
  const stations = standing.count.low / Math.max(1, kind.stationSeedsCount);
  if (stations <= closerFactor * Math.max(1, most)) return [];
  const detail = {
    kind: kind.name,
    place: nameOf(known),
    plants: standing.count.middle,
    most: Math.floor(most * Math.max(1, kind.stationSeedsCount)),
  };
  return [workflowIssue('plants-over-ground', `standing[${index}].count`, detail)];
}

const begunDay = ({ standing }: Known): Day | null => (standing.planted ?? standing.sown)?.fromDay ?? null;

function futureIssues(known: Known, fromDay: Day): Issue[] {
  const { standing, index } = known;
  return (['sown', 'planted'] as const).flatMap((key) => {
    const when = standing[key];
    if (when === null || when.fromDay <= fromDay) return [];
    const detail = { found: isoFromDay(when.fromDay), reference: isoFromDay(fromDay) };
    return [gardenIssue('date-in-future', `standing[${index}].${key}`, detail)];
  });
}

/** Declared ground at one time in one bed: what is begun by then and may not have been cleared. */
function overFullIssues(all: readonly Known[], fromDay: Day): Issue[] {
  const beds = new Map<string, Known[]>();
  for (const known of all) {
    if (known.standing.groundM2 === null || known.place.use !== 'bed') continue;
    const key = `${known.place.id}/${known.standing.placeNumber ?? ''}`;
    beds.set(key, [...(beds.get(key) ?? []), known]);
  }
  return [...beds.values()].flatMap((bed) => {
    const { place, standing } = bed[0]!;
    const likePlaces = standing.placeNumber === null ? place.count : 1;
    const placeM2 = (place.lengthM ?? 0) * (place.widthM ?? 0) * likePlaces;
    const days = [fromDay, ...bed.map((k) => begunDay(k) ?? fromDay).filter((day) => day > fromDay)];
    for (const day of days) {
      const there = bed.filter(
        (k) =>
          (begunDay(k) ?? fromDay) <= day && (day === fromDay || (k.standing.mayClearFrom ?? day + 1) > day),
      );
      const sumM2 = there.reduce((sum, k) => sum + k.standing.groundM2!, 0);
      if (sumM2 <= placeM2 * 1.01) continue;
      const rounded = (m2: number): number => Math.round(m2 * 100) / 100;
      const detail = { place: nameOf(bed[0]!), groundM2: rounded(sumM2), placeM2: rounded(placeM2) };
      return [gardenIssue('bed-over-full', `standing[${there.at(-1)!.index}].groundM2`, detail)];
    }
    return [];
  });
}

export function standingIssues(
  garden: Garden,
  ground: readonly GroundClass[],
  benches: readonly Bench[],
  fromDay: Day,
): Issue[] {
  const all = garden.standing.flatMap((standing, index): Known[] => {
    const kind = kindOf(garden, standing.kind);
    const onBench = benches.some((bench) => bench.place === standing.place);
    const home = onBench && standing.plantInto !== null ? standing.plantInto : standing.place;
    const place = garden.places.find((each) => each.id === home);
    if (kind === undefined || place === undefined) return [];
    return [{ standing, index, kind, place, ground: groundOfPlace(ground, place) }];
  });
  const inGround = all.filter(({ standing, place }) => standing.place === place.id);
  return [
    ...all.flatMap(placeIssues),
    ...inGround.flatMap(plantIssues),
    ...all.flatMap((known) => futureIssues(known, fromDay)),
    ...overFullIssues(inGround, fromDay),
  ];
}
