import { describe, expect, test } from 'vitest'
import { isWorse, type CheckResult, type LinkCode, type Patch } from '#core'
import { checkOf, ORDINARY } from '../../unit/hanger/hangerOf'

// Common practice, no source: what a practised maker expects of ordinary hangers.

const worst = (check: CheckResult, ...links: readonly LinkCode[]) =>
  check.links.filter((l) => links.length === 0 || links.includes(l.link)).reduce((a, b) => (isWorse(b.verdict, a.verdict) ? b : a))

const TWELVE: Patch = {
  ...ORDINARY, 'pot.rim': '260 mm', 'pot.height': '235 mm', 'pot.base': '180 mm', 'weighed.mass': '12 kg', 'make.totalLength': '120 cm', 'cradle.first': '145 mm',
  'hook.rated': '60 kgf', 'hook.wire': '8 mm', 'fixing.diameter': '8 mm', 'fixing.penetration': '60 mm', 'fixing.proof': '20 kg', 'ring.wire': '6 mm',
}

describe('over a table', () => {
  test('6 kg flooded on 4 x 4 strands of weighed 3 mm loose cotton holds or just holds in every link', () => {
    expect(worst(checkOf(ORDINARY))).toMatchObject({ verdict: expect.stringMatching(/^(holds|just holds)$/) as string })
  })

  test('12 kg flooded on weighed 5 mm holds or just holds in every link', () => {
    const check = checkOf({ ...TWELVE, 'cord.diameter': '5 mm', 'cord.linearDensity': '13 g/m' })
    expect(worst(check)).toMatchObject({ verdict: expect.stringMatching(/^(holds|just holds)$/) as string })
  })

  test('12 kg on the 3 mm string just holds at best', () => {
    expect(worst(checkOf(TWELVE), 'leg', 'gatheringTurn', 'wrapHoop').verdict).not.toBe('holds')
  })

  test('12 kg on cord known by its diameter only is not known or fails, and the answer says what to weigh', () => {
    const byDiameter: Patch = Object.fromEntries(Object.entries(TWELVE).filter(([path]) => path !== 'cord.linearDensity'))
    const leg = worst(checkOf(byDiameter), 'leg')
    expect(['not enough known', 'fails']).toContain(leg.verdict)
    expect(leg.findings.map((f) => f.code)).toContain('CORD_BY_DIAMETER')
  })

  test('the overall factor of the ordinary hanger falls within the guidance for fibre rope, or near above it', () => {
    const leg = checkOf(ORDINARY).links.find((l) => l.link === 'leg' && l.case === 'watered')
    expect(leg?.overallFactor).toBeGreaterThan(5)
    expect(leg?.overallFactor).toBeLessThan(20)
  })
})
