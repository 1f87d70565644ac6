/** Passed and failed, with one line for each failure. */
export function emptyTally() {
  return { passed: 0, failed: 0, failures: [] };
}

export function sumOf(tallies) {
  return {
    passed: tallies.reduce((sum, tally) => sum + tally.passed, 0),
    failed: tallies.reduce((sum, tally) => sum + tally.failed, 0),
    failures: tallies.flatMap((tally) => tally.failures),
  };
}

/** One thing that either holds or does not, such as "types" or "build". */
export function tallyOfOne(name, problem) {
  return problem === undefined
    ? { passed: 1, failed: 0, failures: [] }
    : { passed: 0, failed: 1, failures: [`${name}: ${problem}`] };
}

/**
 * Counts vitest's JSON report. A file that broke before any of its tests ran counts as one failure, and so does a
 * test that was skipped or left to do: a test that did not run has shown nothing.
 */
export function tallyOfReport(report) {
  return sumOf(report.testResults.map(tallyOfFile));
}

function tallyOfFile(file) {
  const passed = file.assertionResults.filter((test) => test.status === 'passed').length;
  const failures = file.assertionResults
    .filter((test) => test.status !== 'passed')
    .map((test) => `${file.name}: ${test.fullName} (${test.status})`);
  if (file.status === 'failed' && failures.length === 0)
    failures.push(`${file.name}: ${firstLine(file.message)}`);
  return { passed, failed: failures.length, failures };
}

function firstLine(text) {
  return String(text ?? '').split('\n')[0] || 'the file could not be run';
}
