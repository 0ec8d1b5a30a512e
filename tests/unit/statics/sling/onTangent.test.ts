import { describe, expect, it } from 'vitest'
import { symmetricEigenvalues } from '../../../../src/statics/linear/symmetricEigenvalues'
import { onTangent } from '../../../../src/statics/sling/onTangent'

const H = new Float64Array(36)
;[2, 3, 5, 7, 11, 13].forEach((value, i) => (H[7 * i] = value))
const seen = (...barred: number[][]): number[] => {
  const { size, matrix } = onTangent(H, barred.map((direction) => Float64Array.from(direction)))
  return symmetricEigenvalues(size, matrix)
}
const close = (values: readonly number[]): unknown[] => values.map((value) => expect.closeTo(value, 12) as unknown)

describe('onTangent', () => {
  it('leaves the matrix alone when nothing is barred', () => {
    expect(seen()).toEqual([2, 3, 5, 7, 11, 13])
  })

  it('drops a barred direction', () => {
    expect(seen([0, 0, -4, 0, 0, 0])).toEqual(close([2, 3, 7, 11, 13]))
    expect(seen([0, 0, -4, 0, 0, 0], [3, 0, 1, 0, 0, 0])).toEqual(close([3, 7, 11, 13]))
  })

  it('keeps the mean of two stiffnesses along the diagonal between them', () => {
    expect(seen([1, -1, 0, 0, 0, 0])).toEqual(close([2.5, 5, 7, 11, 13]))
  })

  it('counts a direction given twice once', () => {
    expect(seen([0, 0, 1, 0, 0, 0], [0, 0, 2, 0, 0, 0])).toEqual(close([2, 3, 7, 11, 13]))
  })
})
