import { cannot, done, type Outcome } from '@twelvemonth/basis';

/**
 * The garden file's version. Version 1 is the first, so nothing has to be migrated yet: a step from n to n + 1 is
 * added here, as a pure function of the plain value, when version 2 exists.
 */
export const newestSchemaVersion = 1;

export function schemaVersionOf(
  value: Readonly<Record<string, unknown>>,
): Outcome<number, 'newer-version' | 'version-not-understood' | 'version-missing'> {
  const found = value.schemaVersion;
  if (found === undefined) return cannot('version-missing');
  if (typeof found !== 'number' || !Number.isInteger(found) || found < 1)
    return cannot('version-not-understood');
  return found > newestSchemaVersion ? cannot('newer-version') : done(found);
}
