import { describe, expect, it } from 'vitest'
import { newtons } from '../../../../src/quantity/si'
import type { SlingRest } from '../../../../src/statics/sling/result'
import { isWorse } from '../../../../src/statics/sling/worseRest'

const rest = (status: SlingRest['status'], ...T: readonly number[]): Pick<SlingRest, 'status' | 'T'> => ({ status, T: T.map(newtons) })

describe('the worse of two rests', () => {
  it('is the one on fewer than three legs, however little these carry', () => {
    expect(isWorse(rest('LOST_SUPPORT', 10, 10, 0), rest('OK', 30, 2, 1))).toBe(true)
    expect(isWorse(rest('OK', 30, 2, 1), rest('LOST_SUPPORT', 10, 10, 0))).toBe(false)
  })

  it.each(['OK', 'LOST_SUPPORT'] as const)('of two that are %s is the one whose leg under most tension carries more', (status) => {
    const [most, even] = [rest(status, 0, 5, 22), rest(status, 12, 13, 14)]
    expect(isWorse(most, even)).toBe(true)
    expect(isWorse(even, most)).toBe(false)
    expect(isWorse(most, most)).toBe(false)
  })

  it('is by tension too where one turns freely or has a slack leg', () => {
    expect(isWorse(rest('OK_WITH_SLACK', 9, 9, 9, 0), rest('OK_NEUTRAL_TWIST', 8, 8, 8, 8))).toBe(true)
    expect(isWorse(rest('OK_WITH_SLACK', 9, 9, 9, 0), rest('OK', 10, 8, 8, 8))).toBe(false)
  })
})
