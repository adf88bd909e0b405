import type { Issue } from '@twelvemonth/basis';
import { assembleBolting, assembleCold } from './assemble-bolting.ts';
import { assembleHarvests } from './assemble-harvests.ts';
import type { CropType, GrowsIn, KindCaution, Rooting, RouteId, TableRow } from './crop-type.ts';
import { TableReader } from './table-reader.ts';
import type { ParameterSpecs } from './table-types.ts';

export interface AssembledKind {
  readonly kind: CropType;
  /** Not empty: the kind is not fit for use. */
  readonly issues: readonly Issue[];
  /** Names of the parameters that were asked for, with placeholders. */
  readonly asked: ReadonlySet<string>;
}

function complainOfDisorder(kind: CropType, read: TableReader): void {
  const { startsAs, emergenceBaseC, emergenceOptimumC, emergencePlateauC, emergenceCeilingC } = kind;
  const emergesInOrder =
    emergenceBaseC < emergenceOptimumC && emergenceOptimumC + emergencePlateauC < emergenceCeilingC;
  if (startsAs === 'seed' && !emergesInOrder)
    read.complain('table.temperatures-disordered', 'emergence-optimum-c');
  const germinatesInOrder =
    kind.germinationColdNoneC < kind.germinationColdFullC &&
    kind.germinationColdFullC <= kind.germinationWarmFullC &&
    kind.germinationWarmFullC < kind.germinationWarmNoneC;
  if (!germinatesInOrder) read.complain('table.temperatures-disordered', 'germination-warm-full-c');
  if (kind.growthBaseC >= kind.growthOptimumC)
    read.complain('table.temperatures-disordered', 'growth-optimum-c');
  if (kind.frostHardenedC > kind.frostSoftC)
    read.complain('table.temperatures-disordered', 'frost-hardened-c');
}

/** Builds a kind from its effective rows (kind over crop over family over `*`). */
export function assembleKind(
  id: string,
  rows: ReadonlyMap<string, TableRow>,
  specs: ParameterSpecs,
): AssembledKind {
  const read = new TableReader(`kind:${id}`, rows, specs);
  const harvests = assembleHarvests(read);
  const cold = assembleCold(read);
  const kind: CropType = {
    id,
    crop: read.text('crop'),
    family: read.text('family'),
    name: read.text('name'),
    startsAs: read.text('starts-as') as CropType['startsAs'],
    routes: read.list('routes') as RouteId[],
    growsIn: read.list('grows-in') as GrowsIn[],
    cautions: read.list('cautions') as KindCaution[],
    perennial: read.yes('perennial'),
    rooting: read.text('rooting') as Rooting,
    setAcrossMm: read.number('set-across-mm'),
    inRowCm: read.number('in-row-cm'),
    betweenRowCm: read.number('between-row-cm'),
    tubLitresPerPlant: read.number('tub-litres-per-plant'),
    stationSeedsCount: read.number('station-seeds-count'),
    seedsPerG: read.number('seeds-per-g'),
    packetSeedsCount: read.number('packet-seeds-count'),
    emergenceBaseC: read.number('emergence-base-c'),
    emergenceSumCDays: read.number('emergence-sum-c-days'),
    emergenceOptimumC: read.number('emergence-optimum-c'),
    emergencePlateauC: read.number('emergence-plateau-c'),
    emergenceCeilingC: read.number('emergence-ceiling-c'),
    emergenceLowestC: read.number('emergence-lowest-c'),
    germinationShare: read.number('germination-share'),
    fieldShare: read.number('field-share'),
    germinationColdNoneC: read.number('germination-cold-none-c'),
    germinationColdFullC: read.number('germination-cold-full-c'),
    germinationWarmFullC: read.number('germination-warm-full-c'),
    germinationWarmNoneC: read.number('germination-warm-none-c'),
    seedLifeYears: read.number('seed-life-years'),
    growthBaseC: read.number('growth-base-c'),
    growthOptimumC: read.number('growth-optimum-c'),
    lightFactor: read.number('light-factor'),
    lightCompensationMJPerM2Day: read.number('light-compensation-mj-per-m2-day'),
    referenceC: read.number('reference-c'),
    referenceMJPerM2Day: read.number('reference-mj-per-m2-day'),
    paceSpreadShare: read.number('pace-spread-share'),
    raisingDays: read.number('raising-days'),
    moduleM2PerPlant: read.number('module-m2-per-plant'),
    potM2PerPlant: read.number('pot-m2-per-plant'),
    potRoomDays: read.number('pot-room-days'),
    rootboundLossPerDayShare: read.number('rootbound-loss-per-day-share'),
    buttoningLossPerDayShare: read.number('buttoning-loss-per-day-share'),
    leggyLossShare: read.number('leggy-loss-share'),
    nitrogenAtFlowerGPerM2: read.number('nitrogen-at-flower-g-per-m2'),
    nitrogenAfterHarvestGPerM2: read.number('nitrogen-after-harvest-g-per-m2'),
    floweringDays: read.number('flowering-days'),
    plantingCheckDays: read.number('planting-check-days'),
    raisingLossShare: read.number('raising-loss-share'),
    growingLossShare: read.number('growing-loss-share'),
    frostSoftC: read.number('frost-soft-c'),
    frostHardenedC: read.number('frost-hardened-c'),
    stockFromDayOfYear: read.number('stock-from-day-of-year'),
    stockToDayOfYear: read.number('stock-to-day-of-year'),
    frostCoverGainC: read.number('frost-cover-gain-c'),
    frostFleeceGainC: read.number('frost-fleece-gain-c'),
    frostYoungC: read.number('frost-young-c'),
    frostYoungDays: read.number('frost-young-days'),
    frostRegrowthShare: read.number('frost-regrowth-share'),
    windLossShare: read.number('wind-loss-share'),
    bulbingSizePower: read.number('bulbing-size-power'),
    cold,
    bolting: assembleBolting(read, cold, harvests),
    harvests,
    weedShare: read.number('weed-share'),
    tendingMinutesPerM2Week: read.number('tending-minutes-per-m2-week'),
    supportMinutesPerM2: read.number('support-minutes-per-m2'),
    pickMinutesPerKg: read.number('pick-minutes-per-kg'),
    smallestBatchM2: read.number('smallest-batch-m2'),
    compostLPerM2: read.number('compost-l-per-m2'),
    freshManure: read.text('fresh-manure') as CropType['freshManure'],
    limeBefore: read.yes('lime-before'),
    canesPerM2: read.number('canes-per-m2'),
    guestCrops: read.list('guest-crops').filter((crop) => crop !== 'none'),
    uncutWeeks: read.number('uncut-weeks'),
    groundBelowSeedC: read.number('ground-below-seed-c'),
    guestWeeks: read.number('guest-weeks'),
    guestShare: read.number('guest-share'),
  };
  if (read.issues.length === 0) complainOfDisorder(kind, read);
  return { kind, issues: read.issues, asked: read.asked };
}
