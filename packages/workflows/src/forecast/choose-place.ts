import { cannot, done, type Issue, type Outcome } from '@twelvemonth/basis';
import { type Garden, type GardenPlace, gardenIssue } from '@twelvemonth/garden';
import { allFamilies, type CropType } from '@twelvemonth/growing';
import { type Bench, canGrowIn, type GroundClass } from '@twelvemonth/planning';
import { nearestName } from '../issues/nearest-name.ts';
import { workflowIssue } from '../workflow-issue-codes.ts';

export interface GrowingPlace {
  readonly place: GardenPlace;
  readonly ground: GroundClass;
}

export const groundOfPlace = (ground: readonly GroundClass[], place: GardenPlace): GroundClass | undefined =>
  ground.find((g) => g.beds.some((bed) => bed.place === place.id));

export const growsInText = (kind: CropType): string => kind.growsIn.join(', ');

/** The first place where the kind can grow: uncovered ground before the others, which come as the file has them. */
function firstPlace(garden: Garden, kind: CropType, ground: readonly GroundClass[]): GrowingPlace | null {
  const fit = garden.places.flatMap((place): GrowingPlace[] => {
    const own = groundOfPlace(ground, place);
    return own !== undefined && canGrowIn(kind, own) ? [{ place, ground: own }] : [];
  });
  return fit.find(({ ground: own }) => own.growsIn === 'open') ?? fit[0] ?? null;
}

/** The disease on record at a place that forbids the kind's family there, or null. */
export function diseaseAgainst(kind: CropType, ground: GroundClass): string | null {
  if (!ground.bannedFamilies.includes(kind.family)) return null;
  return allFamilies().find((family) => family.id === kind.family)?.recordedDisease ?? null;
}

export interface PlaceAnswer {
  readonly found: GrowingPlace | null;
  readonly issues: readonly Issue[];
}

const refused = (issue: Issue): PlaceAnswer => ({ found: null, issues: [issue] });

export function choosePlace(
  garden: Garden,
  kind: CropType,
  ground: readonly GroundClass[],
  asked: string | null,
): PlaceAnswer {
  if (asked === null) {
    const found = firstPlace(garden, kind, ground);
    if (found !== null) return { found, issues: [] };
    return refused(
      workflowIssue('nowhere-to-grow', 'places', { kind: kind.name, growsIn: growsInText(kind) }),
    );
  }
  const place = garden.places.find((each) => each.id === asked);
  if (place === undefined) {
    const ids = garden.places.map((each) => each.id);
    return refused(gardenIssue('place-unknown', 'place', { found: asked, nearest: nearestName(asked, ids) }));
  }
  const own = groundOfPlace(ground, place);
  if (own === undefined)
    return refused(
      workflowIssue('place-not-for-growing', 'place', { place: place.name, takenBy: place.takenBy ?? '' }),
    );
  if (!kind.growsIn.includes(own.growsIn))
    return refused(
      workflowIssue('place-cannot-carry', 'place', {
        kind: kind.name,
        place: place.name,
        growsIn: growsInText(kind),
      }),
    );
  const disease = diseaseAgainst(kind, own);
  const issues =
    disease === null
      ? []
      : [workflowIssue('disease-on-record', 'place', { kind: kind.name, place: place.name, disease })];
  return { found: { place, ground: own }, issues };
}

/** m² that a bench or all the like places offer, and the plants that they carry. */
export function mostPlants(kind: CropType, { place, ground }: GrowingPlace): number {
  const strips = ground.beds.reduce((sum, bed) => sum + (bed.place === place.id ? bed.stripCount : 0), 0);
  if (ground.stripLitres > 0)
    return strips * Math.floor(ground.stripLitres / Math.max(1, kind.tubLitresPerPlant));
  return Math.floor((strips * ground.stripM2 * 10000) / (kind.inRowCm * kind.betweenRowCm) + 1e-9);
}

/** What one square metre carries, or one tub. */
export function usualCount(kind: CropType, found: GrowingPlace, benches: readonly Bench[]): Outcome<number> {
  const { place, ground } = found;
  if (ground.stripLitres > 0) {
    const plants = Math.floor(ground.stripLitres / Math.max(1, kind.tubLitresPerPlant));
    if (plants > 0) return done(plants);
    return cannot('tub-too-small', { litres: ground.stripLitres, needsLitres: kind.tubLitresPerPlant });
  }
  const bench = ground.bench === null ? undefined : benches.find((b) => b.place === place.id);
  const m2 = Math.min(1, bench?.capacityM2 ?? 1);
  return done(Math.max(1, Math.floor((m2 * 10000) / (kind.inRowCm * kind.betweenRowCm) + 1e-9)));
}
