import { describe, expect, it } from 'vitest'
import { aboveView, frontView, type Drawing } from '#core'
import { placeViews } from '../../../../renderer/drawing/placement'
import { DRAWN } from '../../drawing/drawnHangers'

const FRAMES = [{ width: 1100, height: 700 }, { width: 420, height: 520 }, { width: 340, height: 900 }] as const
const overlap = (a: readonly [number, number], b: readonly [number, number]): number => Math.min(a[1], b[1]) - Math.max(a[0], b[0])

describe.each(DRAWN)('%s', (_, check) => {
  it.each(FRAMES)('lays both views within the picture, neither over the other: $width by $height', (frame) => {
    const front = frontView(check, 'watered')
    const above = aboveView(check, 'watered')
    const placed = placeViews(front, above.bounds, frame)
    const boxOf = (b: Drawing['bounds'], dx: number, dy: number): { x: readonly [number, number], y: readonly [number, number] } =>
      ({ x: [1000 * b.left + dx, 1000 * b.right + dx], y: [-1000 * b.top + dy, -1000 * b.bottom + dy] })
    const boxes = [boxOf(front.bounds, 0, 0), boxOf(above.bounds, placed.above.x, placed.above.y)] as const
    for (const { x, y } of boxes) {
      expect(x[0]).toBeGreaterThanOrEqual(placed.x - 1e-6)
      expect(x[1]).toBeLessThanOrEqual(placed.x + placed.width + 1e-6)
      expect(y[0]).toBeGreaterThanOrEqual(placed.y - 1e-6)
      expect(y[1]).toBeLessThanOrEqual(placed.y + placed.height + 1e-6)
    }
    // The boxes may share the free corner of the front view, its shapes may not.
    const [, moved] = boxes
    const points = front.shapes.flatMap((s) => (s.kind === 'line' || s.kind === 'area' ? s.points : s.kind === 'cord' ? s.strands.flat() : s.kind === 'label' ? [s.at] : [s.centre]))
    const covered = points.filter(([x, y]) => overlap([1000 * x, 1000 * x], moved.x) >= 0 && overlap([-1000 * y, -1000 * y], moved.y) >= 0)
    expect(covered).toEqual([])
  })
})
