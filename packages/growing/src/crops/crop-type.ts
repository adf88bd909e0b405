/**
 * A kind: a group of cultivars that behave alike. Every number comes from the sourced tables (tables/*.csv); the
 * names below are the table's parameter names in camel case. "Reference days" are days at the reference light and
 * warmth of the row's kind (`reference-c`, `reference-mj-per-m2-day`): handbook durations in the main season. The
 * engine turns them into sums of effective day-degrees, so that they stretch in winter and shrink in warmth.
 */

export type KitchenRole =
  | 'cooked-greens'
  | 'salad-leaves'
  | 'onions'
  | 'garlic'
  | 'leeks'
  | 'broccoli'
  | 'cabbages'
  | 'sweet-roots'
  | 'potatoes'
  | 'beans-peas'
  | 'summer-fruits'
  | 'herbs'
  | 'stalks';

export type HarvestHabit = 'once' | 'cuts' | 'picks' | 'tips' | 'thinnings' | 'stands';

export type StoreId = 'dry' | 'cool-damp' | 'frost-free' | 'sand' | 'fridge' | 'freezer' | 'jar';

/** Where a kind may end up growing. `sill` and `frame` kinds stay on the bench for life. */
export type GrowsIn = 'open' | 'cover' | 'tub' | 'frame' | 'sill';

/** direct: seed in place · planted: sets, cloves, tubers, crowns in place · module: raised on a bench without heat ·
 * warm: started on a heated mat or warm sill, then bench · tray: stays in its tray (shoots). */
export type RouteId = 'direct' | 'planted' | 'module' | 'warm' | 'tray';

/** raw-beans: pods and seeds are boiled before they are eaten · dried-beans: soaked, and boiled hard in fresh water ·
 * favism: dangerous for people with G6PD deficiency · green-potatoes: green or sprouted tubers · rhubarb-leaves: oxalic acid ·
 * bitter-squash: cucurbitacin · plant-sap: burns the skin in sun · oxalate-leaves: oxalic acid, in quantity. */
export type KindCaution =
  | 'green-potatoes'
  | 'raw-beans'
  | 'dried-beans'
  | 'favism'
  | 'rhubarb-leaves'
  | 'bitter-squash'
  | 'plant-sap'
  | 'oxalate-leaves';

/** How deep the roots reach, and how much of that water is easily had: see places/ground-water.ts. */
export type Rooting = 'shallow' | 'middle' | 'deep';

export interface KeepingRule {
  readonly store: StoreId;
  readonly lifeWeeks: number;
  readonly lossPerWeekShare: number;
  /** Days between lifting and being able to keep (curing); the crop can be eaten meanwhile. */
  readonly cureDays: number;
}

export type StartGate =
  | { readonly gate: 'none' }
  /** Cold units after the juvenile stage, then `afterDays` reference days. */
  | {
      readonly gate: 'cold';
      readonly juvenileDays: number;
      readonly coldCDays: number;
      readonly afterDays: number;
    }
  /** Bulbing: size and day length (rising), then `afterDays` reference days; cloves need cold. */
  | {
      readonly gate: 'day-length';
      readonly dayLengthHours: number;
      /** Reference days from planting before the plant can bulb. */
      readonly juvenileDays: number;
      /** Cold that half of the plants need to divide; 0: none. Those that lack it at midsummer make a round. */
      readonly coldCDays: number;
      readonly coldSpreadShare: number;
      readonly unchilledYieldShare: number;
      readonly afterDays: number;
    }
  /** Perennials: `afterDays` reference days counted from midwinter. */
  | { readonly gate: 'midwinter'; readonly afterDays: number };

export interface Harvest {
  readonly id: string;
  readonly role: KitchenRole;
  readonly habit: HarvestHabit;
  /** Reference days from emergence (from planting for sets), or from the first day of `after`. */
  readonly startDays: number;
  /** Sequence: counted from the first day of this harvest of the same kind; null: from emergence. */
  readonly after: string | null;
  readonly startGate: StartGate;
  /** Longest time from first to last, calendar days. */
  readonly windowDays: number;
  /** once, stands: reference days from the first day until it is past its best (split, woody, run up); null: the window alone. */
  readonly standingDays: number | null;
  /** As harvested, before the cook's waste: whole harvest (once, stands, picks) or first cut (cuts, tips), g a plant. */
  readonly yieldGPerPlant: number;
  readonly yieldLowGPerPlant: number;
  readonly yieldHighGPerPlant: number;
  /** once, stands: reference days from emergence to full size. picks: reference days of picking for the whole yield. */
  readonly fullDays: number;
  /** cuts, tips: reference days between cuts. */
  readonly cutDays: number;
  readonly cutsCount: number;
  /** Each cut gives this share of the one before. */
  readonly cutDecayShare: number;
  /** thinnings: share of the plants taken. */
  readonly thinShare: number;
  readonly edibleShare: number;
  /** Weeks in which it must be eaten once ready (field holding and fridge together); standing crops: 0 = until the end. */
  readonly eatWithinWeeks: number;
  readonly stores: readonly KeepingRule[];
  /** Share of the harvest that plants as much again (cloves, tubers, seed): kept back where the household does so. */
  readonly keptBackShare: number;
  /** Perennials: share of the yield taken in the first, second and third season after planting; all of it from then on. */
  readonly establishingShares: readonly [number, number, number];
  /** The plant is gone after it (roots, heads, bulbs). */
  readonly endsPlant: boolean;
  /** Minimum that spoils half of the harvested part or its flowers, however hard the leaves are; null: as hardy as leaves. */
  readonly partFrostC: number | null;
  /** How long before picking that part stands in the weather, calendar days. */
  readonly partFrostDays: number;
}

/** What a day's mean temperature counts as cold, and what warmth undoes: see growth/cold-units.ts. */
export interface ColdResponse {
  readonly baseC: number;
  readonly optimumC: number;
  readonly maximumC: number;
  readonly undoAboveC: number;
  /** Cold units taken back by a degree above it in a day. */
  readonly undoPerC: number;
}

export interface Bolting {
  readonly mode: 'day-length' | 'cold';
  /** ends: the crop is over · fresh: that share is eaten early and does not keep · lost: that share is lost. */
  readonly effect: 'ends' | 'fresh' | 'lost';
  /** Reference days from emergence (sets: planting) to the end of the juvenile stage, and the spread between plants. */
  readonly juvenileDays: number;
  readonly juvenileSpreadShare: number;
  readonly dayLengthHours: number;
  /** How many reference days sooner a set is past it for each millimetre across. */
  readonly setDaysPerMm: number;
  /** Bigger plants count more of the cold: (size in the middle of it ÷ juvenile size) to this power. */
  readonly sizePower: number;
  /** Balance of cold at which a tenth and nine tenths of the plants run to seed. */
  readonly coldTenthCDays: number;
  readonly coldNineTenthsCDays: number;
  /** Bulbs: a stalk begun later than so many reference days before bulbing is overtaken by the bulb and never rises. */
  readonly beforeBulbingDays: number;
  /** Reference days from the trigger to having run to seed. */
  readonly afterDays: number;
  /** fresh: edible share of a bolted plant's yield. */
  readonly edibleShare: number;
}

export interface CropType {
  readonly id: string;
  readonly crop: string;
  readonly family: string;
  /** Plain words, English. */
  readonly name: string;
  readonly startsAs: 'seed' | 'set' | 'clove' | 'tuber' | 'crown';
  readonly routes: readonly RouteId[];
  readonly growsIn: readonly GrowsIn[];
  /** What can do harm when it is eaten. */
  readonly cautions: readonly KindCaution[];
  readonly perennial: boolean;
  /** Usual size of the set, mm across; 0 where none is planted or size does not count. */
  readonly setAcrossMm: number;

  readonly inRowCm: number;
  readonly betweenRowCm: number;
  readonly tubLitresPerPlant: number;
  /** Seeds at one station (multi-sown clump): a "plant" in this file is a station. */
  readonly stationSeedsCount: number;
  readonly seedsPerG: number;
  readonly packetSeedsCount: number;

  readonly emergenceBaseC: number;
  readonly emergenceSumCDays: number;
  readonly emergenceOptimumC: number;
  /** How far above the optimum the pace holds before it falls towards the ceiling. */
  readonly emergencePlateauC: number;
  readonly emergenceCeilingC: number;
  /** Waits below this soil temperature. */
  readonly emergenceLowestC: number;
  /** Germination that fresh seed is reckoned with, at its best temperature, and the part of it that a garden sees. */
  readonly germinationShare: number;
  readonly fieldShare: number;
  /** Soil temperatures at which no seed comes up for cold, all of it does, all still does, and none does for heat. */
  readonly germinationColdNoneC: number;
  readonly germinationColdFullC: number;
  readonly germinationWarmFullC: number;
  readonly germinationWarmNoneC: number;
  /** Years a packet keeps. */
  readonly seedLifeYears: number;

  readonly growthBaseC: number;
  readonly growthOptimumC: number;
  readonly lightFactor: number;
  readonly lightCompensationMJPerM2Day: number;
  readonly referenceC: number;
  readonly referenceMJPerM2Day: number;
  /** Standard deviation of the unknown pace, share of the target. */
  readonly paceSpreadShare: number;

  /** Reference days from emergence to a plant fit to set out; 0: never raised. */
  readonly raisingDays: number;
  /** Bench space a plant needs while raised, and in a bigger pot afterwards. */
  readonly moduleM2PerPlant: number;
  readonly potM2PerPlant: number;
  /** Reference days of growth that a 9 cm pot carries beyond the size fit to set out; then growth stops. */
  readonly potRoomDays: number;
  /** Yield lost per reference day of growth that the pot withheld: pot-bound plants, and buttons of brassica heads. */
  readonly rootboundLossPerDayShare: number;
  readonly buttoningLossPerDayShare: number;
  /** Part of the crop lost where plants are all stem. */
  readonly leggyLossShare: number;
  /** Reference days from emergence to the first open flower; 0: nobody asks when it flowers. */
  readonly floweringDays: number;
  /** Growth lost by setting out, calendar days at ordinary planting times. */
  readonly plantingCheckDays: number;
  readonly raisingLossShare: number;
  readonly growingLossShare: number;

  /** When sets, cloves and tubers can be had, northern days of the year (may run over New Year). */
  readonly stockFromDayOfYear: number;
  readonly stockToDayOfYear: number;

  /** Leaf kills half of the plants at this minimum, soft and fully hardened. */
  readonly frostSoftC: number;
  readonly frostHardenedC: number;
  /** How much colder it may be for the same loss under a rigid cover (dry leaves, no wind), and under a night's fleece. */
  readonly frostCoverGainC: number;
  readonly frostFleeceGainC: number;
  /** Seedlings die at a minimum so much higher, until so many reference days from emergence. */
  readonly frostYoungC: number;
  readonly frostYoungDays: number;
  /** Share of the yield still had from plants cut down by frost, as they shoot again. */
  readonly frostRegrowthShare: number;
  readonly rooting: Rooting;
  /** Nitrogen that a legume gives the ground, cut at its first flower and after its last picking; 0: no legume. */
  readonly nitrogenAtFlowerGPerM2: number;
  readonly nitrogenAfterHarvestGPerM2: number;
  /** Share of plants (or yield) lost in an open windy place: broken, rocked, torn. */
  readonly windLossShare: number;
  /** Bulbing goes faster in bigger plants: days behind the gate × (planting-size sum ÷ size at the gate) to this power. */
  readonly bulbingSizePower: number;

  /** Reads for running to seed, for heads that need a winter, and for bulbs that do. */
  readonly cold: ColdResponse;
  readonly bolting: Bolting | null;
  readonly harvests: readonly Harvest[];

  /** Weeding against that of ordinary rows (tables/work.csv): less where leaves shade the ground. */
  readonly weedShare: number;
  /** Tying and side shoots while it stands; canes, strings and earthing up, once. */
  readonly tendingMinutesPerM2Week: number;
  readonly supportMinutesPerM2: number;
  readonly pickMinutesPerKg: number;
  readonly smallestBatchM2: number;

  /** Compost spread before it is sown or planted, litres. */
  readonly compostLPerM2: number;
  /** What ground that was fed in the same half year does to it. */
  readonly freshManure: 'likes' | 'bears' | 'spoils';
  /** Acid ground is limed before it. */
  readonly limeBefore: boolean;
  readonly canesPerM2: number;

  /** Crops that may be planted between it in so many of its last weeks, on the share of strips released by then. */
  readonly guestCrops: readonly string[];
  readonly guestWeeks: number;
  /** How long leaves that nobody cuts stay good on the plant. */
  readonly uncutWeeks: number;
  /** How much cooler than its seed asks the ground may be for a plant that never hardens. */
  readonly groundBelowSeedC: number;
  readonly guestShare: number;
}

export interface Hazard {
  readonly id: string;
  /** Crops that it hits (crop ids). */
  readonly crops: readonly string[];
  /** season: between the two days of the year (northern; southern sites shift by half a year) ·
   * blight: from the first blight spell of the member's weather within the same window. */
  readonly trigger: 'season' | 'blight';
  readonly fromDayOfYear: number;
  /** blight: spells before this day infect in bad years only. */
  readonly ordinaryYearFromDayOfYear: number;
  readonly toDayOfYear: number;
  /** young: the first `youngDays` after emergence or planting only; any: whenever it stands. */
  readonly stage: 'young' | 'any';
  readonly youngDays: number;
  /** Share lost over a whole window spent in it, ordinary and bad years. */
  readonly lossShare: number;
  readonly badYearLossShare: number;
  readonly badYearProb: number;
  /** Hazards of one group share their bad years. */
  readonly group: string;
  /** Kit that prevents it, or null. */
  readonly preventedBy: 'mesh' | 'net' | 'fleece' | null;
  readonly preventedShare: number;
  /** Factor under cover. */
  readonly underCoverShare: number;
}

export interface RoleRow {
  readonly id: KitchenRole;
  readonly name: string;
  readonly servingG: number;
  /** Weight of a missing serving against another role's. */
  readonly weight: number;
  /** Servings a week an adult eats, by month, northern months January first (shifted for the south). */
  readonly servingsPerWeekByMonth: readonly number[];
  /** Stands in for another role: exchange in servings, and the most of a week's appetite it may cover. */
  readonly substitutes: readonly {
    readonly role: KitchenRole;
    readonly exchange: number;
    readonly mostShare: number;
  }[];
}

export interface CalendarRow {
  readonly kind: string;
  readonly route: RouteId;
  readonly growsIn: GrowsIn;
  /** Published window, northern days of the year. */
  readonly sowFromDayOfYear: number;
  readonly sowToDayOfYear: number;
  readonly harvestFromDayOfYear: number;
  readonly harvestToDayOfYear: number;
}

export interface FamilyRow {
  readonly id: string;
  readonly restYears: number;
  /** Disease on record that makes the rest a must ('clubroot'), or null. */
  readonly recordedDisease: string | null;
  /** Weighted servings that a square metre costs when the family comes back the very next year, in proportion less
   * after part of its rest: nothing on record, and where its disease is on record and it is grown all the same. */
  readonly breakPriceServingsPerM2: number;
  readonly recordedBreakPriceServingsPerM2: number;
  /** Families after which it does well. */
  readonly followsWell: readonly string[];
}

/** One line of a table as it stands in the file: what `kinds ID` shows. */
export interface TableRow {
  readonly subject: string;
  readonly parameter: string;
  readonly value: string;
  readonly low: string;
  readonly high: string;
  readonly unit: string;
  readonly source: string;
  readonly locator: string;
  readonly basis: string;
  readonly validFor: string;
  readonly note: string;
}
