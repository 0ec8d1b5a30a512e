import { describe, expect, test } from 'vitest'
import { frontView, loupes, sideView, type Drawing, type Patch, type Point, type Shape } from '#core'
import { BRACKET, WALL_HOOK } from '../check/links/places'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'
import { without } from '../hanger/without'

const front = (patch: Patch): Drawing => frontView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const side = (patch: Patch): Drawing => sideView(checkOf({ ...ORDINARY, ...patch }), 'dry')
const points = (shapes: readonly Shape[]): readonly Point[] => shapes.flatMap((s) => (s.kind === 'line' || s.kind === 'area' ? s.points : []))
const fixing = ({ shapes }: Drawing): readonly Shape[] => shapes.filter((s) => s.link === 'fixing' && s.ink === 'wire')
const building = ({ shapes }: Drawing): readonly Shape[] => shapes.filter((s) => s.link === 'fixing' && s.ink === 'building')
const reach = (shapes: readonly Shape[], axis: 0 | 1): number => Math.max(...points(shapes).map((p) => p[axis])) - Math.min(...points(shapes).map((p) => p[axis]))
const textures = (drawing: Drawing): readonly string[] => building(drawing).flatMap((s) => (s.kind === 'area' ? [s.texture] : []))
/** Where a wall to the right begins. */
const wallOf = (drawing: Drawing): number => Math.max(...points(building(drawing).filter((s) => s.kind === 'line')).map(([x]) => x))

describe('a screw in timber', () => {
  const SCREW: Patch = { 'fixing.kind': 'woodScrew', 'fixing.length': '63 mm', 'fixing.penetration': '41 mm', 'fixing.between': '13 mm', 'fixing.diameter': '5 mm' }

  test('is as long as its field, its thread as long as it is in the timber', () => {
    const drawn = front(SCREW)
    const thread = fixing(drawn).find((s) => s.kind === 'line' && s.width > 0)
    const tip = Math.max(...points(fixing(drawn)).map(([, z]) => z))
    const surface = Math.min(...points(building(drawn)).map(([, z]) => z))
    expect(tip - surface).toBeCloseTo(0.063, 9)
    expect(thread === undefined ? NaN : reach([thread], 1)).toBeCloseTo(0.041, 9)
    const shank = fixing(drawn).filter((s) => s.kind === 'line' && s.width === 0.005)
    expect(reach(shank, 1)).toBeCloseTo(0.063 - 0.041, 9)
  })

  test('goes through the board that lies before the timber', () => {
    const drawn = front(SCREW)
    expect(textures(drawn)).toEqual(['board', 'timber'])
    expect(reach(building(drawn).filter((s) => s.kind === 'area' && s.texture === 'board'), 1)).toBeCloseTo(0.013, 9)
  })

  test('of a wall lies in it, level, from the side', () => {
    const drawn = side({ ...WALL_HOOK, 'fixing.penetration': '52 mm' })
    const thread = fixing(drawn).filter((s) => s.kind === 'line')
    expect(reach(thread, 0)).toBeCloseTo(0.052, 6)
    expect(Math.min(...points(thread).map(([x]) => x))).toBeGreaterThanOrEqual(wallOf(drawn) - 1e-9)
  })

  test('is in pencil where a rating stands for a thread that was never measured', () => {
    const rated = frontView(checkOf({ ...without(ORDINARY, 'fixing.penetration', 'fixing.diameter'), 'fixing.rated': '30 kgf' }), 'dry')
    expect(fixing(rated).length).toBeGreaterThan(0)
    expect(fixing(rated).filter((s) => !s.pencil)).toEqual([])
    expect(rated.dimensions.map((d) => d.path)).not.toContain('fixing.penetration')
  })

  test('screwed in up to its shoulder only where it is the hook’s own thread', () => {
    const shanks = (patch: Patch): number => front(patch).shapes.filter((s) => s.link === 'hookShank').length
    expect(shanks({ 'fixing.kind': 'screwHook' }) - shanks({ 'fixing.kind': 'woodScrew' })).toBe(1)
  })
})

describe('what is not known is not drawn', () => {
  test('into an unknown ceiling goes no fixing', () => {
    const drawn = front({ 'place.substrate': 'unknown' })
    expect(textures(drawn)).toEqual(['unknown'])
    expect(fixing(drawn)).toEqual([])
  })

  test('a fixing of unknown kind, or one not made for what it is in, is left out', () => {
    for (const patch of [{ 'fixing.kind': 'unknown' }, { 'fixing.kind': 'plug' }, { 'place.substrate': 'solidBrick', 'fixing.kind': 'woodScrew' }] as const) expect(fixing(front(patch)), JSON.stringify(patch)).toEqual([])
  })

  test('a plug is as wide as its hole, in pencil while its length was not asked', () => {
    const drawn = front({ 'place.substrate': 'denseBlock', 'fixing.kind': 'plug', 'fixing.plugHole': '9 mm' })
    const mouth = points(fixing(drawn).filter((s) => s.kind === 'area')).slice(0, 2).map(([x]) => x)
    expect(Math.max(...mouth) - Math.min(...mouth)).toBeCloseTo(0.009, 9)
    expect(fixing(drawn).every((s) => s.pencil)).toBe(true)
  })

  test('an anchor in concrete goes as deep as was said', () => {
    const drawn = front({ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '71 mm' })
    expect(reach(fixing(drawn).filter((s) => s.kind === 'area'), 1)).toBeCloseTo(0.071, 9)
  })

  test('a toggle lies behind its board', () => {
    const drawn = front({ 'place.substrate': 'plasterboard', 'fixing.kind': 'boardFixing' })
    const back = Math.max(...points(building(drawn)).map(([, z]) => z))
    expect(Math.min(...points(fixing(drawn).filter((s) => s.kind === 'area')).map(([, z]) => z))).toBeCloseTo(back, 9)
  })
})

describe('from the side', () => {
  test('a pot wider than its hook stands out leans on the wall, and does not stand in it', () => {
    const drawn = side(WALL_HOOK)
    const pot = points(drawn.shapes.filter((s) => s.ink === 'pot'))
    expect(Math.max(...pot.map(([x]) => x))).toBeLessThanOrEqual(wallOf(drawn) + 1e-9)
    // A cord lies between.
    expect(wallOf(drawn) - Math.max(...pot.map(([x]) => x))).toBeLessThan(0.0031)
    const clear = side({ ...WALL_HOOK, 'hook.projection': '180 mm' })
    const base = points(clear.shapes.filter((s) => s.ink === 'pot')).map(([, z]) => z)
    expect(Math.min(...base)).toBeCloseTo(Math.min(...points(front({ ...WALL_HOOK, 'hook.projection': '180 mm' }).shapes.filter((s) => s.ink === 'pot')).map(([, z]) => z)), 9)
  })

  test('the wall is to the right, as far from where the hanger hangs as was said', () => {
    expect(wallOf(side({ ...WALL_HOOK, 'hook.projection': '180 mm' }))).toBeCloseTo(0.18, 9)
    expect(wallOf(side({ ...BRACKET, 'bracket.reach': '310 mm' }))).toBeCloseTo(0.31, 9)
  })

  test('a panel’s pot stands off its wall by what lies behind it', () => {
    const drawn = sideView(checkOf(PANEL), 'dry')
    const pot = Math.max(...points(drawn.shapes.filter((s) => s.ink === 'pot')).map(([x]) => x))
    expect(wallOf(drawn) - pot).toBeCloseTo(0.01, 3)
    expect(drawn.dimensions.map((d) => d.path)).toContain('panel.thickness')
  })

  test('a stick is seen on its end, as thick as it is', () => {
    const drawn = side({ 'make.top': 'stick', 'stick.diameter': '23 mm' })
    const end = drawn.shapes.filter((s) => s.link === 'stick')
    expect([reach(end, 0), reach(end, 1)].map((x) => Math.round(x * 1e6))).toEqual([23000, 23000])
  })

  test('swings away from a wall only', () => {
    const arc = (patch: Patch): readonly number[] => sideView(checkOf({ ...ORDINARY, ...patch }), 'bump').shapes.flatMap((s) => (s.kind === 'line' && s.ink === 'note' && s.points.length > 20 ? s.points.map(([x]) => x) : []))
    expect(Math.max(...arc(WALL_HOOK))).toBeLessThan(1e-9)
    expect(Math.max(...arc({}))).toBeGreaterThan(0.01)
  })
})

describe('through a loupe', () => {
  const shapesOf = (patch: Patch, code: string): readonly Shape[] => loupes(checkOf({ ...ORDINARY, ...patch }), 'dry').find((l) => l.code === code)?.drawing.shapes ?? []

  test('as many lark’s heads as cords were folded over the ring: half the strands of all legs', () => {
    // Each head is two strands over the ring and its bight, each strand goes on below.
    const cords = (legs: string, strands: string): number => shapesOf({ 'make.legs': legs, 'make.strands': strands }, 'ring').filter((s) => s.link === 'leg').length / 5
    expect(cords('4', '4')).toBe(8)
    expect(cords('3', '6')).toBe(9)
    expect(cords('5', '3')).toBe(8)
  })

  test('every wrap of the gathering knot, each as thick as the cord', () => {
    const wraps = shapesOf({ 'gathering.wraps': '11', 'cord.diameter': '5 mm' }, 'gathering').filter((s) => s.kind === 'line' && (s.link === 'wrapHoop' || s.link === 'gatheringGrip'))
    expect(wraps).toHaveLength(11)
    expect(wraps.every((s) => s.kind === 'line' && s.width === 0.005)).toBe(true)
  })

  test('the hook’s wire and the cord of a cradle knot are of their true thickness', () => {
    expect(shapesOf({ 'hook.wire': '7 mm' }, 'hook').filter((s) => s.link === 'hook').every((s) => s.kind === 'line' && s.width === 0.007)).toBe(true)
    expect(shapesOf({ 'cord.diameter': '6 mm', 'cradle.kind': 'net' }, 'cradle').every((s) => s.kind === 'line' && s.width === 0.006)).toBe(true)
  })

  test('only parts that are there have one', () => {
    const codes = (patch: Patch): readonly string[] => loupes(checkOf({ ...ORDINARY, ...patch }), 'dry').map((l) => l.code)
    expect(codes({})).toEqual(['fixing', 'hook', 'ring', 'cradle', 'gathering'])
    expect(codes({ 'make.top': 'stick' })).toEqual(['fixing', 'hook', 'stick', 'cradle', 'gathering'])
    expect(codes({ 'make.top': 'bunched', 'cradle.kind': 'open' })).toEqual(['fixing', 'hook', 'gathering'])
    expect(codes({ 'place.support': 'overBeam', 'place.substrate': 'branch' })).toEqual(['ring', 'cradle', 'gathering'])
    expect(codes({ 'make.totalLength': '55 cm' })).toEqual([])
  })

  test('lower pots have their own, where they hang', () => {
    const check = checkOf({ ...ORDINARY, 'make.arrangement': 'tiers' })
    const [upper, lower] = loupes(check, 'dry').filter((l) => l.code === 'gathering')
    expect([upper?.link, lower?.link]).toEqual(['gatheringGrip', 'gatheringGrip@2'])
    expect(lower?.of.top ?? NaN).toBeLessThan((upper?.of.bottom ?? NaN) - 0.1)
    expect(new Set(lower?.drawing.shapes.map((s) => s.link)).has('gatheringGrip')).toBe(false)
  })
})
