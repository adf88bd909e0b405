import type { Issue, Outcome } from '@twelvemonth/basis';
import type { Garden } from '@twelvemonth/garden';
import type { DailyWeather } from '@twelvemonth/growing';
import type {
  ClimateReport,
  ForecastReport,
  PlanOptions,
  PlanPorts,
  PlanReport,
  SeedListLine,
} from '@twelvemonth/workflows';
import { CliFailure } from './cli-failure.ts';

export interface ForecastRequest {
  readonly kind: string;
  readonly sowDay: number;
  readonly route: string | null;
  readonly place: string | null;
  readonly count: number | null;
  readonly memberCount: number;
  readonly seed: number;
}

/** What the command line asks of the workflows. */
export interface WorkflowFunctions {
  planGarden(
    garden: Garden,
    options: PlanOptions,
    ports: PlanPorts,
    daily: DailyWeather | null,
  ): Promise<Outcome<PlanReport>>;
  forecastGarden(
    garden: Garden,
    request: ForecastRequest,
    daily: DailyWeather | null,
  ): { readonly report: ForecastReport | null; readonly issues: readonly Issue[] };
  climateOfGarden(
    garden: Garden,
    request: { readonly memberCount: number; readonly seed: number; readonly fromDay: number },
    daily: DailyWeather | null,
  ): ClimateReport;
  seedListOf(report: PlanReport, garden: Garden): readonly SeedListLine[];
  issuesOfGarden(garden: Garden, fromDay: number): readonly Issue[];
}

/** Loaded when needed: help and usage errors do not wait for the engine. */
export async function workflowFunction<Name extends keyof WorkflowFunctions>(
  name: Name,
): Promise<WorkflowFunctions[Name]> {
  const all: object = await import('@twelvemonth/workflows');
  const found = (all as Partial<WorkflowFunctions>)[name];
  if (found === undefined) throw new CliFailure(`This build has no ${name} yet.`);
  return found;
}
