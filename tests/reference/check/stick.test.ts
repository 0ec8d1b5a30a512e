import { describe, expect, test } from 'vitest'
import { TURNBUCKLE_ENDS } from '../../../src/catalogue/connectors'
import { PROOF_COIL, UNWELDED_CHAIN } from '../../../src/catalogue/chain'
import { WOODS } from '../../../src/catalogue/woods'
import { permissibleBending } from '../../../src/check/woodStrength'
import { solve } from '../../../src/check/solve'
import { stickBeam, stickSag } from '../../../src/check/stickBeam'
import { metres, pascals } from '../../../src/quantity/si'
import { hookFirstYield } from '../../../src/statics/curvedBar'
import { closedRingLoad, openHookLoad, ringFirstYield } from '../../../src/statics/wire'
import { codesOf, linkIn } from '../../unit/check/linkOf'
import { onStick } from '../../unit/check/links/stickOf'
import { hangerOf } from '../../unit/hanger/hangerOf'
import { ON_STICK } from '../../unit/check/links/stickOf'
import type { LinkResult, Patch } from '#core'

const partIn = (patch: Patch, part: string, code: string): LinkResult => {
  const found = onStick(patch).links.find((l) => l.link === 'stick' && l.part === part && l.case === code)
  if (!found) throw new Error(`no ${part} in ${code}`)
  return found
}

describe('a stick with one row of lark’s heads in its middle', () => {
  const CENTRE = { 'stick.held': 'twoHooks', 'stick.bunch': '0 mm', 'stick.span': '400 mm', 'stick.length': '420 mm' } as const

  test('is bent by W L / 4 and sags by W L3 / (48 E I) (Shigley, table A-9: simple supports, centre load)', () => {
    const beam = stickBeam(solve(hangerOf({ ...ON_STICK, ...CENTRE })), 'watered')
    if (!beam.ok) throw new Error(beam.finding.code)
    expect(beam.moment).toBeCloseTo(0.4 / 4, 12)
    expect(beam.shear).toBeCloseTo(0.5, 12)
    expect(stickSag(beam)).toBeCloseTo(0.4 ** 3 / 48, 12)
  })

  test('100 N over 400 mm of 20 mm yellow birch stress it with 12.7 N/mm2 (by hand), 32.9 being permissible (ASTM D245)', () => {
    const allowed = partIn(CENTRE, 'stickBendingAllowed', 'dry')
    // Duration 0.9 comes as a factor of its own; 100 N is 12.7 of the 32.9 N/mm2.
    const permissible = (allowed.capacity?.value ?? NaN) * 0.9
    expect((100 / permissible) * 32.87).toBeCloseTo(12.73, 1)
  })

  test.each<[keyof typeof WOODS, number]>([['yellowBirch', 32.9], ['americanBeech', 29.7], ['yellowPoplar', 20.2], ['easternWhitePine', 18.6]])('%s: %d N/mm2 for good', (code, permissible) => {
    expect(permissibleBending(WOODS[code].kind, WOODS[code].rupture) / 1e6).toBeCloseTo(permissible, 1)
    const section = (Math.PI * 20 ** 3) / 32
    expect(((partIn({ ...CENTRE, 'stick.wood': code }, 'stickBendingAllowed', 'dry').capacity?.value ?? NaN) * 0.9 * 100) / section).toBeCloseTo(permissible, 0)
  })

  test('the two routes lie near each other: low strength under ten years and a reserve of two, or the permissible one', () => {
    const patch = { ...CENTRE, 'place.life': '10 years' }
    const [strength, allowed] = ['stickBending', 'stickBendingAllowed'].map((part) => partIn(patch, part, 'dry').allowable?.value ?? NaN)
    // 0.62 / 2 against 0.9 / 2.3 (Madison curve; ASTM D245 and NDS 2.3.2).
    expect((strength ?? NaN) / (allowed ?? NaN)).toBeCloseTo((0.62 / 2) / (0.9 / 2.3), 2)
  })

  test('held at 0.207 of its length from each end under an even row it bears most (textbook mechanics)', () => {
    // 0.0214 w L2 with w = W / L; twelve legs over the whole length are nearly even, one of them a third.
    const momentAt = (share: number): number => {
      const beam = stickBeam(solve(hangerOf({ ...ON_STICK, 'make.legs': '12', 'stick.held': 'twoHooks', 'stick.length': '600 mm', 'stick.bunch': '600 mm', 'stick.span': `${600 * (1 - 2 * share)} mm` })), 'watered')
      return beam.ok ? beam.moment : NaN
    }
    expect(momentAt(0.207)).toBeLessThan(momentAt(0))
    expect(momentAt(0.207)).toBeLessThan(momentAt(0.3))
  })
})

describe('the V of a top cord', () => {
  // T / W by the angle from the horizontal: 10 degrees 2.88, 15 1.93, 20 1.46, 30 1.00, 45 0.71, 60 0.58 (1 / (2 sin q)).
  test.each([[15, 1.93], [20, 1.46], [30, 1], [45, 0.71], [60, 0.58]])('%d degrees from the horizontal: %d of the weight', (angle, share) => {
    const check = onStick({ 'stick.bunch': '0 mm', 'stick.topCord': `${300 / Math.cos((angle * Math.PI) / 180)} mm` })
    expect((linkIn(check, 'topCord', 'dry').demand?.value ?? NaN) / check.solved.loads.dry.weight).toBeCloseTo(share, 2)
    expect(codesOf(check, 'topCord').includes('TOP_CORD_SHALLOW')).toBe(angle < 30)
  })
})

describe('open hooks and closed eyes', () => {
  // Turnbuckles M4 to M8 deform as hook at 0.19 to 0.28 of the eye (fittings maker’s catalogue, p. 42).
  test('the ratio of the hinges, a quarter, lies within what the maker found', () => {
    const measured = TURNBUCKLE_ENDS.map(({ hook, eye }) => hook.value / eye.value)
    const ours = openHookLoad(metres(0.006), metres(0.02), pascals(250e6)) / closedRingLoad(metres(0.006), metres(0.02), pascals(250e6))
    expect(ours).toBe(0.25)
    expect(Math.min(...measured)).toBeLessThan(ours)
    expect(Math.max(...measured)).toBeGreaterThan(ours)
  })

  // At first yield thin elastic rings and Winkler’s curved bar give another ratio: of the same order.
  test.each([[3, 10], [4, 12], [6, 18]])('so does that of their first yields: %d mm wire, inside radius %d mm', (wire, inner) => {
    const [d, inside] = [metres(wire / 1000), metres((2 * inner) / 1000)]
    const ratio = hookFirstYield(d, inside, pascals(250e6)) / ringFirstYield(d, inside, pascals(250e6))
    expect(ratio).toBeGreaterThan(0.19)
    expect(ratio).toBeLessThan(0.32)
  })

  // M4 hook 100 kg, M5 130 kg (p. 42): wire of bar thickness and an eye of some 10 mm stays under it.
  test('a hinge of 4 mm mild wire round 10 mm opens before the maker’s M4 hook deforms', () => {
    expect(openHookLoad(metres(0.004), metres(0.01), pascals(250e6))).toBeLessThan(100 * 9.80665)
  })
})

describe('chain', () => {
  const POUNDS = 4.4482216
  // Grade 30 proof coil: 1/8 in 400 lb, 3/16 in 800, 1/4 in 1300, 5/16 in 1900 (NACM); jack chain No. 10 43 lb, No. 12 29 lb (ERI 415).
  test.each([['1/8 in', 400], ['3/16 in', 800], ['1/4 in', 1300], ['5/16 in', 1900]])('welded %s: %d lb', (id, pounds) => {
    expect((PROOF_COIL.find((row) => row.id === id)?.limit.value ?? NaN) / POUNDS).toBeCloseTo(pounds, 3)
  })

  test('a welded link is nowhere near as weak as an unwelded one of like wire', () => {
    const jack = UNWELDED_CHAIN.find((row) => row.id === 'jack No. 10')?.limit.value ?? NaN
    expect((PROOF_COIL[0]?.limit.value ?? NaN) / jack).toBeGreaterThan(5)
  })
})
