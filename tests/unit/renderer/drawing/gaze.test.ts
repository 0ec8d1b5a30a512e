import { describe, expect, it } from 'vitest'
import { shapedTo } from '../../../../renderer/drawing/box'
import { gazeShowing, heldGaze, magnifiedGaze, movedGaze, wholeGaze, windowOf, type Gaze } from '../../../../renderer/drawing/gaze'

const WHOLE = { x: -310, y: -1250, width: 700, height: 1400 }
const MOST = 16
const at = (gaze: Gaze, across: number, down: number): { x: number, y: number } => {
  const { x, y, width, height } = windowOf(gaze, WHOLE)
  return { x: x + across * width, y: y + down * height }
}

describe('looking closer', () => {
  it('leaves what is under the pointer where it is', () => {
    const start = heldGaze({ magnified: 2.3, x: 20, y: -400 }, WHOLE, MOST)
    const spot = at(start, 0.31, 0.72)
    const next = magnifiedGaze(start, 1.7, spot, WHOLE, MOST)
    expect(next.magnified).toBeCloseTo(3.91, 9)
    const after = at(next, 0.31, 0.72)
    expect(after.x).toBeCloseTo(spot.x, 9)
    expect(after.y).toBeCloseTo(spot.y, 9)
  })

  it('ends where the picture is as large as it gets, and no smaller than all of it', () => {
    const start = wholeGaze(WHOLE)
    expect(magnifiedGaze(start, 1000, { x: 0, y: 0 }, WHOLE, MOST).magnified).toBe(MOST)
    expect(magnifiedGaze(start, 0.2, { x: 300, y: 0 }, WHOLE, MOST)).toEqual(start)
    expect(windowOf(start, WHOLE)).toEqual(WHOLE)
  })

  it('cannot get lost, whatever is done', () => {
    let gaze: Gaze = wholeGaze(WHOLE)
    for (let i = 1; i <= 200; i++) {
      const [a, b, c] = [Math.sin(i * 12.9), Math.sin(i * 78.2), Math.sin(i * 37.7)]
      gaze = i % 3 === 0 ? magnifiedGaze(gaze, 20 ** a, { x: 3000 * b, y: 3000 * c }, WHOLE, MOST) : movedGaze(gaze, 900 * a, 900 * b, WHOLE, MOST)
      const { x, y, width, height } = windowOf(gaze, WHOLE)
      expect(x).toBeGreaterThanOrEqual(WHOLE.x - 1e-6)
      expect(y).toBeGreaterThanOrEqual(WHOLE.y - 1e-6)
      expect(x + width).toBeLessThanOrEqual(WHOLE.x + WHOLE.width + 1e-6)
      expect(y + height).toBeLessThanOrEqual(WHOLE.y + WHOLE.height + 1e-6)
      expect(width / height).toBeCloseTo(WHOLE.width / WHOLE.height, 9)
    }
  })

  it('moves to a spot out of sight, no further than needed, and not at all for one in sight', () => {
    const gaze = heldGaze({ magnified: 4, x: -100, y: -900 }, WHOLE, MOST)
    expect(gazeShowing(gaze, { x: -100, y: -850 }, 0.1, WHOLE, MOST)).toBe(gaze)
    const moved = gazeShowing(gaze, { x: 150, y: -900 }, 0.1, WHOLE, MOST)
    expect(moved.y).toBe(gaze.y)
    expect(at(moved, 0.9, 0.5).x).toBeCloseTo(150, 9)
  })
})

it('a box takes the shape of its frame about its middle, to one scale', () => {
  const shaped = shapedTo({ x: 10, y: 20, width: 100, height: 400 }, { width: 900, height: 600 })
  expect(shaped).toEqual({ x: 60 - 300, y: 20, width: 600, height: 400 })
})
