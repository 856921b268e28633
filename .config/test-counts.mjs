// Sums what Vitest and Playwright wrote into their JSON reports.
import { existsSync, readFileSync } from 'node:fs';

const NONE = { passed: 0, failed: 0, skipped: 0 };

/** Counts of a Vitest report. A file that could not be loaded has no test to its name and counts as one failure. */
export function vitestCounts(path) {
  const report = readReport(path);
  if (!report) return NONE;
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Counts of a Playwright report. A test that passed only at the second attempt counts as passed. */
export function playwrightCounts(path) {
  const report = readReport(path);
  if (!report) return NONE;
  const { expected, flaky, unexpected, skipped } = report.stats;
  return { passed: expected + flaky, failed: unexpected + report.errors.length, skipped };
}

export const sumCounts = (all) =>
  all.reduce(
    (a, b) => ({ passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped }),
    NONE,
  );

/** "812 passed, 0 failed", with ", 3 skipped" when any was. */
export const countsLine = ({ passed, failed, skipped }) =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}
