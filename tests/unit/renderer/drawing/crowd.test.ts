import { describe, expect, it } from 'vitest'
import { crowdOf, freeBox } from '../../../../renderer/drawing/crowd'

const PAPER = { x: -50, y: 10, width: 180, height: 120 }
const overlaps = (a: typeof PAPER, b: typeof PAPER): boolean => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

describe('free room in a picture', () => {
  it('is found nearest to the spot, clear of boxes and strokes, within the paper', () => {
    const taken = [{ x: -50, y: 10, width: 90, height: 70 }, { x: 60, y: 80, width: 30, height: 50 }]
    const found = freeBox(crowdOf(PAPER, [[{ x: 100, y: 10 }, { x: 100, y: 60 }]], taken), 24, 31, { x: 0, y: 40 })
    expect(found).not.toBeNull()
    if (found === null) return
    expect(taken.some((box) => overlaps(box, found))).toBe(false)
    expect(found.x > 100 || found.x + found.width < 100 || found.y > 60).toBe(true)
    expect(found.x).toBeGreaterThanOrEqual(PAPER.x)
    expect(found.y + found.height).toBeLessThanOrEqual(PAPER.y + PAPER.height + 1e-9)
    // Beside the first box, or right below it: not on the far side of the paper.
    expect(Math.hypot(found.x + 12 - 0, found.y + 15.5 - 40)).toBeLessThan(62)
  })

  it('is rather looked for a little further off than behind what a line to it would cross', () => {
    const wall = Array.from({ length: 12 }, (_, i) => [{ x: 44 + i, y: 10 }, { x: 44 + i, y: 130 }])
    const near = { x: 40, y: 70 }
    const right = freeBox(crowdOf(PAPER, wall, []), 20, 20, near)
    expect((right?.x ?? 99) + 20).toBeLessThan(44)
    // With nothing free on the near side, the far one has to do.
    expect(freeBox(crowdOf(PAPER, wall, [{ x: -50, y: 10, width: 92, height: 120 }]), 20, 20, near)?.x).toBeGreaterThan(55)
  })

  it('is not claimed where there is none', () => {
    const stripes = Array.from({ length: 7 }, (_, i) => [{ x: -50 + i * 30, y: 10 }, { x: -50 + i * 30, y: 130 }])
    const crowd = crowdOf(PAPER, stripes, [])
    expect(freeBox(crowd, 35, 20, { x: 0, y: 50 })).toBeNull()
    expect(freeBox(crowd, 20, 100, { x: 0, y: 50 })).not.toBeNull()
    expect(freeBox(crowd, 500, 20, { x: 0, y: 50 })).toBeNull()
  })
})
