import { describe, expect, it } from 'vitest'
import { movePose, newPose, turnCosine } from '../../../../src/statics/sling/pose'

const ELL = 0.2

describe('movePose', () => {
  it('turns about a world axis by the right angle and the right way round', () => {
    const pose = newPose()
    movePose(pose, new Float64Array([1, 2, 3, 0, 0, (ELL * Math.PI) / 2]), ELL, pose)
    expect([...pose.p]).toEqual([1, 2, 3])
    ;[0, -1, 0, 1, 0, 0, 0, 0, 1].forEach((entry, i) => expect(pose.R[i]).toBeCloseTo(entry, 15))
    // A second turn is about the world's x axis, not the pot's.
    movePose(pose, new Float64Array([0, 0, 0, (ELL * Math.PI) / 2, 0, 0]), ELL, pose)
    ;[0, -1, 0, 0, 0, -1, 1, 0, 0].forEach((entry, i) => expect(pose.R[i]).toBeCloseTo(entry, 15))
  })

  it('stays a rotation after many turns, large and tiny', () => {
    const pose = newPose()
    for (let i = 0; i < 500; i++) movePose(pose, new Float64Array([0, 0, 0, 0.1 * Math.sin(i), 1e-10 * i, 0.05 * Math.cos(3 * i)]), ELL, pose)
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const dot = [0, 1, 2].reduce((sum, k) => sum + pose.R[3 * i + k]! * pose.R[3 * j + k]!, 0)
        expect(dot).toBeCloseTo(i === j ? 1 : 0, 12)
      }
    }
  })

  it('knows how far it is turned', () => {
    const pose = newPose()
    movePose(pose, new Float64Array([0, 0, 0, 0.3 * ELL, 0, 0.4 * ELL]), ELL, pose)
    expect(turnCosine(pose)).toBeCloseTo(Math.cos(0.5), 14)
  })
})
