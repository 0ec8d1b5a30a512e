import { describe, expect, it } from 'vitest'
import { frontView, loupes, type Loupe } from '#core'
import { boxOf, scaleIn, shapedTo, type Box } from '../../../../renderer/drawing/box'
import { pointAt, type Pointed } from '../../../../renderer/drawing/pointing'
import { coveredBy, numberBox } from '../../../../renderer/drawing/strokesOf'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const check = checkOf(ORDINARY)
const front = frontView(check, 'watered')
const box = boxOf(front.bounds)
const covered = coveredBy(front, 10)
const details = loupes(check, 'watered')
const isIn = (inner: Box, outer: Box): boolean => inner.x >= outer.x - 1e-6 && inner.y >= outer.y - 1e-6 && inner.x + inner.width <= outer.x + outer.width + 1e-6 && inner.y + inner.height <= outer.y + outer.height + 1e-6
const meets = ({ x, y }: { x: number, y: number }, at: Box): boolean => x > at.x && x < at.x + at.width && y > at.y && y < at.y + at.height

function pointed(other: Partial<Pointed>): Pointed {
  return { box, frame: { width: 700, height: 620 }, covered, part: { x: 0, y: -300 }, isSmall: true, name: 'Ring', letter: 13, loupe: null, characters: ({ value }) => (value > 0.01 ? 10 : 4), moved: 0, ...other }
}

describe.each(details.map((loupe): readonly [string, Loupe] => [loupe.code, loupe]))('the loupe of %s', (_, loupe) => {
  it('stands on the sheet, over nothing that is drawn, with its own proportions', () => {
    const found = pointAt(pointed({ loupe }))
    if (!found?.loupe) throw new Error('no loupe')
    const { frame, shown } = found.loupe
    expect(isIn(frame, shapedTo(found.box, { width: 700, height: 620 }))).toBe(true)
    expect(isIn(frame, found.extent)).toBe(true)
    expect(isIn(found.box, found.extent)).toBe(true)
    // Cells are taken whole: a stroke may touch the edge, not reach in.
    const inside = { x: frame.x + 1, y: frame.y + 1, width: frame.width - 2, height: frame.height - 2 }
    expect(covered.strokes.flat().filter((spot) => meets(spot, inside))).toEqual([])
    expect(frame.width / frame.height).toBeCloseTo(shown.width / shown.height, 6)
    expect(isIn(boxOf(loupe.drawing.bounds), shown)).toBe(true)
    // Its numbers, as large as all others, stay within the frame.
    const letter = (13 / scaleIn(found.box, { width: 700, height: 620 })) * (shown.width / frame.width)
    for (const dimension of loupe.drawing.dimensions) expect(isIn(numberBox(dimension, dimension.value > 0.01 ? 10 : 4, 0.9 * letter), shown)).toBe(true)
  })

  it('is led to from what it magnifies', () => {
    const found = pointAt(pointed({ loupe, moved: 12 }))
    const of = boxOf(loupe.of)
    expect(found?.of).toEqual({ ...of, x: of.x + 12 })
    expect(meets(found?.leader[0] ?? { x: NaN, y: NaN }, { x: of.x + 11, y: of.y - 1, width: of.width + 2, height: of.height + 2 })).toBe(true)
  })
})

describe('where there is no room', () => {
  const [loupe] = details
  if (loupe === undefined) throw new Error('no details')
  const all = (at: Box): Pointed['covered'] => ({ strokes: [], boxes: [at] })

  it('the picture gives way to a loupe a little, and no more than that', () => {
    const [frame, drawn] = [{ width: 560, height: 1400 }, { x: 0, y: 0, width: 500, height: 1300 }]
    const found = pointAt(pointed({ loupe, frame, box: drawn, covered: all(shapedTo(drawn, frame)) }))
    expect(found?.loupe).not.toBeNull()
    const scale = found === null ? NaN : scaleIn(found.box, frame) / scaleIn(drawn, frame)
    expect(scale).toBeLessThan(1)
    expect(scale).toBeGreaterThan(0.74)
  })

  it('a part is only named on a small sheet, and not at all on a full one', () => {
    const [frame, sheet] = [{ width: 240, height: 260 }, { x: 0, y: 0, width: 1200, height: 1300 }]
    const found = pointAt(pointed({ loupe, frame, box: sheet, covered: all({ ...sheet, height: 0.85 * sheet.height }) }))
    expect(found).not.toBeNull()
    expect(found?.loupe).toBeNull()
    expect(pointAt(pointed({ loupe, frame, box: sheet, covered: all(sheet) }))).toBeNull()
  })
})

it('a small part is ringed and the line begins at the ring; a large one is pointed at itself', () => {
  const small = pointAt(pointed({}))
  const large = pointAt(pointed({ isSmall: false }))
  if (small === null || large === null) throw new Error('not pointed at')
  expect(Math.hypot(small.leader[0].x - small.part.x, small.leader[0].y - small.part.y)).toBeCloseTo(small.ring, 6)
  expect(small.ring).toBeGreaterThan(0)
  expect(large.leader[0]).toEqual(large.part)
})
