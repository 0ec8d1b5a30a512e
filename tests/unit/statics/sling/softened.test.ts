import { describe, expect, test } from 'vitest'
import { sceneOf } from '../../../../src/statics/sling/scene'
import { softened } from '../../../../src/statics/sling/softened'

/** Stiffnesses of four legs, N/m, 0.8 m long, under 40 N, at every call and afterwards. */
function stages(EA: readonly number[]): { readonly seen: readonly (readonly number[])[]; readonly after: readonly number[] } {
  const scene = sceneOf({
    A: EA.map(() => [0, 0, 1] as const), B: [[0.1, 0, 0.2], [0, 0.1, 0.2], [-0.1, 0, 0.2], [0, -0.1, 0.2]], L0: EA.map(() => 0.8), EA,
    mass: 4, cg: [0, 0, 0.1], ell: 0.1, gravity: 10, wall: null,
  })
  const seen: number[][] = []
  softened(scene, () => { seen.push([...scene.k]) })
  return { seen, after: [...scene.k] }
}

// Half a hundredth of 0.8 m under a quarter of 40 N each: 2500 N/m.
describe('legs made softer for a while', () => {
  test('begin with a stretch of half a hundredth under the weight, none stiffer than it is', () => {
    const { seen, after } = stages([8e5, 8e5, 800, 8e5])
    expect(seen[0]).toEqual([2500, 2500, 1000, 2500].map((k) => expect.closeTo(k, 8) as number))
    expect(after).toEqual([1e6, 1e6, 1000, 1e6])
  })

  test('grow four times as stiff from stage to stage, up to the last below their own', () => {
    expect(stages([8e5, 8e5, 8e5, 8e5]).seen.map(([k]) => k)).toEqual([2500, 1e4, 4e4, 1.6e5, 6.4e5].map((k) => expect.closeTo(k, 6) as number))
  })

  test('are left alone where none is stiffer than that', () => {
    expect(stages([2000, 2000, 1000, 2000])).toEqual({ seen: [], after: [2500, 2500, 1250, 2500] })
  })

  test('come to an end however stiff they are', () => {
    const { seen, after } = stages([1e300, 1e300, 1e300, 1e300])
    expect(seen.length).toBeLessThan(100)
    expect(after[0]).toBeGreaterThan(1e300)
  })
})
