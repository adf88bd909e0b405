import type { Day } from '@twelvemonth/basis';

export type CoverMaterial =
  | 'open'
  | 'fleece'
  | 'cloche'
  | 'cold-frame'
  | 'polytunnel'
  | 'glass'
  | 'windowsill'
  | 'heated-mat';

/** This tunnel, that frame: owns its material, age, venting, thermometer offset. `open` is the uncovered ground. */
export interface CoverInstance {
  readonly id: string;
  readonly material: CoverMaterial;
  readonly ageYears: number;
  /** Air temperature above which it is vented; null where the material's usual value holds. */
  readonly ventAboveC: number | null;
  /** Which way a window faces (windowsill only). */
  readonly faces: 'south' | 'east' | 'west' | 'north' | null;
}

/** What decides the weather of a place beside the sky: places that share an exposure share one place weather. */
export interface Exposure {
  readonly cover: CoverInstance;
  readonly winterSun: 'all' | 'half' | 'none';
  readonly aspect: 'flat' | 'south' | 'east' | 'west' | 'north';
  readonly frostPocket: boolean;
  readonly wet: boolean;
  readonly windy: boolean;
  /** Water at hand (or under cover, where somebody waters). */
  readonly watered: boolean;
}

/** The plant's weather in one place in one member: one value a day, same days as the outdoor weather. */
export interface PlaceWeather {
  readonly startDay: Day;
  readonly tmaxC: Float64Array;
  readonly tminC: Float64Array;
  /** Light that reaches the plants, MJ/m²/day. */
  readonly radiationMJPerM2Day: Float64Array;
  /** Seven-day trailing mean of the same. */
  readonly radiation7MJPerM2Day: Float64Array;
  /** Daily mean soil (or compost) temperature at sowing depth (about 3 cm). */
  readonly soilC: Float64Array;
  /** 1 = no shortage of water, towards 0 = growth stopped by drought (FAO-56 Ks): shallow roots and seedbeds. */
  readonly waterShare: Float64Array;
  /** The same for roots of middle depth, and for deep ones; where nothing is short, the same array. */
  readonly middleWaterShare: Float64Array;
  readonly deepWaterShare: Float64Array;
  /** 0 = soft, 1 = fully hardened, from the running mean minimum (Tamura). */
  readonly hardenedShare: Float64Array;
  /** For each day the first day from it on when the ground is neither frozen nor waterlogged (absolute Day). */
  readonly workableDay: Int32Array;
}
