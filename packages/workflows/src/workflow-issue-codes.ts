import type { Issue } from '@twelvemonth/basis';

/**
 * What is found by asking the catalogue: names that it lacks, crops in the wrong place, requests that cannot be met.
 * With severity and the values that the sentence may use; the sentences live in the apps.
 */
export const workflowIssueCodes = {
  'kind-unknown': { severity: 'error', detail: ['kind', 'nearest'] },
  'kind-passed-over': { severity: 'warning', detail: ['kind', 'nearest'] },
  'role-unknown': { severity: 'error', detail: ['role', 'nearest'] },
  'store-unknown': { severity: 'error', detail: ['store', 'nearest'] },
  'station-unknown': { severity: 'error', detail: ['station', 'nearest'] },
  'kind-not-for-place': { severity: 'warning', detail: ['kind', 'place', 'growsIn'] },
  'disease-on-record': { severity: 'warning', detail: ['kind', 'place', 'disease'] },
  'plants-over-ground': { severity: 'warning', detail: ['kind', 'place', 'plants', 'most'] },
  'sown-before-free': { severity: 'warning', detail: ['kind', 'place', 'sow', 'by', 'until'] },
  'stock-far-over-usual': { severity: 'warning', detail: ['kind', 'kg', 'usualKg'] },
  'place-not-for-growing': { severity: 'error', detail: ['place', 'takenBy'] },
  'place-cannot-carry': { severity: 'error', detail: ['kind', 'place', 'growsIn'] },
  'nowhere-to-grow': { severity: 'error', detail: ['kind', 'growsIn'] },
  'tub-too-small': { severity: 'error', detail: ['kind', 'place', 'litres', 'needsLitres'] },
  'route-unknown': { severity: 'error', detail: ['route', 'allowed'] },
  'route-not-for-kind': { severity: 'error', detail: ['kind', 'route', 'allowed'] },
  'route-without-bench': { severity: 'error', detail: ['route', 'stage'] },
  'stage-passed-over': { severity: 'warning', detail: ['stage', 'used'] },
  'count-too-small': { severity: 'error', detail: ['count'] },
  'stands-for-years': { severity: 'error', detail: ['kind'] },
  'sow-day-not-plausible': { severity: 'error', detail: ['sow'] },
  'stock-out-of-season': { severity: 'warning', detail: ['kind', 'sow'] },
  'rest-begins-late': { severity: 'warning', detail: ['place', 'wanted', 'from'] },
  'begun-without-room': { severity: 'warning', detail: ['kind', 'place', 'sow'] },
  'no-climate': { severity: 'error', detail: [] },
} as const satisfies Readonly<
  Record<string, { readonly severity: Issue['severity']; readonly detail: readonly string[] }>
>;

export type WorkflowIssueCode = keyof typeof workflowIssueCodes;
export type WorkflowIssueDetail<C extends WorkflowIssueCode> = Readonly<
  Record<(typeof workflowIssueCodes)[C]['detail'][number], string | number>
>;

export function workflowIssue<C extends WorkflowIssueCode>(
  code: C,
  where: string,
  detail: WorkflowIssueDetail<C>,
): Issue {
  return { code, severity: workflowIssueCodes[code].severity, where, detail };
}
