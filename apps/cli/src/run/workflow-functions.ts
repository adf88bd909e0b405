import type * as workflows from '@twelvemonth/workflows';
import { CliFailure } from './cli-failure.ts';

/** What the command line asks of the workflows. */
export type WorkflowFunctions = Pick<
  typeof workflows,
  | 'planGarden'
  | 'comparePlans'
  | 'forecastGarden'
  | 'climateOfGarden'
  | 'seedListOf'
  | 'issuesOfGarden'
  | 'kindOf'
  | 'kindsOf'
  | 'ownRowsOf'
  | 'whatIfGarden'
  | 'openPlan'
  | 'explainSowing'
  | 'explainWeek'
  | 'slotsFor'
>;

/** Loaded when needed: help and usage errors do not wait for the engine. */
export async function workflowFunction<Name extends keyof WorkflowFunctions>(
  name: Name,
): Promise<WorkflowFunctions[Name]> {
  const all: Partial<WorkflowFunctions> = await import('@twelvemonth/workflows');
  const found = all[name];
  if (found === undefined) throw new CliFailure(`This build has no ${name} yet.`);
  return found;
}
