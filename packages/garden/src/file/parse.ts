import { type Day, dayFromIso, type Issue } from '@twelvemonth/basis';
import { newestSchemaVersion, schemaVersionOf } from '../migrate/schema-version.ts';
import type { Garden } from '../records/garden.ts';
import { checkGarden } from './check-garden.ts';
import { type Report, shown } from './issue-codes.ts';
import { issueList } from './issue-list.ts';
import { valueWithKnownKeys } from './known-keys.ts';
import { readCovers, readOwnKinds, readPlaces, readSeeds, readStanding, readStock } from './read-growing.ts';
import { hoursByMonth } from './read-hands.ts';
import { readHousehold } from './read-household.ts';
import { readSite } from './read-site.ts';
import { type ReadText, readText } from './read-text.ts';
import { readWishes } from './read-wishes.ts';
import type { Reading } from './reading.ts';
import { type WrittenGarden, writtenGarden } from './schema.ts';
import { reportSchemaIssue } from './schema-issues.ts';

export interface ParsedGarden {
  /** Null exactly when some issue is an error. */
  readonly garden: Garden | null;
  readonly issues: readonly Issue[];
}

export interface ParseContext {
  /** Stands in where the file has no planFrom. */
  readonly today: Day;
  /** The day that is planned from when it is not the file's: what stands may have been begun until then. */
  readonly from?: Day | null;
}

/** A garden file's text to records. Never throws. */
export function parseGarden(text: string, context: ParseContext): ParsedGarden {
  const read = readText(text);
  if ('refused' in read) return { garden: null, issues: [read.refused] };
  const found = issueList(read.where);
  const written = readWritten(read, found.report);
  const garden = written === null ? null : gardenOf(written, context, found.report);
  return { garden: found.failed() ? null : garden, issues: found.issues() };
}

function readWritten(read: ReadText, report: Report): WrittenGarden | null {
  const { root } = read;
  if (root.type !== 'object') {
    report('file-not-a-garden', [], { found: root.type });
    return null;
  }
  const topKeys = Object.fromEntries(
    (root.children ?? []).map(({ children }) => [
      String(children?.[0]?.value),
      children?.[1]?.value as unknown,
    ]),
  );
  const version = schemaVersionOf(topKeys);
  if (version.kind === 'cannot') {
    const found = shown(topKeys.schemaVersion);
    if (version.reason === 'version-missing') report('version-missing', [], { assumed: newestSchemaVersion });
    else if (version.reason === 'newer-version') {
      report('newer-version', ['schemaVersion'], { found, newest: newestSchemaVersion });
      return null;
    } else {
      report('version-not-understood', ['schemaVersion'], { found });
      return null;
    }
  }
  const value = valueWithKnownKeys(root, writtenGarden, [], report);
  const parsed = writtenGarden.safeParse(value);
  if (parsed.success) return parsed.data;
  for (const found of parsed.error.issues) reportSchemaIssue(found, value, [], report);
  return null;
}

function gardenOf(written: WrittenGarden, { today, from }: ParseContext, report: Report): Garden | null {
  const planFrom = written.planFrom === null ? null : dayFromIso(written.planFrom);
  if (written.planFrom !== null && planFrom === null) {
    const shape = /^\d{4}-\d{2}-\d{2}$/.test(written.planFrom) ? 'date-impossible' : 'date-not-exact';
    report(shape, ['planFrom'], { found: shown(written.planFrom) });
  }
  const reference = planFrom ?? today;
  const latest = Math.max(reference, from ?? reference);
  const reading: Reading = { report, reference, latest, southern: written.site.latitude < 0 };
  const household = readHousehold(written.household, reading);
  const site = readSite(written.site, report);
  const places = readPlaces(written, reading);
  const standing = readStanding(written, reading);
  const stock = readStock(written, reading);
  const seeds = readSeeds(written, reading);
  const ownKinds = readOwnKinds(written, reading);
  const wishes = readWishes(written, reading);
  checkGarden(written, places, standing, report);
  if (site === null) return null;
  return {
    schemaVersion: 1,
    invented: written.invented,
    household,
    site,
    covers: readCovers(written),
    places,
    kit: written.kit,
    stores: written.stores,
    standing,
    stock,
    seeds,
    ownKinds,
    wishes,
    savesSeedOf: written.savesSeedOf,
    planFrom,
    hoursPerWeekByMonth: hoursByMonth(written.hoursPerWeek),
  };
}
