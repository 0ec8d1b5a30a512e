import { describe, expect, it } from 'vitest'
import { newPoint, type Point } from '../../../../src/statics/sling/point'
import type { SlingInput, Vec3 } from '../../../../src/statics/sling/result'
import { sceneOf } from '../../../../src/statics/sling/scene'
import { stabilityOf } from '../../../../src/statics/sling/stability'

const hook: Vec3 = [0.2, -0.3, 1.5]
const input: SlingInput = {
  A: [hook, hook, hook], B: [[0.1, 0, 0.2], [-0.06, 0.09, 0.2], [-0.05, -0.08, 0.2]], L0: [1, 1, 1], EA: [2000, 2000, 2000],
  mass: 5, cg: [0, 0, 0.1], ell: 0.1, gravity: 9.80665, wall: null,
}

/** A balance right under the hook with the given stiffnesses of moving along x, y, z and of turning about them. */
function under(...stiffnesses: number[]): Point {
  const point = newPoint()
  point.pose.p.set([hook[0], hook[1], 0.4])
  stiffnesses.forEach((value, i) => (point.hessian[7 * i] = value))
  return point
}
const judge = (point: Point, A: readonly Vec3[]): ReturnType<typeof stabilityOf> => stabilityOf(sceneOf({ ...input, A }), point, [])
const beside: readonly Vec3[] = [hook, [0.25, -0.3, 1.5], hook]

describe('stabilityOf', () => {
  it('counts the negative and finds the lowest that is not zero', () => {
    expect(judge(under(50, -3, 900, 70, -8, 20), beside)).toEqual({ eigenvalues: [-8, -3, 20, 50, 70, 900], eigMinNonzero: -8, negative: 2, zeroIsSymmetry: false, stable: false })
    expect(judge(under(50, 60, 900, 70, 80, 20), beside)).toMatchObject({ eigMinNonzero: 20, negative: 0, stable: true })
  })

  it('takes a lone zero for free turning only about a line through all hanging points', () => {
    const spin = under(50, 60, 900, 70, 80, 0)
    expect(judge(spin, input.A)).toMatchObject({ eigMinNonzero: 50, zeroIsSymmetry: true, stable: true })
    expect(judge(spin, beside)).toMatchObject({ zeroIsSymmetry: false, stable: false })
    expect(judge(under(50, 60, 900, 0, 80, 20), input.A)).toMatchObject({ zeroIsSymmetry: false, stable: false })
  })

  it('takes two zeros for a mechanism even if one of them is free turning', () => {
    expect(judge(under(0, 60, 900, 70, 80, 0), input.A)).toMatchObject({ negative: 0, zeroIsSymmetry: false, stable: false })
  })

  it('tells a soft way of giving from none beside very stiff legs', () => {
    expect(judge(under(3e9, 3e9, 3e10, 2e9, 2e9, 30), beside)).toMatchObject({ eigMinNonzero: 30, stable: true })
    expect(judge(under(3e9, 3e9, 3e10, 2e9, 2e9, 1e-7), beside)).toMatchObject({ stable: false })
  })

  it('leaves out the motions that would part a loaded contact from the wall', () => {
    const { eigenvalues } = stabilityOf(sceneOf({ ...input, A: beside }), under(50, -3, 900, 70, 80, 20), [new Float64Array([0, 1, 0, 0, 0, 0])])
    expect(eigenvalues).toEqual([20, 50, 70, 80, 900])
  })
})
