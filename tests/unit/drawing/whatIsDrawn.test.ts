import { describe, expect, test } from 'vitest'
import { aboveView, frontView, type CaseCode, type CheckResult, type Patch, type Shape } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const shapes = (check: CheckResult, code: CaseCode): readonly Shape[] => frontView(check, code).shapes
const of = (patch: Patch, code: CaseCode): readonly Shape[] => shapes(checkOf({ ...ORDINARY, ...patch }), code)
const without = (path: keyof typeof ORDINARY): Patch => Object.fromEntries(Object.entries(ORDINARY).filter(([key]) => key !== path))
const legCords = (drawn: readonly Shape[]): readonly Extract<Shape, { kind: 'cord' }>[] =>
  drawn.filter((s): s is Extract<Shape, { kind: 'cord' }> => s.kind === 'cord' && s.link === 'leg' && s.leg !== null)

describe('pencil', () => {
  const FOLLOWS: readonly (readonly [keyof typeof ORDINARY, (s: Shape) => boolean])[] = [
    ['pot.height', (s) => s.ink === 'pot'],
    ['plant.height', (s) => s.ink === 'plant'],
    ['ring.wire', (s) => s.link === 'ring'],
    ['hook.kind', (s) => s.link === 'hook'],
    ['hook.projection', (s) => s.link === 'hookShank'],
    ['place.substrate', (s) => s.link === 'fixing' && s.ink === 'building'],
    ['fixing.penetration', (s) => s.link === 'fixing' && s.ink === 'wire'],
    ['make.totalLength', (s) => s.link === 'leg' && s.leg !== null],
    ['cord.diameter', (s) => s.link === 'gatheringGrip'],
    ['make.fringe', (s) => s.link === null && s.ink === 'cord'],
    ['cradle.first', (s) => s.link === 'cradle' && s.kind === 'circle'],
  ]
  const allSaid = checkOf({ ...ORDINARY, 'pot.fillGap': '12 mm', 'make.top': 'ring', 'ring.inside': '42 mm', 'hook.inside': '21 mm', 'gathering.wraps': '9', 'cradle.kind': 'net' })

  test.each(FOLLOWS)('%s said is ink, assumed is pencil', (path, governed) => {
    const said = shapes(allSaid, 'watered').filter(governed)
    const assumed = shapes(checkOf(without(path)), 'watered').filter(governed)
    expect(said.length).toBeGreaterThan(0)
    expect(said.filter((s) => s.pencil)).toEqual([])
    expect(assumed.length).toBeGreaterThan(0)
    expect(assumed.filter((s) => !s.pencil)).toEqual([])
  })

  test('a dimension line is in pencil where its length was assumed', () => {
    const lines = frontView(checkOf({ ...without('cradle.first'), 'ring.inside': '42 mm' }), 'watered').dimensions
    expect(lines.filter((d) => d.pencil).map((d) => d.path)).toEqual(['cradle.first'])
  })

  test('from above, the rim is in pencil where it was assumed', () => {
    const rims = (check: CheckResult): readonly boolean[] => aboveView(check, 'dry').shapes.filter((s) => s.ink === 'pot').map((s) => s.pencil)
    expect(rims(checkOf(without('pot.rim')))).toEqual([true, true, true])
    expect(rims(allSaid)).toEqual([false, false, false])
  })
})

describe('only what carries', () => {
  test('half the strands where they are knotted, all where they hang plain', () => {
    expect(legCords(of({ 'make.build': 'sinnet', 'make.strands': '4' }, 'dry')).map((c) => c.strands.length)).toEqual([2, 2, 2, 2])
    expect(legCords(of({ 'make.build': 'plain', 'make.strands': '4' }, 'dry')).map((c) => c.strands.length)).toEqual([4, 4, 4, 4])
  })

  test('strands and wire at their true thickness', () => {
    expect(legCords(of({ 'cord.diameter': '6 mm' }, 'dry')).every((c) => c.thickness === 0.006 && Math.abs(c.width - 0.012) < 1e-12)).toBe(true)
    expect(of({ 'ring.wire': '7 mm' }, 'dry').filter((s) => s.link === 'ring').map((s) => s.kind === 'circle' && s.width)).toEqual([0.007])
    expect(of({ 'hook.wire': '8 mm' }, 'dry').filter((s) => s.link === 'hook').every((s) => s.kind === 'line' && s.width === 0.008)).toBe(true)
  })

  test('a leg that is gone is not drawn, and the others keep their numbers', () => {
    const labels = (drawn: readonly Shape[]): readonly string[] => drawn.flatMap((s) => (s.kind === 'label' ? [s.text] : [])).sort()
    for (const view of [frontView, aboveView]) {
      expect(labels(view(checkOf(ORDINARY), 'watered').shapes)).toEqual(['1', '2', '3', '4'])
      expect(labels(view(checkOf(ORDINARY), 'legParted').shapes)).toEqual(['2', '3', '4'])
    }
  })

  test('a parted strand is missing from the first leg only', () => {
    expect(legCords(of({ 'make.build': 'plain' }, 'strandParted')).map((c) => [c.leg, c.strands.length]).sort()).toEqual([[0, 3], [1, 4], [2, 4], [3, 4]])
  })

  test('as many wraps as were tied, one of them the hoop', () => {
    const wraps = of({ 'gathering.wraps': '11' }, 'dry').filter((s) => s.kind === 'line' && (s.link === 'wrapHoop' || s.link === 'gatheringGrip'))
    expect(wraps.map((s) => s.link)).toEqual(['wrapHoop', ...new Array<string>(10).fill('gatheringGrip')])
  })

  test('water stands on the mix only when flooded and only where it cannot run out', () => {
    const water = (drainage: string, code: CaseCode): number => of({ 'pot.drainage': drainage }, code).filter((s) => s.ink === 'water').length
    expect(water('none', 'flooded')).toBe(1)
    expect(water('none', 'watered')).toBe(0)
    expect(water('hole', 'flooded')).toBe(0)
  })

  test('the thread is as long as it is in the timber', () => {
    const thread = of({ 'fixing.penetration': '47 mm' }, 'dry').find((s) => s.link === 'fixing' && s.ink === 'wire')
    const ends = thread?.kind === 'line' ? thread.points.map(([, z]) => z) : []
    expect((ends[1] ?? NaN) - (ends[0] ?? NaN)).toBeCloseTo(0.047, 12)
    expect(of({ 'place.substrate': 'masonry' }, 'dry').filter((s) => s.link === 'fixing' && s.ink === 'wire')).toEqual([])
  })

  test('the plant stands as high above the rim as was said', () => {
    const points = of({ 'plant.height': '33 cm' }, 'dry').flatMap((s) => (s.ink === 'plant' && s.kind === 'area' ? s.points : []))
    const rim = of({}, 'dry').flatMap((s) => (s.ink === 'pot' && s.kind === 'area' ? s.points : []))
    const top = (of: readonly (readonly [number, number])[]): number => Math.max(...of.map(([, z]) => z))
    expect(top(points) - top(rim)).toBeCloseTo(0.33, 4)
  })

  test('a pot whose leg is gone leans towards that leg', () => {
    const aside = (code: CaseCode): number => frontView(checkOf(ORDINARY), code).legs[2]?.[1][1] ?? NaN
    const near = (code: CaseCode): number => frontView(checkOf(ORDINARY), code).legs[1]?.[1][1] ?? NaN
    // Leg 3 stands opposite the first, leg 2 beside it: the side opposite rises above its neighbour.
    expect(aside('watered')).toBeCloseTo(near('watered'), 9)
    expect(aside('legParted')).toBeGreaterThan(near('legParted') + 0.001)
  })
})

test('an arc shows how far a gust swings it, further than a bump, level at most', () => {
  const outdoors: Patch = { 'cord.fibre': 'polyester', 'cord.make': 'braided', 'place.exposure': 'outdoors' }
  const width = (patch: Patch, code: CaseCode): number => {
    const xs = of(patch, code).flatMap((s) => (s.kind === 'line' && s.ink === 'note' && s.points.length > 20 ? s.points.map(([x]) => x) : []))
    return xs.length === 0 ? 0 : Math.max(...xs) - Math.min(...xs)
  }
  const widths = (['sheltered', 'open', 'exposed'] as const).map((wind) => width({ ...outdoors, 'place.wind': wind }, 'gust'))
  expect([width(outdoors, 'bump'), ...widths].every((w) => w > 0)).toBe(true)
  expect([...widths].sort((a, b) => a - b)).toEqual(widths)
  expect(widths[0]).toBeGreaterThan(width(outdoors, 'bump'))
  expect(width(outdoors, 'watered')).toBe(0)
})
