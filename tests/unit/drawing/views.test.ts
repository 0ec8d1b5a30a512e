import { describe, expect, test } from 'vitest'
import { aboveView, CASES, frontView, type CaseCode, type CheckResult, type Drawing, type Patch, type Point, type Shape } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { DRAWN } from './drawnHangers'

const pointsOf = (shape: Shape): readonly Point[] => {
  switch (shape.kind) {
    case 'label': return [shape.at]
    case 'circle': return [shape.centre]
    case 'cord': return [...shape.axis, ...shape.strands.flat()]
    case 'line': case 'area': return shape.points
  }
}
const everyPoint = (d: Drawing): readonly Point[] => [
  ...d.shapes.flatMap(pointsOf), ...d.dimensions.flatMap((m) => [m.from, m.to, m.number, ...m.feet]), ...Object.values(d.anchors), ...Object.values(d.captions), ...d.legs.flatMap((l) => l ?? []),
]
const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])

/** Where the solve leaves a point of the pot, by the matrix as printed: row by row, from the centre of gravity. */
function solvedPoint(check: CheckResult, code: CaseCode, point: readonly [number, number, number]): readonly [number, number, number] {
  const sling = check.solved.slings?.[code].drawn
  if (sling === undefined || !('R' in sling)) return point
  const [x, y, z] = [point[0], point[1], point[2] - check.solved.loads[code].centre]
  const [[a, b, c], [d, e, f], [g, h, i]] = sling.R
  return [sling.cg[0] + a * x + b * y + c * z, sling.cg[1] + d * x + e * y + f * z, sling.cg[2] + g * x + h * y + i * z]
}

/** Situations that look unlike one another on this hanger: those that do not concern it, and jolts, look as it hangs. */
const drawnOf = ({ solved: { wholeCases } }: CheckResult): readonly CaseCode[] =>
  CASES.filter((code) => ['strandParted', 'legParted', 'legPartedSudden'].includes(code) || (wholeCases.includes(code) && code !== 'setDown' && code !== 'drop'))

describe.each(DRAWN)('%s', (_, check) => {
  describe.each(drawnOf(check))('%s', (code) => {
    const front = frontView(check, code)
    const above = aboveView(check, code)

    test('every point is a number and lies within the bounds', () => {
      for (const drawing of [front, above]) {
        const { left, right, bottom, top } = drawing.bounds
        expect(everyPoint(drawing).length).toBeGreaterThan(20)
        expect(everyPoint(drawing).filter(([x, y]) => !(x >= left && x <= right && y >= bottom && y <= top))).toEqual([])
      }
    })

    test('both views show every leg between its solved points, and the same one where x meets', () => {
      const { path, turn } = check.solved.geometry
      const legs = check.solved.plan?.legs ?? []
      const count = path.ok ? legs.length : check.solved.hanger.answers['make.legs']
      const gone = check.solved.slings?.[code].gone ?? null
      expect(gone === null).toBe(!path.ok || (code !== 'legParted' && code !== 'legPartedSudden'))
      expect(front.legs).toHaveLength(count)
      for (let leg = 0; leg < count; leg++) {
        const [inFront, fromAbove] = [front.legs[leg], above.legs[leg]]
        if (!path.ok || leg === gone) {
          expect(inFront).toBeNull()
          expect(fromAbove).toBeNull()
          continue
        }
        const { upper, lower } = legs[leg] as (typeof legs)[number]
        const [x, y, z] = solvedPoint(check, code, [...lower])
        const aside = x * Math.cos(turn) - y * Math.sin(turn)
        const away = x * Math.sin(turn) + y * Math.cos(turn)
        expect(inFront?.[0]).toEqual([upper[0] * Math.cos(turn) - upper[1] * Math.sin(turn), upper[2]])
        expect(inFront?.[1][0]).toBeCloseTo(aside, 12)
        expect(inFront?.[1][1]).toBeCloseTo(z, 12)
        expect(fromAbove?.[1][0]).toBeCloseTo(aside, 12)
        expect(fromAbove?.[1][1]).toBeCloseTo(away, 12)
      }
    })

    test('the cord drawn for a leg runs between the ends that are told', () => {
      for (const drawing of [front, above]) {
        const cords = drawing.shapes.filter((s) => s.kind === 'cord' && s.link === 'leg' && s.leg !== null)
        expect(cords).toHaveLength(drawing.legs.filter((l) => l !== null).length)
        for (const cord of cords) expect(cord.kind === 'cord' && cord.leg !== null && cord.axis).toEqual(drawing.legs[cord.leg ?? -1])
      }
    })

    test('every link is pointed at, within the drawing', () => {
      const hangs = check.solved.geometry.path.ok
      for (const { link } of check.links) if (hangs || link === 'load') expect(front.anchors[link], link).toBeDefined()
    })

    test('an upright dimension line is as long as its value, a tilted one no longer', () => {
      const tilt = check.solved.slings?.[code].drawn
      const upright = tilt === undefined || !('tiltRadians' in tilt) || tilt.tiltRadians < 1e-6
      for (const { path, from, to, value } of front.dimensions) {
        expect(value, path).toBe(check.solved.hanger.answers[path])
        if (upright) expect(distance(from, to), path).toBeCloseTo(value, 9)
        else expect(distance(from, to), path).toBeLessThanOrEqual(value + 1e-9)
      }
    })
  })
})

test('as long as it hangs, each maker’s length has its line', () => {
  const paths = (check: CheckResult): readonly string[] => frontView(check, 'watered').dimensions.map((d) => d.path)
  const common = ['cradle.first', 'make.fringe', 'pot.height', 'pot.base', 'pot.rim', 'plant.height', 'hook.projection']
  const ring = 'ring.inside'
  expect(paths(checkOf(ORDINARY))).toEqual(['make.totalLength', ...common, 'fixing.penetration', ring])
  expect(paths(checkOf({ ...ORDINARY, 'make.legLength': '50 cm', 'place.substrate': 'masonry' }))).toEqual(['make.legLength', ...common, ring])
})

test('from the front no two legs stand in one line, whatever their number', () => {
  for (let legs = 3; legs <= 12; legs++) {
    const ends = frontView(checkOf({ ...ORDINARY, 'make.legs': String(legs) }), 'watered').legs.map((l) => l?.[1][0] ?? NaN).sort((a, b) => a - b)
    const gaps = ends.slice(1).map((x, i) => x - (ends[i] as number))
    expect(Math.min(...gaps), `${legs} legs`).toBeGreaterThan(0.001)
  }
})

test('with an even number of legs the upright drawing is its own mirror image', () => {
  for (const legs of ['4', '6', '10']) {
    const ends = frontView(checkOf({ ...ORDINARY, 'make.legs': legs }), 'watered').legs.map((l) => l?.[1][0] ?? NaN)
    const sorted = [...ends].sort((a, b) => a - b)
    sorted.forEach((x, i) => expect(x).toBeCloseTo(-(sorted[sorted.length - 1 - i] as number), 9))
  }
})

describe('upper ends', () => {
  const uppers = (patch: Patch, view: typeof frontView): readonly Point[] => view(checkOf({ ...ORDINARY, ...patch }), 'watered').legs.map((l) => l?.[0] ?? [NaN, NaN])

  test('along a stick stand side by side, over its bunch, in the order of their places on the pot', () => {
    const check = checkOf({ ...ORDINARY, 'make.top': 'stick', 'stick.bunch': '96 mm', 'make.legs': '5' })
    const legs = [...frontView(check, 'watered').legs].sort((a, b) => (a?.[0][0] ?? NaN) - (b?.[0][0] ?? NaN))
    expect(legs.map((l) => Math.round((l?.[0][0] ?? NaN) * 1e6))).toEqual([-48000, -24000, 0, 24000, 48000])
    const places = legs.map((l) => l?.[1][0] ?? NaN)
    places.slice(1).forEach((x, i) => expect(x).toBeGreaterThan(places[i] as number))
  })

  test('on a level ring stand on its circle, seen from above, at one height', () => {
    const level: Patch = { 'ring.lies': 'level', 'ring.inside': '150 mm', 'ring.wire': '6 mm' }
    for (const [x, y] of uppers(level, aboveView)) expect(Math.hypot(x, y)).toBeCloseTo(0.078, 12)
    expect(new Set(uppers(level, frontView).map(([, z]) => z)).size).toBe(1)
  })
})
