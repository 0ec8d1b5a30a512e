import { expect, test } from 'vitest'
import { frontView, type Drawing, type Patch, type Shape } from '#core'
import { BRACKET, WALL_HOOK } from '../check/links/places'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const drawn = (patch: Patch): Drawing => frontView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const partsOf = ({ shapes }: Drawing): ReadonlySet<string | null> => new Set(shapes.map((s) => s.link))
const widthOf = (shape: Shape | undefined): number => (shape?.kind === 'line' ? Math.max(...shape.points.map(([x]) => x)) : NaN)

test('a bracket’s arm reaches as far as was said, as high as it is, from the wall', () => {
  const drawing = drawn(BRACKET)
  const arm = drawing.shapes.find((s) => s.link === 'bracket')
  expect(widthOf(arm)).toBeCloseTo(0.22, 12)
  expect(arm?.kind === 'line' && arm.width).toBe(0.025)
  expect(drawing.dimensions.filter((d) => ['bracket.reach', 'hook.projection', 'fixing.penetration'].includes(d.path)).map((d) => [d.path, d.value])).toEqual([['bracket.reach', 0.22]])
  expect(drawing.anchors.bracket?.[0]).toBeCloseTo(0.11, 12)
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
