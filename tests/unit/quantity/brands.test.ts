import { describe, expect, it } from 'vitest'
import { metres, newtons, type Metres } from '../../../src/quantity/si'

// The type checker is the test here: an expected error that does not come is itself an error.
const twice = (length: Metres): Metres => metres(2 * length)

describe('brands', () => {
  it('let a function that asks metres refuse newtons and bare numbers', () => {
    expect(twice(metres(3))).toBe(6)
    // @ts-expect-error newtons are not metres
    expect(twice(newtons(3))).toBe(6)
    // @ts-expect-error a bare number has no unit yet
    expect(twice(3)).toBe(6)
  })

  it('leave the number as it is', () => {
    const length: number = metres(0.25)
    expect(length).toBe(0.25)
  })
})
