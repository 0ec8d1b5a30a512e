import { describe, expect, test } from 'vitest'
import { WITHDRAWN } from '../../../src/catalogue/withdrawal'
import { allowableWithdrawal, serviceFactor, threadInTimber, ultimateWithdrawal } from '../../../src/check/withdrawal'
import { metres } from '../../../src/quantity/si'

const mm = (x: number) => metres(x / 1000)

describe('pulled out of wood', () => {
  test.each(WITHDRAWN)('%s: denser, thicker and deeper never holds less, and twice as deep holds twice', (kind) => {
    const base = ultimateWithdrawal(kind, 0.43, mm(4.3), mm(37))
    expect(ultimateWithdrawal(kind, 0.44, mm(4.3), mm(37))).toBeGreaterThan(base)
    expect(ultimateWithdrawal(kind, 0.43, mm(4.4), mm(37))).toBeGreaterThan(base)
    expect(ultimateWithdrawal(kind, 0.43, mm(4.3), mm(74))).toBeCloseTo(2 * base, 9)
  })
  test.each(['woodScrew', 'lagScrew', 'smoothNail'] as const)('%s: what is allowed is a fraction of what pulls it out', (kind) => {
    for (const gravity of [0.32, 0.5, 0.73]) {
      const share = allowableWithdrawal(kind, gravity, mm(5.5), mm(41)) / ultimateWithdrawal(kind, gravity, mm(5.5), mm(41))
      expect(share).toBeGreaterThan(1 / 6)
      expect(share).toBeLessThan(1 / 4)
    }
  })
  test('a screw of the size pulls harder out than a nail of it', () => {
    expect(ultimateWithdrawal('woodScrew', 0.4, mm(3.5), mm(30))).toBeGreaterThan(3 * ultimateWithdrawal('smoothNail', 0.4, mm(3.5), mm(30)))
  })
  test('wet service takes from each', () => {
    for (const kind of ['woodScrew', 'lagScrew', 'smoothNail'] as const) expect(serviceFactor(kind, { wet: true, endGrain: false })).toBeLessThan(1)
  })
})

describe('thread in the timber', () => {
  // [length, threaded, between, in the timber], mm: a screw of 60 mm, 40 of them thread.
  test.each([[60, 40, 0, 40], [60, 40, 12.5, 40], [60, 40, 28, 32], [60, 40, 61, 0]])('%d mm long, %d threaded, %d before the timber: %d', (length, threaded, between, inTimber) => {
    expect(threadInTimber(mm(length), mm(threaded), mm(between)) * 1000).toBeCloseTo(inTimber, 9)
  })
})
