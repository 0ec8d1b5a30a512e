import { describe, expect, test } from 'vitest'
import { checkOf, documentOf, ORDINARY } from '../hanger/hangerOf'
import { findRemedies, heaviestPot, type CheckResult, type LinkCode, type Patch } from '#core'
import { poseOf } from '../../../src/drawing/pose'

const G = 9.80665
/** Two pots of 15 and 13 cm on 4 x 4 strands of weighed 4 mm cotton, over furniture. */
const TIERS = {
  ...ORDINARY, 'pot.rim': '150 mm', 'pot.height': '130 mm', 'pot.base': '100 mm', 'weighed.mass': '2.6 kg', 'weighed.state': 'watered', 'plant.height': '12 cm',
  'make.arrangement': 'tiers', 'make.totalLength': '85 cm', 'make.fringe': '20 cm', 'cord.diameter': '4 mm', 'cord.linearDensity': '8.5 g/m', 'cradle.first': '85 mm',
  'tiers.count': '2', 'tiers.how': 'runOn',
  'second.rim': '130 mm', 'second.height': '115 mm', 'second.base': '90 mm', 'second.mass': '1.8 kg', 'second.state': 'watered', 'second.strand': '420 mm', 'second.first': '75 mm',
} as const
const tiered = (patch: Patch) => checkOf({ ...TIERS, ...patch })
const result = (check: CheckResult, link: LinkCode, code: string, tier: number) => {
  const found = check.links.find((l) => l.link === link && l.case === code && l.tier === tier)
  if (found === undefined) throw new Error(`${link} ${code} ${tier}`)
  return found
}
const used = (check: CheckResult, link: LinkCode, code: string, tier: number) => result(check, link, code, tier).utilisation ?? NaN
const most = (check: CheckResult, link: LinkCode, code: string, tier: number) => Math.max(...check.links.filter((l) => l.link === link && l.case === code && l.tier === tier).map((l) => l.utilisation ?? NaN))
const hung = (check: CheckResult, tier: number) => {
  const found = check.solved.tiers[tier - 1]
  if (found === undefined) throw new Error(String(tier))
  return found.hung
}
const MADE_EVEN = { 'make.tolerance': '0 mm', 'seat.offset': '0 mm' } as const
/** Of a leg as solved: its height over its length. */
function risePerLength(check: CheckResult, tier: number, code: 'watered' | 'flooded' | 'lowerOut', i: number): number {
  const pose = poseOf(hung(check, tier), code)
  if (pose === null) throw new Error('not posed')
  const d = pose.upperEnd(i).map((x, k) => x - (pose.leavePoint(i)[k] ?? NaN))
  return (d[2] ?? NaN) / Math.hypot(...d)
}
/** What the legs of one pot lift, as drawn. */
function lifted(check: CheckResult, tier: number, code: 'watered' | 'flooded' | 'lowerOut'): number {
  const { slings, plan } = hung(check, tier)
  const { drawn } = slings?.[code] ?? {}
  if (drawn === undefined || !('T' in drawn) || plan === null) throw new Error('not solved')
  // Towards each upper end from where the pot was moved to.
  return drawn.T.reduce((sum, T, i) => sum + T * risePerLength(check, tier, code, i), 0)
}

describe('pots one under another', () => {
  test.each(['runOn', 'wrapped'] as const)('%s: the upper legs lift both pots with all cords, the lower legs the lower one', (how) => {
    const check = tiered({ 'tiers.how': how })
    const { loads } = check.solved
    expect(lifted(check, 1, 'watered') / loads.watered.weight).toBeCloseTo(1, 9)
    expect(lifted(check, 2, 'flooded') / hung(check, 2).loads.flooded.weight).toBeCloseTo(1, 9)
    expect(loads.watered.potted).toBeCloseTo(2.6 + 1.8, 9)
    expect(loads.watered.weight).toBeCloseTo((2.6 + 1.8 + check.solved.hangerMass.watered.high) * G, 9)
    expect(loads.lowerOut.potted).toBeCloseTo(2.6, 9)
  })

  test('on cords of their own: slings apart, hook and ring bear the sum', () => {
    const check = tiered({ 'tiers.how': 'ownCords' })
    expect(lifted(check, 1, 'watered') + lifted(check, 2, 'watered')).toBeCloseTo(check.solved.loads.watered.weight, 6)
    expect(result(check, 'hook', 'watered', 1).demand?.value).toBeCloseTo(check.solved.loads.watered.weight, 9)
    const alone = checkOf({ ...TIERS, 'make.arrangement': 'legs' })
    expect(used(check, 'leg', 'watered', 1) / used(alone, 'leg', 'watered', 1)).toBeCloseTo(1, 6)
  })

  test('the knot is drawn down as the closed form of statics says: n T cos b = both weights, n T\' cos g = the lower', () => {
    const check = tiered(MADE_EVEN)
    const { drawnKnot, geometry: { path } } = hung(check, 1)
    if (drawnKnot === null || !path.ok) throw new Error('not drawn')
    // In the state in which the lower part is the largest share of all.
    const shares = (['dry', 'watered', 'flooded'] as const).map((state) => check.solved.loads[state].below / (check.solved.loads[state].potted + check.solved.loads[state].hanger))
    expect(Math.cos(drawnKnot.angleBelow) / (Math.max(...shares) * Math.cos(path.angle))).toBeCloseTo(1, 3)
    expect(drawnKnot.drawn).toBeCloseTo(0.05 / Math.tan(drawnKnot.angleBelow), 9)
    const upper = hung(check, 1).slings?.watered.drawn
    const tension = check.solved.loads.watered.weight / (4 * Math.cos(path.angle))
    expect((upper !== undefined && 'T' in upper ? upper.T[0] ?? NaN : NaN) / tension).toBeCloseTo(1, 2)
  })

  test('a lower pot of almost nothing leaves the upper as it would hang alone', () => {
    const feather = { 'second.rim': '40 mm', 'second.height': '30 mm', 'second.base': '30 mm', 'second.mass': '0.06 kg', 'second.state': 'watered', 'second.strand': '50 mm', 'second.strands': '1', 'second.first': '20 mm' } as const
    const alone = checkOf({ ...TIERS, 'make.arrangement': 'legs' })
    const check = tiered(feather)
    for (const link of ['hook', 'leg', 'gatheringTurn', 'wrapHoop'] as const) expect(used(check, link, 'bump', 1) / used(alone, link, 'bump', 1)).toBeCloseTo(check.solved.loads.bump.weight / alone.solved.loads.bump.weight, 1)
  })

  test('a heavier lower pot makes no part safer but the seat and the grip that it holds down', () => {
    const masses = ['0.9 kg', '1.8 kg', '3.6 kg', '7.2 kg']
    const checks = masses.map((mass) => tiered({ 'second.mass': mass }))
    checks.slice(1).forEach((heavier, i) => {
      const lighter = checks[i] as CheckResult
      for (const { link, tier, case: code } of lighter.links) {
        if (link === 'seat' || (link === 'gatheringGrip' && tier === 1)) continue
        expect([link, tier, code, most(heavier, link, code, tier) / most(lighter, link, code, tier) > 1 - 1e-9]).toEqual([link, tier, code, true])
      }
    })
  })

  test('cords of their own past the pot above just hold at best, and it is said why', () => {
    const check = tiered({ 'tiers.how': 'ownCords' })
    const lower = check.links.filter((l) => l.link === 'leg' && l.tier === 2)
    expect(lower.length).toBeGreaterThan(0)
    expect(lower.map((l) => l.verdict)).not.toContain('holds')
    expect(check.findings.map((f) => f.code)).toContain('TIERS_OWN_CORDS')
    expect(tiered({}).findings.map((f) => f.code)).not.toContain('TIERS_OWN_CORDS')
  })

  test('strands that run on relieve the wraps; cords that only wraps hold ask more of them, and just hold at best', () => {
    const [runOn, wrapped] = [tiered({}), tiered({ 'tiers.how': 'wrapped' })]
    const alone = checkOf({ ...TIERS, 'make.arrangement': 'legs' })
    expect(used(runOn, 'gatheringGrip', 'watered', 1)).toBeLessThan(used(alone, 'gatheringGrip', 'watered', 1))
    expect(used(runOn, 'gatheringGrip', 'lowerOut', 1)).toBeGreaterThan(used(runOn, 'gatheringGrip', 'watered', 1))
    const demand = result(wrapped, 'gatheringGrip', 'watered', 1).demand?.value ?? NaN
    expect(demand).toBeGreaterThan((result(alone, 'gatheringGrip', 'watered', 1).demand?.value ?? NaN) + 1.8 * G)
    expect(result(wrapped, 'gatheringGrip', 'watered', 1).verdict).toBe('just holds')
    expect(wrapped.findings).toContainEqual({ code: 'TIERS_HELD_BY_WRAPS', assumed: false })
    expect(runOn.findings.map((f) => f.code)).not.toContain('TIERS_HELD_BY_WRAPS')
  })

  test('a seat is judged with the pot below lifted out', () => {
    const check = tiered({ 'second.mass': '8 kg' })
    const alone = checkOf({ ...TIERS, 'make.arrangement': 'legs' })
    expect(used(check, 'seat', 'lowerOut', 1)).toBeCloseTo(used(alone, 'seat', 'watered', 1), 2)
    expect(result(check, 'seat', 'watered', 1).findings).toContainEqual({ code: 'SEAT_LOWER_OUT' })
  })

  test('ids stay what they were for the first pot, and are told apart below', () => {
    const ids = tiered({}).links.map((l) => l.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids).toContain('leg.fillers.watered')
    expect(ids).toContain('leg.fillers.watered@2')
    expect(ids).not.toContain('hook.rated.watered@2')
  })

  test('three tiers: each bears itself and all below', () => {
    const check = tiered({ 'tiers.count': '3', 'third.mass': '1.1 kg', 'third.state': 'watered', 'third.rim': '110 mm' })
    const potted = [1, 2, 3].map((tier) => hung(check, tier).loads.watered.potted)
    expect(potted).toEqual([2.6 + 1.8 + 1.1, 1.8 + 1.1, 1.1].map((mass): unknown => expect.closeTo(mass, 9)))
    expect(lifted(check, 1, 'watered')).toBeCloseTo(check.solved.loads.watered.weight, 6)
    expect(check.solved.loads.watered.hanger).toBeCloseTo(check.solved.tiers.reduce((sum, { alone }) => sum + alone.hangerMass.watered.high, 0), 9)
  })

  test('an ordinary one just holds, for its knots were never test hung; with a test hang they are settled', () => {
    const check = tiered({ 'ring.metal': 'steel', 'ring.inside': '40 mm', 'cradle.kind': 'net', 'ring.wire': '5 mm', 'hook.metal': 'steel' })
    expect(check.verdict).toBe('just holds')
    expect(check.links.filter((l) => l.verdict === 'not enough known' || l.verdict === 'fails')).toEqual([])
    const HUNG = { 'testHang.mass': '24 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' } as const
    const verdicts = (patch: Patch) => [1, 2].map((tier) => result(tiered({ ...HUNG, ...patch }), 'gatheringGrip', 'watered', tier).verdict)
    expect(verdicts({ 'tiers.tested': 'all' })).toEqual(['holds', 'holds'])
    expect(verdicts({ 'tiers.tested': 'all', 'tiers.how': 'wrapped' })).toEqual(['holds', 'holds'])
    // All of it in the first pot's place.
    expect(verdicts({})).toEqual(['holds', 'just holds'])
    expect(verdicts({ 'tiers.how': 'wrapped' })).toEqual(['just holds', 'just holds'])
  })

  test('a lower pot that was not weighed is told, and is no lighter than the first for its size', () => {
    const unweighed = Object.fromEntries(Object.entries(TIERS).filter(([path]) => path !== 'second.mass' && path !== 'second.state'))
    const check = checkOf({ ...unweighed, 'weighed.mass': '9 kg' })
    const said = check.findings.find((f) => f.code === 'LOWER_NOT_WEIGHED')
    const share = (0.13 / 0.15) ** 2 * (0.115 / 0.13)
    expect(said?.code === 'LOWER_NOT_WEIGHED' ? said.watered : 0).toBeGreaterThanOrEqual(9 * share - 1e-9)
  })

  test('advice checks the whole: the heaviest first pot with a heavy one below, and what mends legs that fail', () => {
    const under = { ...TIERS, 'second.mass': '6 kg' }
    const heaviest = heaviestPot(documentOf(under))
    const holds = (check: CheckResult) => check.links.every((l) => l.side === 'place' || l.verdict === 'holds' || l.verdict === 'just holds')
    if (heaviest === null) throw new Error('none')
    expect(holds(heaviest.check)).toBe(true)
    expect(heaviest.check.solved.loads.watered.potted).toBeCloseTo(heaviest.watered + 6, 6)
    expect(holds(checkOf({ ...under, 'weighed.mass': `${heaviest.watered + 0.2} kg` }))).toBe(false)
    const weak = { 'make.strands': '2', 'second.mass': '9 kg' } as const
    expect(tiered(weak).links.some((l) => l.link === 'leg' && l.verdict === 'fails')).toBe(true)
    const mended = findRemedies(documentOf({ ...TIERS, ...weak }), tiered(weak)).filter((r) => r.link === 'leg')
    expect(mended.some((r) => r.linkVerdict !== 'fails')).toBe(true)
  })

  test('wraps, strands too short for the lower pot, and outdoors', () => {
    expect(tiered({ 'second.strand': '120 mm' }).links.filter((l) => l.tier === 2 && l.link === 'leg').every((l) => l.findings.some((f) => f.code === 'LEG_TOO_SHORT'))).toBe(true)
    const [one, two] = [checkOf({ ...TIERS, 'make.arrangement': 'legs', 'place.exposure': 'outdoors', 'cord.fibre': 'polyester' }), tiered({ 'place.exposure': 'outdoors', 'cord.fibre': 'polyester' })]
    expect(two.solved.gust?.force).toBeGreaterThan(one.solved.gust?.force ?? Infinity)
  })
})
