import { describe, expect, test } from 'vitest'
import type { CaseCode, CheckResult, LinkResult, Patch } from '#core'
import type { Part } from '../../../../src/check/linkResult'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf } from '../linkOf'
import { BRACKET, WALL_HOOK } from './places'

const check = (patch: Patch): CheckResult => checkOf({ ...ORDINARY, ...patch })
function route(patch: Patch, part: Part, code: CaseCode = 'watered'): LinkResult {
  const found = check(patch).links.find((l) => l.link === 'fixing' && l.part === part && l.case === code)
  if (found === undefined) throw new Error(`${part} in ${code}`)
  return found
}
const lineOf = (result: LinkResult, symbol: string): number => result.terms.find((t) => t.symbol === symbol)?.value ?? NaN
const used = (patch: Patch, part: Part, code: CaseCode = 'watered'): number => route(patch, part, code).utilisation ?? Infinity
const named = (screw: string, patch: Patch = {}): Patch => ({ ...without(without(ORDINARY, 'fixing.diameter'), 'fixing.penetration'), 'fixing.kind': 'woodScrew', 'fixing.screw': screw, ...patch })
const depthOf = (patch: Patch): number => lineOf(checkOf(patch).links.find((l) => l.id === 'fixing.allowableRoute.dry') as LinkResult, 'L') * 1000

describe('a screw by its packet', () => {
  test('holds by two thirds of its length, or by the thread that is printed, less what lies between', () => {
    expect(depthOf(named('6 x 90 mm'))).toBeCloseTo(60, 9)
    expect(depthOf(named('6 x 90/54'))).toBeCloseTo(54, 9)
    expect(depthOf(named('6 x 60', { 'fixing.between': '13 mm' }))).toBeCloseTo(40, 9)
    expect(depthOf(named('6 x 60', { 'fixing.between': '25 mm' }))).toBeCloseTo(35, 9)
  })

  test('is known: neither its thickness nor its depth is assumed', () => {
    expect(codesOf(checkOf(named('6 x 60')), 'fixing').filter((code) => code.startsWith('ASSUMED'))).toEqual([])
    expect(lineOf(checkOf(named('#12 x 3 in')).links.find((l) => l.id === 'fixing.allowableRoute.dry') as LinkResult, 'D')).toBeCloseTo(0.216 * 0.0254, 12)
  })

  test('measured depth and packet together count the lesser', () => {
    expect(depthOf(named('6 x 60', { 'fixing.penetration': '30 mm' }))).toBeCloseTo(30, 9)
    expect(depthOf(named('6 x 60', { 'fixing.penetration': '55 mm' }))).toBeCloseTo(40, 9)
  })

  test('longer than the timber is told, and what comes out behind does not count', () => {
    const through = named('6 x 90', { 'fixing.between': '10 mm', 'fixing.timberDepth': '50 mm' })
    expect(checkOf(through).links.flatMap((l) => l.findings)).toContainEqual({ code: 'SCREW_LONGER_THAN_TIMBER', length: expect.closeTo(0.08, 12) as number, depth: expect.closeTo(0.05, 12) as number })
    expect(depthOf(through)).toBeCloseTo(30, 9)
    expect(codesOf(checkOf(named('6 x 60', { 'fixing.timberDepth': '60 mm' })), 'fixing')).not.toContain('SCREW_LONGER_THAN_TIMBER')
  })

  test('asks for a lead hole by the root of its thread: 70 % of it in softwood, 90 % in hardwood', () => {
    const hole = (timber: string): number => checkOf(named('#8 x 2 in', { 'place.timber': timber })).links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'LEAD_HOLE' ? [f.diameter] : []))[0] ?? NaN
    expect(hole('softwood')).toBeCloseTo(0.7 * 0.131 * 0.0254, 12)
    expect(hole('hardwood')).toBeCloseTo(0.9 * 0.131 * 0.0254, 12)
  })
})

describe('a lag screw', () => {
  const lag = { 'fixing.kind': 'lagScrew', 'fixing.diameter': '8 mm', 'fixing.penetration': '58 mm', 'place.timber': 'sprucePineFir' } as const

  test('holds without its tip, by formulas of its own: by hand', () => {
    expect(route(lag, 'ultimateRoute').capacity?.value).toBeCloseTo(125.4 * 0.32 ** 1.5 * 8 ** 0.75 * 50, 6)
    expect(route(lag, 'allowableRoute').capacity?.value).toBeCloseTo(27.86 * 0.42 ** 1.5 * 8 ** 0.75 * 50, 6)
  })

  test('holds three quarters in end grain, where others are refused', () => {
    for (const part of ['ultimateRoute', 'allowableRoute'] as const) {
      expect(route({ ...lag, 'fixing.grain': 'end' }, part).capacity?.value).toBeCloseTo(0.75 * (route(lag, part).capacity?.value ?? NaN), 9)
    }
  })

  test('needs four diameters, a wood screw six', () => {
    const short = { 'fixing.diameter': '8 mm', 'fixing.penetration': '44 mm' } as const
    expect(codesOf(check({ ...lag, ...short }), 'fixing')).not.toContain('PENETRATION_TOO_SHORT')
    expect(codesOf(check({ ...short, 'fixing.kind': 'woodScrew' }), 'fixing')).toContain('PENETRATION_TOO_SHORT')
  })
})

describe('pull and shear at once', () => {
  test('use up the sum of their shares, on both routes', () => {
    for (const patch of [WALL_HOOK, BRACKET, { 'fixing.kind': 'woodScrew' }] as const) {
      for (const part of ['ultimateRoute', 'allowableRoute'] as const) {
        const result = route(patch, part, 'bump')
        const factors = result.factors.reduce((product, f) => product * f.value, 1)
        expect(result.utilisation).toBeCloseTo((lineOf(result, 'E_N') / lineOf(result, 'R') + lineOf(result, 'E_V') / lineOf(result, 'R_V')) / factors, 9)
      }
    }
  })

  test('across, by the yield of the root at the wood’s face: by hand', () => {
    const result = route({ ...BRACKET, 'fixing.diameter': '5 mm', 'fixing.penetration': '45 mm', 'place.timber': 'sprucePineFir' }, 'allowableRoute')
    // Root 3 mm, Fe = 114.5 x 0.42^1.84, Fyb 100 ksi, bending sqrt(2 My q); under 0.17 in reduced by 2.2.
    const q = 114.5 * 0.42 ** 1.84 * 3
    expect(lineOf(result, 'R_V')).toBeCloseTo(Math.sqrt((2 * 689.4757293168361 * 27 * q) / 6) / 2.2, 6)
  })

  test('across, on the ultimate route: 3.5 times the proportional limit in softwood, less under seven diameters deep', () => {
    const across = (mm: string): number => lineOf(route({ ...BRACKET, 'fixing.diameter': '5 mm', 'fixing.penetration': mm }, 'ultimateRoute'), 'R_V')
    expect(across('45 mm')).toBeCloseTo(3.5 * 23.17 * 25, 6)
    expect(across('31.5 mm')).toBeCloseTo(3.5 * 23.17 * 25 * 0.9, 6)
  })
})

describe('timber', () => {
  test('that is damp counts less, on both routes, nails across too', () => {
    for (const exposure of ['steamy', 'outdoors'] as const) {
      for (const part of ['ultimateRoute', 'allowableRoute'] as const) {
        expect(route({ 'place.exposure': exposure }, part).factors.find((f) => f.code === 'wetService')?.value).toBe(0.7)
        const nail = { ...WALL_HOOK, 'hook.projection': '140 mm', 'fixing.kind': 'nail', 'place.exposure': exposure } as const
        expect(route(nail, part).factors.find((f) => f.code === 'wetService')?.value).toBe(0.7)
      }
    }
    expect(route({}, 'allowableRoute').factors.map((f) => f.code)).toEqual(['duration', 'reserve'])
  })

  test('of unknown species counts as the lightest softwood; heavier ones never hold less', () => {
    expect(used({ 'place.timber': 'unknown' }, 'allowableRoute')).toBe(used({ 'place.timber': 'softwood' }, 'allowableRoute'))
    for (const part of ['ultimateRoute', 'allowableRoute'] as const) {
      const rising = (['softwood', 'sprucePineFir', 'douglasFirLarch', 'southernPine'] as const).map((timber) => used({ 'place.timber': timber }, part))
      expect(rising.every((u, i) => i === 0 || u <= (rising[i - 1] ?? NaN) + 1e-12)).toBe(true)
    }
  })

  test('the safety that the allowable hides is shown: what pulls out over what is allowed', () => {
    const shown = (patch: Patch): number => lineOf(route(patch, 'allowableRoute'), 'q_w')
    expect(shown({})).toBeCloseTo(5.5, 1)
    expect(shown({ 'fixing.kind': 'lagScrew' })).toBeCloseTo(4.5, 1)
  })
})

describe('one screw overhead is trusted less until it is pulled; not so', () => {
  test.each([['two of one plate', { 'fixing.count': '2' }], ['the screws of a bracket', BRACKET], ['a hook in a wall', WALL_HOOK]] as const)('%s', (_, patch) => {
    expect(codesOf(checkOf({ ...without(ORDINARY, 'fixing.proof'), ...patch }), 'fixing')).not.toContain('PULL_IN_PLACE')
  })

  test('and the pull asked for counts what else hangs there', () => {
    const mass = (patch: Patch): number => checkOf({ ...without(ORDINARY, 'fixing.proof'), ...patch }).links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'PULL_IN_PLACE' ? [f.mass] : []))[0] ?? NaN
    expect(mass({ 'rail.others': '4 kg' }) - mass({})).toBeCloseTo(6, 9)
  })
})

describe('never the wrong way round', () => {
  const worst = (patch: Patch): number => Math.max(...check(patch).links.filter((l) => l.link === 'fixing').map((l) => l.utilisation ?? Infinity))
  const falling = (values: readonly number[]): boolean => values.every((u, i) => i === 0 || u <= (values[i - 1] ?? NaN) * (1 + 1e-12))
  const PLACES = [{}, WALL_HOOK, BRACKET, { ...BRACKET, 'place.support': 'swingArm' }] as const

  test.each(PLACES)('deeper never holds less: %j', (place) => {
    expect(falling(['12', '21', '30', '37', '46', '60', '88'].map((mm) => worst({ ...place, 'fixing.penetration': `${mm} mm` })))).toBe(true)
  })

  test.each(PLACES)('more load never uses less, nor more loads beside it: %j', (place) => {
    expect(falling(['9 kg', '6 kg', '3.2 kg', '1 kg'].map((mass) => worst({ ...place, 'weighed.mass': mass })))).toBe(true)
    expect(falling(['9 kg', '2 kg', '0.3 kg'].map((mass) => worst({ ...place, 'rail.others': mass })))).toBe(true)
  })

  test.each(['bracket', 'swingArm'])('more screws or a shorter arm of a %s never use more, a taller plate neither', (support) => {
    const bracket = { ...BRACKET, 'place.support': support } as const
    expect(falling(['2', '3', '4', '6', '8'].map((n) => worst({ ...bracket, 'bracket.screws': n })))).toBe(true)
    expect(falling(['600', '330', '200', '90', '30'].map((mm) => worst({ ...bracket, 'bracket.reach': `${mm} mm` })))).toBe(true)
    expect(falling(['40', '90', '150', '320'].map((mm) => worst({ ...bracket, 'bracket.top': `${mm} mm` })))).toBe(true)
  })

  test('more fixings of a plate never use more', () => {
    expect(falling(['1', '2', '3', '7'].map((n) => worst({ 'fixing.count': n })))).toBe(true)
  })
})

test('a screw that is not named as on a packet is not read', () => {
  expect(() => check({ 'fixing.screw': 'a long one' })).toThrow(/BAD_SCREW/)
  expect(() => check({ 'fixing.screw': '8 x 40' })).toThrow(/GAUGE_OR_MILLIMETRES/)
})

describe('the lines of a screw, lag or nail', () => {
  const wall = (kind: string, more: Patch = {}): Patch => ({ ...WALL_HOOK, 'fixing.kind': kind, 'fixing.diameter': '5 mm', 'fixing.penetration': '40 mm', 'hook.projection': '140 mm', ...more })
  const broken = (kind: string, more: Patch = {}) => route(wall(kind, more), 'ultimateRoute')

  test('count a nail’s side load whole, a screw’s by its depth', () => {
    expect(lineOf(broken('nail', { 'fixing.penetration': '28 mm' }), 'k_l')).toBe(1)
    expect(lineOf(broken('woodScrew', { 'fixing.penetration': '28 mm' }), 'k_l')).toBeLessThan(1)
  })

  test('name the share across the grain of lags of the lag table alone', () => {
    const named = (kind: string, more: Patch = {}): boolean => broken(kind, more).terms.some((t) => t.symbol === 'k_across')
    expect(named('lagScrew', { 'fixing.diameter': '10 mm', 'fixing.penetration': '80 mm' })).toBe(true)
    expect(named('lagScrew', { 'fixing.diameter': '4 mm' })).toBe(false)
    expect(named('woodScrew')).toBe(false)
  })

  test('tell a nail’s diameter from a thread, and what of a lag is not counted', () => {
    const sourceOf = (kind: string, symbol: string): string | undefined => broken(kind).terms.find((t) => t.symbol === symbol)?.source
    expect(sourceOf('nail', 'D')).toContain('nail')
    expect(sourceOf('woodScrew', 'D')).toContain('thread')
    expect(sourceOf('lagScrew', 'L')).toContain('tip')
    expect(sourceOf('woodScrew', 'L')).not.toContain('tip')
  })
})

test('a screw as long as board and timber together does not come out behind', () => {
  const inTimber = (between: string) => codesOf(checkOf(named('6 x 60', { 'fixing.between': between, 'fixing.timberDepth': '50 mm' })), 'fixing')
  expect(inTimber('12 mm')).not.toContain('SCREW_LONGER_THAN_TIMBER')
  expect(inTimber('8 mm')).toContain('SCREW_LONGER_THAN_TIMBER')
})
