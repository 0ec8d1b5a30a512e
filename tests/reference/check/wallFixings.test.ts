import { describe, expect, test } from 'vitest'
import type { CaseCode, LinkCode, LinkResult, Patch } from '#core'
import { eurocodePermanent, eurocodeWithdrawal } from '../../../src/check/eurocodeWithdrawal'
import { allowableWithdrawal, impliedSafety, ultimateWithdrawal } from '../../../src/check/withdrawal'
import { INCH, kilogramsPerCubicMetre, metres, POUND, radians, STANDARD_GRAVITY } from '../../../src/quantity/si'
import { checkOf, ORDINARY } from '../../unit/hanger/hangerOf'

// The place in a whole check against what books print; the formulas alone are held to them elsewhere.

const POUND_FORCE = POUND * STANDARD_GRAVITY
const linkOf = (patch: Patch, link: LinkCode, part: string, code: CaseCode = 'watered'): LinkResult => {
  const found = checkOf({ ...ORDINARY, ...patch }).links.find((l) => l.link === link && l.part === part && l.case === code)
  if (found === undefined) throw new Error(`${link}.${part}.${code}`)
  return found
}
const lineOf = (result: LinkResult, symbol: string): number => result.terms.find((t) => t.symbol === symbol)?.value ?? NaN

describe('AWC National Design Specification, lag screws, table 12.2A: lb for each inch of thread, G 0.42, 0.50, 0.55', () => {
  const TIMBERS = [['sprucePineFir', 0.42], ['douglasFirLarch', 0.5], ['southernPine', 0.55]] as const
  const ROWS = [['1/4 in', 0.25, [173, 225, 260]], ['5/16 in', 0.3125, [205, 266, 307]], ['3/8 in', 0.375, [235, 305, 352]], ['1/2 in', 0.5, [291, 378, 437]]] as const
  const cells = ROWS.flatMap(([size, inches, row]) => TIMBERS.map(([timber], i) => ({ size, inches, timber, pounds: row[i] ?? NaN })))

  test.each(cells)('$size in $timber: $pounds lb/in', ({ size, inches, timber, pounds }) => {
    // Two inches of thread beyond the tip, which is not counted (note of the table).
    const link = linkOf({ 'fixing.kind': 'lagScrew', 'fixing.diameter': size, 'fixing.penetration': `${2 + inches} in`, 'place.timber': timber }, 'fixing', 'allowableRoute')
    expect(Math.abs((link.capacity?.value ?? NaN) / 2 / POUND_FORCE - pounds)).toBeLessThanOrEqual(0.6)
    expect(link.factors.find((f) => f.code === 'duration')?.value).toBe(0.9)
  })
})

describe('AWC National Design Specification, wood screws by their packets: W = 2850 G2 D lb for each inch of thread', () => {
  test.each([['#8 x 3 in', 'sprucePineFir', 82], ['#10 x 3 in', 'douglasFirLarch', 135], ['#12 x 3 in', 'southernPine', 186], ['#14 x 3 in', 'douglasFirLarch', 172]] as const)('%s in %s holds %d lb/in over two thirds of its length', (screw, timber, pounds) => {
    const patch = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => path !== 'fixing.diameter' && path !== 'fixing.penetration'))
    const link = checkOf({ ...patch, 'fixing.kind': 'woodScrew', 'fixing.screw': screw, 'place.timber': timber }).links.find((l) => l.id === 'fixing.allowableRoute.dry')
    expect(Math.abs((link?.capacity?.value ?? NaN) / 2 / POUND_FORCE - pounds)).toBeLessThanOrEqual(0.6)
  })
})

describe('two ways of the books to one screw', () => {
  // USDA Wood Handbook, chapter 8, over AWC National Design Specification, at one gravity: 15 700 / 2850, 8100 / 1800, 7850 / 1380.
  test.each([['woodScrew', 15_700 / 2850, 5.5], ['lagScrew', 8100 / 1800, 4.5], ['smoothNail', 7850 / 1380, 5.7]] as const)('%s: the ultimate is %d times the allowable', (kind, inches, rounded) => {
    expect(impliedSafety(kind)).toBeCloseTo(inches, 2)
    expect(Math.round(impliedSafety(kind) * 10) / 10).toBe(rounded)
    const [gravity, diameter, length] = [0.47, metres(0.0053), metres(0.041)]
    expect(ultimateWithdrawal(kind, gravity, diameter, length) / allowableWithdrawal(kind, gravity, diameter, length)).toBeCloseTo(impliedSafety(kind), 9)
  })

  test('the ratio is shown in the sum of the allowable, and follows from its two constants', () => {
    for (const [kind, ratio] of [['woodScrew', 5.5], ['lagScrew', 4.5]] as const) expect(Math.abs(lineOf(linkOf({ 'fixing.kind': kind }, 'fixing', 'allowableRoute'), 'q_w') - ratio)).toBeLessThan(0.05)
  })

  test('over people both routes and Eurocode 5 lie within a factor of four of each other: 6 mm screw, 36 mm of thread in C24 or spruce-pine-fir', () => {
    const patch: Patch = { 'fixing.kind': 'woodScrew', 'fixing.diameter': '6 mm', 'fixing.penetration': '36 mm', 'place.timber': 'sprucePineFir', 'place.beneath': 'people', 'fixing.proof': '20 kg' }
    const handbook = linkOf(patch, 'fixing', 'ultimateRoute', 'dry').allowable?.value ?? NaN
    const specification = linkOf(patch, 'fixing', 'allowableRoute', 'dry').allowable?.value ?? NaN
    // EN 1995-1-1, 8.7.2: 2.6 kN characteristic, permanent 0.6 / 1.3.
    const eurocode = (eurocodeWithdrawal(metres(0.006), metres(0.036), kilogramsPerCubicMetre(350), radians(Math.PI / 2)) ?? NaN) * eurocodePermanent('sheltered')
    expect(Math.max(handbook, specification, eurocode) / Math.min(handbook, specification, eurocode)).toBeLessThan(4)
    expect(handbook).toBeLessThan(eurocode)
  })
})

describe('Shigley, Mechanical Engineering Design: a bracket that turns on its lower edge, T = W a y / sum y2', () => {
  test('100 N at 250 mm, screws 100 and 20 mm up: 240 N and 48 N a row', () => {
    const patch: Patch = { 'place.support': 'bracket', 'bracket.reach': '250 mm', 'bracket.screws': '2', 'bracket.top': '100 mm', 'bracket.bottom': '20 mm', 'fixing.kind': 'woodScrew' }
    const link = linkOf(patch, 'fixing', 'allowableRoute')
    const W = lineOf(link, 'W')
    // Each row by itself: 240.4 and 48.1 for 100 N.
    expect((lineOf(link, 'E_N') / W) * 100).toBeCloseTo((250 * 100) / (100 ** 2 + 20 ** 2) * 100, 6)
    expect(Math.abs((lineOf(link, 'E_N') / W) * 100 - 240)).toBeLessThan(0.5)
    expect((lineOf(link, 'E_V') / W) * 100).toBeCloseTo(50, 9)
  })
})

describe('textbook cantilever: the arm of a bracket', () => {
  test('a round bar of 12 mm, 250 N/mm2, hinges under 288 N at 250 mm: f d3 / 6 over the reach', () => {
    const link = linkOf({ 'place.support': 'bracket', 'bracket.reach': '250 mm', 'bracket.metal': 'steel', 'bracket.thick': '12 mm', 'bracket.high': '12 mm' }, 'bracket', 'armHinge')
    expect(link.capacity?.value).toBeCloseTo(288, 9)
  })
})

describe('AWC Technical Report 12: a pin standing out of wood, P e + P2 / (2 Fe D) = Fyb D3 / 6', () => {
  // By hand for short loads in wood of gravity 0.42: 2.87 mm nail, Fyb 690 N/mm2, Fe 23.2 N/mm2: 232, 130 and 89 N. The check takes
  // the lightest of the species, and less for a lasting load, so that it lies below.
  test.each([[10, 232], [20, 130], [30, 89]])('a nail of 2.87 mm, %d mm out, yields near %d N', (out, load) => {
    const patch: Patch = { 'place.support': 'wallHook', 'hook.projection': `${out} mm`, 'fixing.kind': 'nail', 'fixing.diameter': '2.87 mm', 'fixing.penetration': '60 mm', 'place.timber': 'sprucePineFir' }
    const link = linkOf(patch, 'pin', 'pinInWood', 'setDown')
    const q = 114.5 * 0.32 ** 1.84 * 2.87
    const P = link.capacity?.value ?? NaN
    expect(P * out + P ** 2 / (2 * q)).toBeCloseTo((689.4757293168361 * 2.87 ** 3) / 6, 2)
    expect(P).toBeLessThan(load)
    expect(P).toBeGreaterThan(0.8 * load)
    expect(linkOf(patch, 'pin', 'pinInWood', 'dry').capacity?.value).toBeLessThan(P)
  })
})

describe('linear interaction of pull and shear, N / NR + V / VR <= 1', () => {
  test('a rated fixing on both ways at half of each is used whole', () => {
    const patch: Patch = { 'place.support': 'wallHook', 'place.substrate': 'solidBrick', 'fixing.ratedFor': 'pullOut', 'fixing.kind': 'metalAnchor', 'hook.projection': '20 mm', 'fixing.rated': '500 N' }
    const { pull, along } = { pull: lineOf(linkOf(patch, 'fixing', 'rated'), 'E_N'), along: lineOf(linkOf(patch, 'fixing', 'rated'), 'E_V') }
    const link = linkOf({ ...patch, 'fixing.rated': `${2 * pull} N`, 'fixing.ratedShear': `${2 * along} N` }, 'fixing', 'rated')
    expect(link.utilisation).toBeCloseTo(1, 9)
    expect(link.verdict).toBe('just holds')
  })
})

test('a nail’s own inch is 25.4 mm: the least penetration of six diameters is by the nail', () => {
  const short = linkOf({ 'place.support': 'wallHook', 'hook.projection': '140 mm', 'fixing.kind': 'nail', 'fixing.diameter': '0.148 in', 'fixing.penetration': `${5.9 * 0.148} in` }, 'fixing', 'allowableRoute')
  expect(short.findings).toContainEqual({ code: 'PENETRATION_TOO_SHORT', given: expect.closeTo(5.9 * 0.148 * INCH, 9) as number, least: expect.closeTo(6 * 0.148 * INCH, 9) as number })
})
