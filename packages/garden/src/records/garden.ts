import type { Day } from '@twelvemonth/basis';

/**
 * What a household said about itself, its site, its ground, its stock. Read from a garden file (file/), never
 * computed. Kind ids, role ids and store ids are plain text here: whether they exist is checked in workflows,
 * which knows the catalogue.
 */

/** A day that people may know only roughly: "April" is 1–30 April. Both ends inclusive. */
export interface VagueDay {
  readonly fromDay: Day;
  readonly toDay: Day;
}

/** An amount that people may know only roughly: "about 40" is 32–48 around 40. */
export interface VagueAmount {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface Person {
  readonly name: string;
  /** Share of an adult's helping, by role; `other` is the share for roles that are not named. */
  readonly eaterShare: Readonly<Record<string, number>>;
}

export type CoverWish = 'all' | 'some' | 'none';

export interface RoleAppetite {
  readonly role: string;
  /** Adult servings a week an adult would eat, twelve monthly values, January first. */
  readonly servingsPerWeekByMonth: readonly number[];
  /** What of it the garden is to cover. `none`: bought. */
  readonly cover: CoverWish;
  /** Share bought on purpose, 0–1, beside what the garden is to cover. */
  readonly boughtShare: number;
  /** At most so many servings of the role a week from one and the same kind; null = no cap. */
  readonly sameKindCapPerWeek: number | null;
}

/** Nobody of the household is there, both ends inclusive. */
export interface WeeksAway {
  readonly fromDay: Day;
  readonly toDay: Day;
  /** Somebody picks what is ready, for themselves. */
  readonly neighbourPicks: boolean;
  /** Somebody waters tubs, trays and what is under cover. */
  readonly neighbourWaters: boolean;
}

export interface Household {
  readonly name: string;
  readonly people: readonly Person[];
  readonly appetite: readonly RoleAppetite[];
  /** Yearly wishes in pieces: 120 garlic, 60 leeks. */
  readonly yearly: readonly { readonly kind: string; readonly count: number }[];
  readonly dislikes: readonly string[];
  readonly weeksAway: readonly WeeksAway[];
}

export type GardenClimate =
  | { readonly kind: 'station'; readonly station: string }
  | {
      readonly kind: 'normals';
      readonly months: readonly {
        readonly tmaxC: number;
        readonly tminC: number;
        readonly rainMm: number;
        readonly sunHours: number | null;
        readonly radiationMJPerM2Day: number | null;
        readonly wetDaysCount: number | null;
      }[];
    }
  | { readonly kind: 'daily-csv'; readonly path: string };

export interface GardenSite {
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly coastal: boolean;
  readonly climate: GardenClimate;
}

export interface GardenCover {
  readonly id: string;
  readonly name: string;
  readonly material:
    | 'fleece'
    | 'cloche'
    | 'cold-frame'
    | 'polytunnel'
    | 'glass'
    | 'windowsill'
    | 'heated-mat';
  readonly ageYears: number;
  readonly ventAboveC: number | null;
  readonly faces: 'south' | 'east' | 'west' | 'north' | null;
}

/** A bed, a row of tubs, a bench, a sill. `count` like places in one line ("14 beds like this one"). */
export interface GardenPlace {
  readonly id: string;
  readonly name: string;
  readonly use: 'bed' | 'tub' | 'bench';
  readonly count: number;
  /** id of a cover, or null for uncovered ground. */
  readonly cover: string | null;
  /** Beds: length and width. Benches: the same. Tubs: null, see litres. */
  readonly lengthM: number | null;
  readonly widthM: number | null;
  readonly litres: number | null;
  /** Benches: how many trays (0.2 m² each) it holds; null: from length and width. */
  readonly traysCount: number | null;
  readonly winterSun: 'all' | 'half' | 'none';
  readonly aspect: 'flat' | 'south' | 'east' | 'west' | 'north';
  readonly frostPocket: boolean;
  readonly wet: boolean;
  readonly windy: boolean;
  readonly watered: boolean;
  readonly visitsPerWeek: number;
  /** Where it is for the sheets: 'home', 'allotment'. */
  readonly area: string;
  /** Facts on record: 'clubroot', 'white-rot'. */
  readonly onRecord: readonly string[];
  /** Of these: diseases whose families are grown all the same, at a steep price; the others are banned. */
  readonly growAnyway: readonly string[];
  /** Planted here in earlier years and gone; `number` 1-based, null: in all of the like places. */
  readonly grewBefore: readonly {
    readonly kind: string;
    readonly year: number;
    readonly number: number | null;
  }[];
  /** Ground that is not for vegetables between these days or for ever (fruit, a path, resting). */
  readonly takenBy: string | null;
}

/** What already grows. Enters at its own stage. */
export interface StandingSowing {
  readonly id: string;
  readonly kind: string;
  /** Place id, and which of its like places (1-based); null: anywhere among them. */
  readonly place: string;
  readonly placeNumber: number | null;
  readonly count: VagueAmount;
  /** Sown, planted, or bought: whichever is known. */
  readonly sown: VagueDay | null;
  readonly planted: VagueDay | null;
  /** Ground it takes, m²; null: from count and spacing. */
  readonly groundM2: number | null;
  /** It may be cleared from this day on if something better comes; null: when it is finished. */
  readonly mayClearFrom: Day | null;
  readonly note: string;
  /** Where it is to be planted when it is still raised on a bench. */
  readonly plantInto: string | null;
}

export interface StockEntry {
  readonly id: string;
  readonly kind: string;
  /** Grams as stored. */
  readonly amountG: VagueAmount;
  readonly store: string;
  /** Grams of it that are not for eating: cloves, tubers, beans kept for planting. */
  readonly keepBackG: number;
  readonly since: VagueDay | null;
  readonly note: string;
}

export interface GardenStore {
  /** One of the catalogue's keeping places: 'dry', 'cool-damp', 'frost-free', 'sand', 'fridge', 'freezer'. */
  readonly store: string;
  readonly capacityKg: number | null;
}

/** Seed in the tin. */
export interface SeedEntry {
  readonly kind: string;
  readonly seedsCount: number;
  readonly packedYear: number | null;
}

/** A kind that the household described itself, mostly from a seed packet: like another one, but. */
export interface OwnKindEntry {
  readonly id: string;
  /** Kind of the catalogue that it behaves like. */
  readonly like: string;
  readonly name: string;
  /** Days to the first harvest as printed; null: as the parent. */
  readonly packetDays: number | null;
  readonly countedFrom: 'sowing' | 'planting';
  readonly inRowCm: number | null;
  readonly rowCm: number | null;
  /** Further values by the tables' parameter names. */
  readonly changes: Readonly<
    Record<string, number | string | { readonly value: number; readonly low: number; readonly high: number }>
  >;
  readonly note: string;
}

export type Wish =
  | { readonly wish: 'forbid'; readonly kind: string }
  | { readonly wish: 'at-least'; readonly kind: string; readonly plantsCount: number }
  | { readonly wish: 'at-most'; readonly kind: string; readonly plantsCount: number }
  | {
      readonly wish: 'firm';
      readonly id: string;
      readonly kind: string;
      readonly place: string;
      readonly sowDay: Day;
      readonly plantsCount: number;
      readonly route: string | null;
    }
  | {
      readonly wish: 'rest';
      readonly place: string;
      /** Which of the like places; null: all of them. */
      readonly placeNumber: number | null;
      readonly fromDay: Day;
      /** Inclusive; null: for good. */
      readonly toDay: Day | null;
    }
  /** Nothing is sown or planted out; harvest goes on. Both ends inclusive. */
  | { readonly wish: 'no-planting'; readonly fromDay: Day; readonly toDay: Day };

export interface Garden {
  readonly schemaVersion: 1;
  /** The file says so when everything in it is invented. */
  readonly invented: boolean;
  readonly household: Household;
  readonly site: GardenSite;
  readonly covers: readonly GardenCover[];
  readonly places: readonly GardenPlace[];
  readonly kit: {
    readonly fleeceM: number;
    readonly meshM: number;
    readonly netM: number;
    readonly cloches: number;
    readonly canes: number;
  };
  readonly stores: readonly GardenStore[];
  readonly standing: readonly StandingSowing[];
  readonly stock: readonly StockEntry[];
  readonly seeds: readonly SeedEntry[];
  readonly ownKinds: readonly OwnKindEntry[];
  readonly wishes: readonly Wish[];
  /** Kinds of which the household keeps seed, cloves or tubers for the next planting. */
  readonly savesSeedOf: readonly string[];
  readonly planFrom: Day | null;
  /** Hours a week that people have for the garden, twelve months, January first; null: not limited. */
  readonly hoursPerWeekByMonth: readonly (number | null)[];
}
