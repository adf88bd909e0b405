import type { Band } from '@twelvemonth/basis';
import type { ThreeNumbers } from '../forecast/three-numbers.ts';
import type { DayBand, ReportStage } from './plan-report.ts';

/** What `forecast` answers for one sowing or each of a list. */
export interface ForecastReport {
  readonly schemaVersion: 1;
  readonly kind: string;
  readonly kindName: string;
  readonly sow: string;
  readonly place: string;
  readonly route: readonly ReportStage[];
  readonly members: number;
  readonly seed: number;
  readonly count: ThreeNumbers;
  readonly groundM2: number;
  readonly emergence: DayBand;
  /** Of the seed that can germinate, what comes up at the warmth it meets; 1 for sets and the like. */
  readonly germinatingShare: Band;
  readonly plantingOut: DayBand | null;
  readonly firstHarvest: DayBand;
  readonly lastHarvest: DayBand;
  readonly harvests: Readonly<
    Record<string, { readonly first: DayBand; readonly last: DayBand; readonly servings: Band }>
  >;
  readonly boltedShare: Band;
  readonly frostedShare: Band;
  readonly lostShare: Band;
  /** What a legume gives the ground, g of nitrogen a m²: cut at its first flower, and at its own end; null for all else. */
  readonly nitrogenLeft: { readonly atFirstFlowerGPerM2: number; readonly atItsEndGPerM2: Band } | null;
  readonly servingsPerPlant: Band;
  readonly weeks: readonly {
    readonly weekOf: string;
    readonly meanServings: number;
    readonly chanceAny: number;
    readonly cumulative: Band;
  }[];
}

export interface ClimateReport {
  readonly schemaVersion: 1;
  readonly site: string;
  readonly station: string;
  readonly months: readonly {
    /** 1–12 */
    readonly month: number;
    readonly dayLengthHours: number;
    readonly tmaxC: number;
    readonly tminC: number;
    readonly rainMm: number;
    readonly radiationMJPerM2Day: number;
    readonly frostNights: number;
    readonly places: readonly {
      readonly exposure: string;
      readonly placeNames: readonly string[];
      readonly tmaxC: number;
      readonly tminC: number;
      readonly radiationMJPerM2Day: number;
      readonly soilC: number;
      /** Effective day-degrees a day of a cool crop: how fast things grow. */
      readonly growth: number;
      readonly frostNights: number;
    }[];
  }[];
  readonly standstill: { readonly from: string; readonly to: string } | null;
  readonly frost: { readonly lastSpring: DayBand; readonly firstAutumn: DayBand };
}

export interface SeedListLine {
  readonly kind: string;
  readonly kindName: string;
  readonly startsAs: string;
  readonly needCount: number;
  readonly inTinCount: number;
  readonly packets: number;
  /** Kept back from the household's own harvest: nothing is bought. */
  readonly isOwn: boolean;
  readonly packetCount: number;
  readonly orderBy: string;
  readonly firstUse: string;
}
