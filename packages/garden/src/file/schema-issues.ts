import type * as z from 'zod';
import { type FilePath, isGardenIssueCode, type Report, shown } from './issue-codes.ts';
import { nearestOf } from './nearest.ts';

/** What the schema found, in our codes. */
function valueAt(value: unknown, path: FilePath): unknown {
  let at = value;
  for (const part of path) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<string | number, unknown>)[part];
  }
  return at;
}

const typeOf = (value: unknown): string =>
  value === null
    ? 'null'
    : Array.isArray(value)
      ? 'list'
      : typeof value === 'object'
        ? 'group'
        : typeof value;

const sizeOf = (value: unknown): string | number => (Array.isArray(value) ? value.length : shown(value));

const expectedWords: Readonly<Record<string, string>> = {
  object: 'group',
  record: 'group',
  array: 'list',
  int: 'whole number',
  string: 'text',
  boolean: 'true or false',
};

const wordFor = (type: string): string => expectedWords[type] ?? type;

function fromCheck(code: string, value: unknown, path: FilePath, report: Report): boolean {
  switch (code) {
    case 'count-negative':
    case 'latitude-impossible':
    case 'longitude-impossible':
    case 'date-not-understood':
    case 'amount-not-understood':
    case 'id-malformed':
      report(code, path, { found: shown(value) });
      return true;
    case 'normals-not-twelve':
    case 'twelve-months-needed':
      report(code, path, { found: sizeOf(value) });
      return true;
    case 'text-too-long':
      report(code, path, { most: 200 });
      return true;
    case 'household-without-people':
      report(code, path, {});
      return true;
    default:
      return false;
  }
}

/** The branch of a union that came nearest: the one whose first finding lies deepest, or is not about the type. */
function bestBranch(branches: readonly (readonly z.core.$ZodIssue[])[]): readonly z.core.$ZodIssue[] | null {
  const beyondType = branches.filter((issues) =>
    issues.some((each) => each.code !== 'invalid_type' || each.path.length > 0),
  );
  const notOffered = beyondType.filter((issues) => issues.some((each) => each.code !== 'invalid_value'));
  return notOffered[0] ?? beyondType[0] ?? null;
}

export function reportSchemaIssue(
  found: z.core.$ZodIssue,
  whole: unknown,
  before: FilePath,
  report: Report,
): void {
  const path = [...before, ...found.path.map((part) => (typeof part === 'symbol' ? '' : part))];
  const value = valueAt(whole, path);
  if (isGardenIssueCode(found.message) && fromCheck(found.message, value, path, report)) return;
  const missing = () => report('value-missing', path, { key: String(path.at(-1) ?? '') });
  switch (found.code) {
    case 'invalid_type':
      if (value === undefined) missing();
      else report('value-of-wrong-type', path, { expected: wordFor(found.expected), found: typeOf(value) });
      break;
    case 'invalid_union': {
      const branch = bestBranch(found.errors);
      if (value === undefined) missing();
      else if (branch !== null) for (const each of branch) reportSchemaIssue(each, whole, path, report);
      else {
        const words = found.errors.map(([first]) =>
          first?.code === 'invalid_type' ? wordFor(first.expected) : 'word',
        );
        report('value-of-wrong-type', path, { expected: words.join(' / '), found: typeOf(value) });
      }
      break;
    }
    case 'too_small':
      report('value-too-small', path, { least: Number(found.minimum), found: sizeOf(value) });
      break;
    case 'too_big':
      report('value-too-large', path, { most: Number(found.maximum), found: sizeOf(value) });
      break;
    case 'invalid_value': {
      if (value === undefined) {
        missing();
        break;
      }
      const allowed = found.values.map(String);
      const nearest = nearestOf(String(shown(value)), allowed);
      report('value-not-offered', path, { found: shown(value), nearest, allowed: allowed.join(', ') });
      break;
    }
    case 'invalid_key':
      report('id-malformed', path, { found: shown(path.at(-1)) });
      break;
    default:
      report('value-not-accepted', path, { found: shown(value), problem: found.code });
  }
}
