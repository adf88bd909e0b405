import type { Outcome } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather } from '@twelvemonth/growing';
import type { PlanOptions, PlanProgress, PlanReport } from '@twelvemonth/workflows';

/** What goes to the planning thread and what comes back. */
export interface PlanTask {
  readonly garden: Garden;
  readonly options: PlanOptions;
  readonly daily: DailyWeather | null;
  /** One 32-bit number: not 0 when a stop was asked for. */
  readonly stopBuffer: SharedArrayBuffer;
}

export type PlanMessage =
  | { readonly kind: 'progress'; readonly progress: PlanProgress; readonly seconds: number }
  | { readonly kind: 'answer'; readonly outcome: Outcome<PlanReport> }
  | { readonly kind: 'failed'; readonly sentence: string; readonly stack: string };
