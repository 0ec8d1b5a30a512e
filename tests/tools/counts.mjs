import { existsSync, readFileSync } from 'node:fs'

/** @typedef {{ passed: number, failed: number }} Count */

const vitest = (report) => ({
  passed: report.numPassedTests,
  // A file that could not be loaded has no tests to fail, yet it is a failure.
  failed: report.numFailedTests + report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length,
})

const playwright = (report) => ({
  passed: report.stats.expected,
  failed: report.stats.unexpected + report.stats.flaky + report.errors.length,
})

const READERS = { vitest, playwright }

/**
 * What a runner's report says, or null if it says nothing that can be counted.
 * @param {'vitest' | 'playwright'} kind
 * @param {string} file
 * @returns {Count | null}
 */
export function readReport(kind, file) {
  if (!existsSync(file)) return null
  try {
    const count = READERS[kind](JSON.parse(readFileSync(file, 'utf8')))
    return Number.isSafeInteger(count.passed) && Number.isSafeInteger(count.failed) ? count : null
  } catch {
    return null
  }
}

/**
 * What a gate adds to the sum. A runner that crashed, left no report or found nothing to run has
 * failed: silence is never success.
 * @param {number} code the exit code
 * @param {Count | null} report null if there is none
 * @returns {Count}
 */
export function countOf(code, report) {
  const { passed, failed } = report ?? { passed: 0, failed: 0 }
  const broken = code !== 0 || passed === 0
  return { passed, failed: broken ? Math.max(failed, 1) : failed }
}

/**
 * @param {readonly Count[]} counts
 * @returns {Count}
 */
export const sum = (counts) => counts.reduce((total, { passed, failed }) => ({ passed: total.passed + passed, failed: total.failed + failed }), { passed: 0, failed: 0 })
