import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { countOf, readReport, sum } from '../../tools/counts.mjs'

let folder: string
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'counts-')) })
afterAll(() => rmSync(folder, { recursive: true }))

const read = (kind: 'vitest' | 'playwright', report: unknown): ReturnType<typeof readReport> => {
  const file = join(folder, 'report.json')
  writeFileSync(file, typeof report === 'string' ? report : JSON.stringify(report))
  return readReport(kind, file)
}

describe('reading a report', () => {
  it('counts the tests of vitest', () => {
    expect(read('vitest', { numPassedTests: 7, numFailedTests: 2, testResults: [{ status: 'failed', assertionResults: [{}, {}] }] }))
      .toEqual({ passed: 7, failed: 2 })
  })

  it('counts a test file that could not be loaded', () => {
    expect(read('vitest', { numPassedTests: 7, numFailedTests: 0, testResults: [{ status: 'passed', assertionResults: [{}] }, { status: 'failed', assertionResults: [] }] }))
      .toEqual({ passed: 7, failed: 1 })
  })

  it('counts the tests of Playwright, flaky ones and errors outside tests as failed', () => {
    expect(read('playwright', { stats: { expected: 11, unexpected: 3, flaky: 1, skipped: 5 }, errors: [{ message: 'no server' }] }))
      .toEqual({ passed: 11, failed: 5 })
  })

  it.each(['', '{', '{}', '{"numPassedTests": "7", "numFailedTests": 0, "testResults": []}', '{"numPassedTests": 7, "testResults": []}'])('makes nothing of %j', (text) => {
    expect(read('vitest', text)).toBeNull()
  })

  it('makes nothing of a missing file', () => {
    expect(readReport('playwright', join(folder, 'missing.json'))).toBeNull()
  })
})

describe('what a gate adds to the sum', () => {
  it.each([
    ['all passed', 0, { passed: 9, failed: 0 }, { passed: 9, failed: 0 }],
    ['some failed', 1, { passed: 7, failed: 2 }, { passed: 7, failed: 2 }],
    ['failed in spite of exit code 0', 0, { passed: 7, failed: 2 }, { passed: 7, failed: 2 }],
    ['crashed without a report', 134, null, { passed: 0, failed: 1 }],
    ['ended well without a report', 0, null, { passed: 0, failed: 1 }],
    ['found no tests', 0, { passed: 0, failed: 0 }, { passed: 0, failed: 1 }],
    ['fell over after its tests passed', 1, { passed: 9, failed: 0 }, { passed: 9, failed: 1 }],
  ])('%s', (_what, code, report, count) => {
    expect(countOf(code, report)).toEqual(count)
  })

  it('is summed over all gates', () => {
    expect(sum([{ passed: 9, failed: 0 }, { passed: 0, failed: 1 }, { passed: 4, failed: 3 }])).toEqual({ passed: 13, failed: 4 })
  })
})
