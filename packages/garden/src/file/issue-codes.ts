import type { Issue } from '@twelvemonth/basis';

/**
 * Everything that reading a garden file can find, with its severity and the values its sentence may use. The
 * sentences live in the apps. An error means that no garden comes back; warnings and notes let it through.
 */
export const gardenIssueCodes = {
  'file-too-large': { severity: 'error', detail: ['size', 'mostSize'] },
  'file-too-full': { severity: 'error', detail: ['most'] },
  'file-empty': { severity: 'error', detail: [] },
  'file-not-jsonc': { severity: 'error', detail: ['column', 'problem'] },
  'file-cut-off': { severity: 'error', detail: ['column'] },
  'file-nested-too-deep': { severity: 'error', detail: ['deepest'] },
  'file-not-a-garden': { severity: 'error', detail: ['found'] },
  'newer-version': { severity: 'error', detail: ['found', 'newest'] },
  'version-not-understood': { severity: 'error', detail: ['found'] },
  'version-missing': { severity: 'note', detail: ['assumed'] },
  'errors-left-out': { severity: 'error', detail: ['count'] },
  'warnings-left-out': { severity: 'note', detail: ['count'] },
  'key-unknown': { severity: 'warning', detail: ['key', 'nearest'] },
  'key-twice': { severity: 'warning', detail: ['key'] },
  'value-missing': { severity: 'error', detail: ['key'] },
  'value-of-wrong-type': { severity: 'error', detail: ['expected', 'found'] },
  'value-too-small': { severity: 'error', detail: ['least', 'found'] },
  'value-too-large': { severity: 'error', detail: ['most', 'found'] },
  'value-not-offered': { severity: 'error', detail: ['found', 'nearest', 'allowed'] },
  'value-not-accepted': { severity: 'error', detail: ['found', 'problem'] },
  'text-too-long': { severity: 'error', detail: ['most'] },
  'id-malformed': { severity: 'error', detail: ['found'] },
  'id-twice': { severity: 'error', detail: ['id', 'first'] },
  'count-negative': { severity: 'error', detail: ['found'] },
  'amount-not-understood': { severity: 'error', detail: ['found'] },
  'amount-needs-a-unit': { severity: 'error', detail: ['found', 'kind'] },
  'date-impossible': { severity: 'error', detail: ['found'] },
  'date-not-understood': { severity: 'error', detail: ['found'] },
  'date-not-exact': { severity: 'error', detail: ['found'] },
  'date-in-future': { severity: 'warning', detail: ['found', 'reference'] },
  'planted-before-sown': { severity: 'warning', detail: ['sown', 'planted'] },
  'dates-reversed': { severity: 'error', detail: ['from', 'to'] },
  'household-without-people': { severity: 'error', detail: [] },
  'role-named-twice': { severity: 'warning', detail: ['role'] },
  'latitude-impossible': { severity: 'error', detail: ['found'] },
  'latitude-not-temperate': { severity: 'warning', detail: ['found'] },
  'longitude-impossible': { severity: 'error', detail: ['found'] },
  'climate-unclear': { severity: 'error', detail: ['found'] },
  'csv-path-not-beside-file': { severity: 'error', detail: ['found'] },
  'normals-not-twelve': { severity: 'error', detail: ['found'] },
  'normals-tmax-below-tmin': { severity: 'error', detail: ['month', 'tmaxC', 'tminC'] },
  'twelve-months-needed': { severity: 'error', detail: ['found'] },
  'cover-unknown': { severity: 'error', detail: ['found', 'nearest'] },
  'place-unknown': { severity: 'error', detail: ['found', 'nearest'] },
  'place-number-unknown': { severity: 'error', detail: ['found', 'most'] },
  'place-without-size': { severity: 'error', detail: ['place', 'needs'] },
  'no-places': { severity: 'warning', detail: [] },
  'bed-over-full': { severity: 'warning', detail: ['place', 'groundM2', 'placeM2'] },
  'place-taken': { severity: 'warning', detail: ['place', 'takenBy'] },
  'packet-time-twice': { severity: 'error', detail: ['days', 'weeks'] },
  'wish-unclear': { severity: 'error', detail: ['kind', 'found'] },
  'wishes-disagree': { severity: 'warning', detail: ['kind', 'least', 'most'] },
} as const satisfies Readonly<
  Record<string, { readonly severity: Issue['severity']; readonly detail: readonly string[] }>
>;

export type GardenIssueCode = keyof typeof gardenIssueCodes;
export type GardenIssueDetail<C extends GardenIssueCode> = Readonly<
  Record<(typeof gardenIssueCodes)[C]['detail'][number], string | number>
>;

export const isGardenIssueCode = (text: string): text is GardenIssueCode =>
  Object.hasOwn(gardenIssueCodes, text);

export function gardenIssue<C extends GardenIssueCode>(
  code: C,
  where: string,
  detail: GardenIssueDetail<C>,
): Issue {
  return { code, severity: gardenIssueCodes[code].severity, where, detail };
}

/** A path in the file: keys and list indices. */
export type FilePath = readonly (string | number)[];
export type Report = <C extends GardenIssueCode>(
  code: C,
  path: FilePath,
  detail: GardenIssueDetail<C>,
) => void;

/** What people wrote, short enough for a sentence. */
export function shown(value: unknown): string | number {
  if (typeof value === 'number') return value;
  const text = typeof value === 'string' ? value : value === undefined ? '' : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
