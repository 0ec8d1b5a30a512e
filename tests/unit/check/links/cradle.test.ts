import { describe, expect, test } from 'vitest'
import { netGirth, outwardMove, pointAlong, strandGap } from '../../../../src/statics/cradleFit'
import { metres, radians } from '../../../../src/quantity/si'
import { DEMOS, checkHanger, parseDocument, resolveDocument, type CheckResult, type Patch } from '#core'
import { linkIn, codesOf } from '../linkOf'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })
const TALL = { 'pot.rim': '110 mm', 'pot.base': '100 mm', 'pot.height': '400 mm', 'cradle.first': '70 mm', 'make.totalLength': '150 cm' } as const
const checkDemos = (): readonly (readonly [string, CheckResult])[] => DEMOS.map(({ file, text }) => {
  const parsed = parseDocument(text)
  const resolved = parsed.ok ? resolveDocument(parsed.document) : null
  if (resolved?.ok !== true) throw new Error(file)
  return [file, checkHanger(resolved.hanger)]
})
const used = (patch: Patch): number => linkIn(check(patch), 'cradle', 'watered').utilisation ?? NaN

describe('whether a pot fits its cradle', () => {
  test.each(checkDemos())('%s: holds, or is not worse than the rest', (_, demo) => {
    for (const link of demo.links.filter((l) => l.link === 'cradle')) expect(['holds', 'just holds'], link.id).toContain(link.verdict)
  })

  test('an ordinary pot holds', () => {
    expect(check({}).links.filter((l) => l.link === 'cradle').map((l) => l.verdict)).not.toContain('fails')
    for (const code of ['CRADLE_LOW', 'CRADLE_GAPS', 'BASE_ON_KNOT', 'NET_TOO_NARROW']) expect(codesOf(check({}), 'cradle')).not.toContain(code)
  })

  test('a tall narrow pot walks out over low knots, and higher ones hold it better', () => {
    expect(codesOf(check(TALL), 'cradle')).toContain('CRADLE_LOW')
    expect(used({ ...TALL, 'cradle.first': '200 mm' })).toBeLessThan(used(TALL))
  })

  test('a base as narrow as the gathered strands rides on the knot', () => {
    const tiny = check({ 'pot.rim': '50 mm', 'pot.base': '20 mm', 'pot.height': '45 mm', 'cradle.first': '25 mm', 'weighed.mass': '0.2 kg' })
    expect(codesOf(tiny, 'cradle')).toContain('BASE_ON_KNOT')
  })

  test('a net whose rows are too near one another does not open round the pot, and fails', () => {
    const narrow = check({ 'cradle.first': '140 mm', 'cradle.second': '160 mm' })
    expect(codesOf(narrow, 'cradle')).toContain('NET_TOO_NARROW')
    expect(narrow.links.filter((l) => l.link === 'cradle').map((l) => l.verdict)).toContain('fails')
  })

  test('a pot that is a little too wide for its net does not go in, one a little slimmer does', () => {
    const through = (second: string) => check({ 'cradle.first': '140 mm', 'cradle.second': second }).links.find((l) => l.part === 'netOpens')
    const widest = through('200 mm')?.demand?.value ?? NaN
    const justOpen = 0.14 + widest / 8
    expect(through(`${(justOpen - 0.003) * 1000} mm`)?.verdict).toBe('fails')
    expect(through(`${(justOpen + 0.003) * 1000} mm`)?.verdict).toBe('holds')
  })

  test('a second row below the first is not one', () => {
    expect(codesOf(check({ 'cradle.second': '30 mm' }), 'cradle')).toContain('CRADLE_SECOND_LOW')
  })

  test('a wall planter is judged by its own links', () => {
    expect(check({ 'make.arrangement': 'panel' }).links.some((l) => l.link === 'cradle')).toBe(false)
  })
})

describe('by plane geometry', () => {
  test('gaps are chords, a net opens to twice its knots times their distance', () => {
    expect(strandGap(4, metres(0.1))).toBeCloseTo(0.1 * Math.SQRT2, 12)
    expect(netGirth(5, metres(0.07))).toBeCloseTo(0.7, 12)
  })
  test('a centre of gravity below the knots moves out only by its offset', () => {
    expect(outwardMove(metres(0.05), metres(0.09), radians(0.3), metres(0.004))).toBe(0.004)
    expect(outwardMove(metres(0.19), metres(0.09), radians(Math.PI / 4), metres(0.004))).toBeCloseTo(0.104, 12)
  })
  test('a strand is followed under the base, up the side, and beyond', () => {
    const path = { touched: [{ r: 0.1, z: 0.2 }, { r: 0.1, z: 0 }], knotToBaseEdge: metres(0.1), knotToLeave: metres(0.3), angle: radians(0) }
    expect(pointAlong(path, metres(0.06))).toEqual({ r: 0.06, z: 0 })
    expect(pointAlong(path, metres(0.2)).z).toBeCloseTo(0.1, 12)
    expect(pointAlong(path, metres(0.35)).z).toBeCloseTo(0.25, 12)
  })
})
