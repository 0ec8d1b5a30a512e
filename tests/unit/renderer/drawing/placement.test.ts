import { describe, expect, it } from 'vitest'
import { aboveView, frontView, sideView } from '#core'
import { boxOf, movedBox, type Box } from '../../../../renderer/drawing/box'
import { placeViews } from '../../../../renderer/drawing/placement'
import { coveredBy } from '../../../../renderer/drawing/strokesOf'
import { viewsShown } from '../../../../renderer/drawing/views'
import { DRAWN } from '../../drawing/drawnHangers'

const FRAMES = [{ width: 1100, height: 700 }, { width: 420, height: 520 }, { width: 340, height: 900 }] as const
const HAIR = 1e-6
const isIn = ({ x, y }: { x: number, y: number }, box: Box): boolean => x > box.x + HAIR && y > box.y + HAIR && x < box.x + box.width - HAIR && y < box.y + box.height - HAIR

describe.each(DRAWN)('%s', (_, check) => {
  const drawn = { front: frontView(check, 'watered'), side: sideView(check, 'watered'), above: aboveView(check, 'watered') }

  it.each(FRAMES)('lays its views within the picture, none over another: $width by $height', (frame) => {
    const { box, views } = placeViews(viewsShown('together', frame).map((code) => ({ code, drawing: drawn[code], dx: 0, dy: 0 })), frame)
    expect(views.map(({ code }) => code)).toEqual(frame.width > 1000 ? ['front', 'side', 'above'] : ['front', 'above'])
    const boxes = views.map(({ drawing, dx, dy }) => movedBox(boxOf(drawing.bounds), dx, dy))
    for (const { x, y, width, height } of boxes) {
      expect(x).toBeGreaterThanOrEqual(box.x - HAIR)
      expect(x + width).toBeLessThanOrEqual(box.x + box.width + HAIR)
      expect(y).toBeGreaterThanOrEqual(box.y - HAIR)
      expect(y + height).toBeLessThanOrEqual(box.y + box.height + HAIR)
    }
    // The boxes may share a free corner of the view from the front, what is drawn in it may not.
    const covered = views.flatMap(({ code, dx, dy }, i) => coveredBy(drawn[code], 0).strokes.flat()
      .map(({ x, y }) => ({ x: x + dx, y: y + dy })).filter((spot) => boxes.some((other, k) => k !== i && isIn(spot, other) && !isIn(spot, boxes[i] ?? other))))
    expect(covered).toEqual([])
    const above = boxes.at(-1) ?? box
    const under = views.slice(0, -1).flatMap(({ code, dx, dy }) => coveredBy(drawn[code], 0).strokes.flat().map(({ x, y }) => ({ x: x + dx, y: y + dy })).filter((spot) => isIn(spot, above)))
    expect(under).toEqual([])
  })

  it('keeps front and side level, and moves the front nowhere', () => {
    const frame = { width: 1500, height: 800 }
    const { views } = placeViews(viewsShown('together', frame).map((code) => ({ code, drawing: drawn[code], dx: 0, dy: 0 })), frame)
    expect(views.map(({ code, dy }) => (code === 'above' ? null : dy))).toEqual([0, 0, null])
    expect(views[0]?.dx).toBe(0)
  })
})

it('shows one view by itself where one is asked for, whatever the room', () => {
  expect(viewsShown('side', { width: 300, height: 900 })).toEqual(['side'])
  expect(viewsShown('above', { width: 2000, height: 900 })).toEqual(['above'])
  // Wide, but not wide enough for a third view to be read.
  expect(viewsShown('together', { width: 600, height: 400 })).toEqual(['front', 'above'])
})
