export interface TestCounts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}
export function countTests(report: object): TestCounts;
