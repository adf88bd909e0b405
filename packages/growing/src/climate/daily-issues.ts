import type { Issue } from '@twelvemonth/basis';

/** Every code that reading a daily weather file can give; the sentences live in the app. */
export const dailyIssueCodes = [
  'daily-no-header',
  'daily-column-missing',
  'daily-no-rows',
  'daily-line-too-long',
  'daily-too-many-lines',
  'daily-bad-date',
  'daily-bad-number',
  'daily-impossible-value',
  'daily-tmax-below-tmin',
  'daily-duplicate-day',
  'daily-unsorted',
  'daily-short-gap-bridged',
  'daily-long-gap',
  'daily-radiation-estimated',
  'daily-span-impossible',
  'daily-record-short',
  'daily-more-of-the-same',
] as const;
export type DailyIssueCode = (typeof dailyIssueCodes)[number];

const listedPerCode = 20;

/** Collects issues; of each code the first twenty are listed and the rest are counted in one line. */
export class DailyIssues {
  readonly #issues: Issue[] = [];
  readonly #counts = new Map<DailyIssueCode, number>();

  add(code: DailyIssueCode, severity: Issue['severity'], line: number, detail: Issue['detail'] = {}): void {
    const count = (this.#counts.get(code) ?? 0) + 1;
    this.#counts.set(code, count);
    if (count <= listedPerCode) this.#issues.push({ code, severity, where: `line ${line}`, detail });
  }

  all(): Issue[] {
    const rest: Issue[] = [];
    for (const [code, count] of this.#counts) {
      if (count <= listedPerCode) continue;
      const same = this.#issues.find((issue) => issue.code === code)!;
      rest.push({
        code: 'daily-more-of-the-same',
        severity: same.severity,
        where: same.where,
        detail: { code, count: count - listedPerCode },
      });
    }
    return [...this.#issues, ...rest];
  }
}
