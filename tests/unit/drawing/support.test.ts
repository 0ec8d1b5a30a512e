import { expect, test } from 'vitest'
import { frontView, sideView, type Drawing, type Patch, type Point, type Shape } from '#core'
import { BRACKET, WALL_HOOK } from '../check/links/places'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const drawn = (patch: Patch): Drawing => frontView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const partsOf = ({ shapes }: Drawing): ReadonlySet<string | null> => new Set(shapes.map((s) => s.link))
const fromSide = (patch: Patch): Drawing => sideView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const pointsOf = (shapes: readonly Shape[]): readonly Point[] => shapes.flatMap((s) => (s.kind === 'line' || s.kind === 'area' ? s.points : []))

test('a bracket’s arm reaches as far as was said, as high as it is, from the wall behind: seen from the side', () => {
  const drawing = fromSide(BRACKET)
  const arm = pointsOf(drawing.shapes.filter((s) => s.link === 'bracket'))
  const wall = Math.max(...pointsOf(drawing.shapes.filter((s) => s.link === 'fixing' && s.ink === 'building' && s.kind === 'line')).map(([x]) => x))
  expect(wall).toBeCloseTo(0.22, 12)
  expect(Math.max(...arm.map(([x]) => x))).toBeLessThanOrEqual(wall)
  expect(Math.min(...arm.map(([x]) => x))).toBeLessThan(0)
  expect(Math.max(...arm.map(([, z]) => z)) - Math.min(...arm.map(([, z]) => z))).toBeCloseTo(0.025, 12)
  expect(drawing.dimensions.filter((d) => ['bracket.reach', 'hook.projection'].includes(d.path)).map((d) => [d.path, d.value])).toEqual([['bracket.reach', 0.22]])
  expect(drawing.anchors.bracket?.[0]).toBeCloseTo(0.11, 12)
  // From the front the arm comes towards the viewer: its end alone is seen.
  const end = pointsOf(drawn(BRACKET).shapes.filter((s) => s.link === 'bracket')).map(([x]) => x)
  expect(Math.max(...end) - Math.min(...end)).toBeCloseTo(0.006, 12)
})

test('every screw of it is drawn', () => {
  const screws = (n: string): number => drawn({ ...BRACKET, 'bracket.screws': n }).shapes.filter((s) => s.link === 'fixing' && s.ink === 'wire').length
  expect(screws('5') - screws('2')).toBe(3)
})

test('a hook in a wall is seen on end, with no shank to the ceiling', () => {
  const drawing = drawn(WALL_HOOK)
  const pin = drawing.shapes.find((s) => s.link === 'pin')
  // A disc as wide as the wire: a stroke half as wide round a quarter of it.
  expect(pin?.kind === 'circle' && 2 * pin.radius + pin.width).toBeCloseTo(0.008, 12)
  expect(partsOf(drawing).has('hookShank')).toBe(false)
  expect(drawing.dimensions.map((d) => d.path)).not.toContain('hook.projection')
})

test('only a hook is drawn where there is one', () => {
  for (const substrate of ['steelBeam', 'branch', 'rail'] as const) {
    const parts = partsOf(drawn({ 'place.support': 'overBeam', 'place.substrate': substrate }))
    expect([parts.has('hook'), parts.has('hookShank'), parts.has('fixing')]).toEqual([false, false, true])
  }
  expect(partsOf(drawn({})).has('hook')).toBe(true)
})

test('every part of the place that was checked can be pointed at', () => {
  for (const patch of [{}, WALL_HOOK, BRACKET, { ...BRACKET, 'place.support': 'swingArm' }, { 'place.support': 'overBeam', 'place.substrate': 'branch' }] as const) {
    const check = checkOf({ ...ORDINARY, ...patch })
    const { anchors } = frontView(check, 'dry')
    for (const link of new Set(check.links.map((l) => l.link))) expect(anchors[link], link).toBeDefined()
  }
})
