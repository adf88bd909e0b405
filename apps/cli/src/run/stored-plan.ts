import { dirname, join } from 'node:path';
import type { Garden } from '@twelvemonth/garden';
import type { PlanReport } from '@twelvemonth/workflows';
import { CliFailure } from './cli-failure.ts';
import { changedAtMs, isFolder, readTextFile } from './files.ts';
import type { Terminal } from './terminal.ts';

/** A plan is named by its file or by the folder that `--out` filled. */
export const planPathOf = (path: string): string => (isFolder(path) ? join(path, 'plan.json') : path);

/** A plan.json that somebody gives is data from outside: checked before any sheet believes it. */
export async function readStoredPlan(path: string): Promise<PlanReport> {
  const text = readTextFile(path, 'plan');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new CliFailure(
      `${path}: this is not a whole JSON file. Make the plan again with: twelvemonth plan FILE --out DIR`,
    );
  }
  const { planSchema } = await import('../schema/plan-schema.ts');
  const checked = planSchema.safeParse(value);
  if (checked.success) return checked.data;
  const first = checked.error.issues[0];
  const where = first === undefined ? '' : ` (at ${first.path.join('.') || 'the top'}: ${first.message})`;
  throw new CliFailure(
    `${path}: this is not a plan of this program${where}. Make it again with: twelvemonth plan FILE --out DIR`,
  );
}

/** The plan.json beside the garden file, if it is newer than the garden and of the same household. */
export async function planBeside(
  gardenFile: string,
  garden: Garden,
  terminal: Terminal,
): Promise<PlanReport | null> {
  const path = join(dirname(gardenFile), 'plan.json');
  const [planAt, gardenAt] = [changedAtMs(path), changedAtMs(gardenFile)];
  if (planAt === null || gardenAt === null || planAt < gardenAt) return null;
  const report = await readStoredPlan(path).catch(() => null);
  const same = report?.garden.household === garden.household.name && report.garden.site === garden.site.name;
  if (!same) return null;
  terminal.say(`Using the plan in ${path}.`);
  return report;
}
