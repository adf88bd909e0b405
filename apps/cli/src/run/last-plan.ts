import { dirname, join } from 'node:path';
import type { Garden } from '@twelvemonth/garden';
import { nearestName, type PlanReport, type ReportSowing } from '@twelvemonth/workflows';
import {
  noLastPlanText,
  notDueText,
  otherGardensPlanText,
  unknownSowingText,
} from '../words/replan-words.ts';
import { CliFailure } from './cli-failure.ts';
import { changedAtMs } from './files.ts';
import { planPathOf, readStoredPlan } from './stored-plan.ts';

/** The plan to go on from: the one named, else the plan.json beside the garden file, however old. */
export async function lastPlanOf(
  gardenFile: string,
  garden: Garden,
  named: string | undefined,
): Promise<PlanReport> {
  const path = named === undefined ? join(dirname(gardenFile), 'plan.json') : planPathOf(named);
  if (named === undefined && changedAtMs(path) === null)
    throw new CliFailure(noLastPlanText(gardenFile, path));
  const report = await readStoredPlan(path);
  if (report.garden.household !== garden.household.name || report.garden.site !== garden.site.name)
    throw new CliFailure(otherGardensPlanText(path, report.garden.household, garden.household.name));
  return report;
}

/** Ids of sowings named by id or by the number on their label: "12,15,leek-k3f9q2". */
export function sowingsNamed(report: PlanReport, text: string | undefined, from: string): string[] {
  const names = (text ?? '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  return names.map((name) => {
    const found = report.sowings.find((s: ReportSowing) => s.id === name || String(s.number) === name);
    if (found === undefined) {
      const ids = report.sowings.map((s) => s.id);
      throw new CliFailure(unknownSowingText(name, nearestName(name, ids)), 2);
    }
    if (found.sow >= from) throw new CliFailure(notDueText(found.kindName, found.number, found.sow, from), 2);
    return found.id;
  });
}
