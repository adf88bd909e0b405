// Reads vitest's JSON report into two numbers. A file that broke before its first test counts as one failure.
export function countTests(report) {
  const brokenFiles = (report.testResults ?? []).filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  const passed = report.numPassedTests ?? 0;
  const failed = (report.numFailedTests ?? 0) + brokenFiles;
  const nothingRan = passed + failed === 0;
  const brokenRun = report.success === false && failed === 0;
  return { passed, failed: nothingRan || brokenRun ? 1 : failed, skipped: report.numPendingTests ?? 0 };
}
