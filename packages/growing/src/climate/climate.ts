import type { Day } from '@twelvemonth/basis';

/** Where the garden is. South is negative latitude, west negative longitude. */
export interface Site {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** True where the sea keeps the daily range small: chooses the coastal coefficient of the radiation estimate. */
  readonly coastal: boolean;
}

/** Twelve monthly normals, January first. Sunshine, radiation, wet days and wind may be unknown (null). */
export interface MonthlyNormals {
  readonly tmaxC: readonly number[];
  readonly tminC: readonly number[];
  readonly rainMm: readonly number[];
  readonly sunHours: readonly (number | null)[];
  readonly radiationMJPerM2Day: readonly (number | null)[];
  readonly wetDaysCount: readonly (number | null)[];
}

/** One value a day from `startDay` on, without gaps: every array has the same length. Day = local calendar day. */
export interface DailyWeather {
  readonly startDay: Day;
  readonly tmaxC: Float64Array;
  readonly tminC: Float64Array;
  readonly rainMm: Float64Array;
  readonly radiationMJPerM2Day: Float64Array;
}

export type ClimateSource =
  | { readonly kind: 'normals'; readonly normals: MonthlyNormals }
  | { readonly kind: 'daily'; readonly record: DailyWeather };

/** Which weather years: `plan` and `check` never share a draw (from daily records: they use disjoint years). */
export type MemberPurpose = 'plan' | 'check';

export interface WeatherMembersRequest {
  readonly site: Site;
  readonly source: ClimateSource;
  readonly seed: number;
  readonly purpose: MemberPurpose;
  readonly memberCount: number;
  readonly startDay: Day;
  readonly dayCount: number;
}
