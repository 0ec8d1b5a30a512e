import { describe, expect, test } from 'vitest'
import { findingText, isRelevant, resolveDocument, type CheckResult, type Patch, type Verdict } from '#core'
import { checkOf, documentOf, hangerOf } from '../hanger/hangerOf'
import { PANEL } from '../hanger/panelPatch'
import { improvements } from './improvements'
import { codesOf, linkIn } from './linkOf'
import { randomPlanter } from './randomPlanter'

const planter = (patch: Patch): CheckResult => checkOf({ ...PANEL, ...patch })
const partIn = (check: CheckResult, part: string, code = 'watered') => {
  const found = check.links.find((l) => l.id === `leg.${part}.${code}`)
  if (!found) throw new Error(`no ${part}`)
  return found
}
const codes = (check: CheckResult): readonly string[] => codesOf(check, 'leg')
const sentence = (check: CheckResult, code: string): string => {
  const finding = check.links.flatMap((l) => l.findings).find((f) => f.code === code)
  return finding === undefined ? '' : findingText(finding)
}

describe('a wall planter', () => {
  test('is asked about its panel, and not about legs; legs are not asked about a panel', () => {
    const [panel, legs] = [hangerOf(PANEL).answers, hangerOf({}).answers]
    for (const path of ['make.legs', 'make.strands', 'make.build', 'make.totalLength', 'make.legLength', 'make.top', 'stick.bunch'] as const) expect(isRelevant(path, panel)).toBe(false)
    for (const path of ['panel.width', 'panel.front', 'panel.behind', 'panel.cords', 'panel.thickness', 'stick.diameter'] as const) {
      expect(isRelevant(path, panel)).toBe(true)
      expect(isRelevant(path, legs)).toBe(false)
    }
    expect(planter({}).links.filter((l) => l.link === 'load')).toEqual([])
    expect(planter({}).assumed.map((a) => a.path)).not.toContain('make.legs')
  })

  // 4 mm cotton of 9 g/m, a 20 mm dowel, a 6 mm hook in a stud: what a practised maker hangs.
  test.each(['3 kg', '4 kg', '5 kg'])('of %s watered holds or just holds, apart from what is not known', (mass) => {
    const fine: readonly Verdict[] = ['holds', 'just holds']
    const unfine = planter({ 'weighed.mass': mass }).links.filter((l) => !fine.includes(l.verdict))
    expect([...new Set(unfine.map((l) => `${l.link}: ${l.verdict}`))]).toEqual(['gatheringGrip: not enough known'].filter((x) => unfine.some((l) => `${l.link}: ${l.verdict}` === x)))
  })

  test('tells front, back and the panel’s own cords apart, each at its worst', () => {
    const check = planter({})
    const { weight } = check.solved.loads.watered
    const [front, back] = [partIn(check, 'frontStrands'), partIn(check, 'backStrands')]
    const angle = (terms: typeof front.terms): number => terms.find((t) => t.symbol === 'beta')?.value ?? NaN
    expect(front.demand?.value ?? 0).toBeGreaterThanOrEqual(weight / 2 / Math.cos(angle(front.terms)) - 1e-9)
    expect(back.demand?.value ?? 0).toBeGreaterThanOrEqual(weight / 2 / Math.cos(angle(back.terms)) - 1e-9)
    const panel = partIn(check, 'panelCords')
    const most = Math.max((front.demand?.value ?? 0) / 4, (back.demand?.value ?? 0) / 2)
    expect((panel.demand?.value ?? 0) / (panel.terms.find((t) => t.symbol === 'n')?.value ?? NaN)).toBeCloseTo(most, 9)
  })

  test('strands in front tied longer bear less, shorter more, and front and behind make the whole', () => {
    const [drawn, longer, shorter] = planter({}).solved.panel?.shares ?? []
    expect(longer?.front ?? NaN).toBeLessThan(drawn?.front ?? NaN)
    expect(shorter?.front ?? NaN).toBeGreaterThan(drawn?.front ?? NaN)
    for (const share of [drawn, longer, shorter]) expect((share?.front ?? NaN) + (share?.behind ?? NaN)).toBeCloseTo(1, 12)
    expect(codes(planter({}))).toContain('PANEL_SHARES')
    expect(planter({ 'make.tolerance': '0 mm' }).solved.panel?.shares).toHaveLength(1)
  })

  test('its two sides bear alike', () => {
    const sling = planter({ 'seat.offset': '0 mm' }).solved.slings?.watered.drawn
    const tensions = sling !== undefined && 'T' in sling ? sling.T : []
    expect(tensions).toHaveLength(4)
    expect(tensions[0]).toBeCloseTo(tensions[1] ?? NaN, 6)
    expect(tensions[2]).toBeCloseTo(tensions[3] ?? NaN, 6)
  })

  test('pulls on its fixing by W e / L, more where the stick hangs close above the pot', () => {
    const pull = (check: CheckResult): number => linkIn(check, 'fixing', 'watered').terms.find((t) => t.symbol === 'E_N')?.value ?? NaN
    const check = planter({})
    const { weight } = check.solved.loads.watered
    const top = Math.sqrt(0.5 ** 2 - 0.28 ** 2) / 2 + 0.01
    expect(pull(check)).toBeCloseTo((weight * (0.085 + 0.01 + 0.006 - 0.03)) / (top + 0.26 + 0.08), 6)
    expect(pull(planter({ 'panel.height': '10 cm' }))).toBeGreaterThan(pull(check))
  })

  test('loads its stick where its strands are', () => {
    const moment = (check: CheckResult): number => linkIn(check, 'stick', 'watered').terms.find((t) => t.symbol === 'k_M')?.value ?? NaN
    // All on those behind, 40 mm apart in their middles, of supports 280 mm apart: M / W = (280 - 40) / 4.
    expect(moment(planter({}))).toBeCloseTo((0.28 - 0.04) / 4, 9)
    expect(moment(planter({ 'panel.behindWidth': '20 mm' }))).toBeGreaterThan(moment(planter({})))
  })

  test('a wider panel bends its stick less between hooks at its ends and slants its strands in front differently, and still balances', () => {
    const [narrow, wide] = [planter({}), planter({ 'panel.width': '310 mm' })]
    const leaves = (check: CheckResult): number => check.solved.geometry.path.ok ? check.solved.geometry.path.leave.z : NaN
    expect(leaves(wide)).toBeLessThan(leaves(narrow))
    expect(wide.solved.slings?.watered.trouble).toBe('none')
  })

  test('a net that is told is reckoned knot by knot: two in its widest row pass on the load of four strands each', () => {
    const check = planter({ 'panel.knots': '2', 'panel.knotSpacing': '40 mm' })
    const front = partIn(check, 'frontStrands')
    const beta = front.terms.find((t) => t.symbol === 'beta')?.value ?? NaN
    const load = (front.demand?.value ?? NaN) * Math.cos(beta)
    // Eight strands come down, four of them through each of two knots: one corner's load a knot.
    expect(partIn(check, 'frontNet').demand?.value).toBeCloseTo(load / Math.cos(Math.atan(0.02 / (0.095 / 4))), 9)
    expect(codes(planter({ 'panel.knots': '3' }))).toContain('PANEL_NET_STRANDS')
  })

  test('hung from a ceiling it hangs free of the wall, and that is said', () => {
    const check = planter({ 'place.support': 'ceilingHook', 'hook.projection': '30 mm' })
    expect(codes(check)).toContain('PANEL_NO_WALL')
    expect(check.solved.plan?.wall).toBeNull()
    expect(check.solved.slings?.watered.trouble).toBe('none')
  })

  test('says what happens without the strands of a corner, or half of those behind', () => {
    expect(planter({}).findings).toContainEqual({ code: 'REDUNDANCY_PANEL', front: 'tips', back: 'stays' })
    expect(planter({ 'cord.linearDensity': '1.2 g/m', 'cord.diameter': '1.5 mm' }).redundancy.leg).toBe('falls')
  })

  test('its seat is never more than just holds, and not known without knots that lock', () => {
    expect(linkIn(planter({}), 'seat', 'watered').verdict).toBe('just holds')
    expect(linkIn(planter({ 'cradle.kind': 'open' }), 'seat', 'watered').verdict).toBe('not enough known')
    expect(linkIn(planter({ 'cradle.first': '50 mm' }), 'seat', 'watered').verdict).toBe('not enough known')
  })
})

describe('heavier and weaker planters never look better', () => {
  const strands = (l: { readonly link: string }): boolean => ['leg', 'gatheringTurn', 'wrapHoop', 'stick', 'topCord', 'fixing', 'hook'].includes(l.link)
  test.each<[string, Patch]>([
    ['heavier', { 'weighed.mass': '6 kg' }], ['fewer strands in front', { 'panel.front': '2' }], ['fewer behind', { 'panel.behind': '2' }],
    ['thinner cord', { 'cord.linearDensity': '6 g/m' }], ['a sharp edge', { 'pot.edge': 'sharp' }],
  ])('%s', (_, worse) => {
    // Fewer strands make a lighter hanger and another stiffness: loads beside the cord may move by a trifle.
    const among = 'weighed.mass' in worse ? strands : (l: { readonly link: string, readonly part: string }): boolean => l.link === 'leg' && (('panel.front' in worse && l.part === 'frontStrands') || ('panel.behind' in worse && l.part === 'backStrands') || !('panel.front' in worse || 'panel.behind' in worse))
    expect(improvements(planter({}), planter(worse), among)).toEqual([])
  })
})

describe('what cannot hang so is refused with what to change', () => {
  test('a panel narrower than the pot: its strands would cross the rim', () => {
    const check = planter({ 'panel.width': '150 mm' })
    expect(check.verdict).toBe('fails')
    expect(sentence(check, 'PANEL_NARROW')).toMatch(/Make its lower edge at least 220 mm/)
    const least = check.links.flatMap((l) => l.findings).find((f) => f.code === 'PANEL_NARROW')
    // No wider than it must be: half a centimetre less would not do.
    expect(planter({ 'panel.width': `${((least?.code === 'PANEL_NARROW' ? least.least : 0) - 0.005) * 1000} mm` }).solved.geometry.path.ok).toBe(false)
    expect(planter({ 'panel.width': `${(least?.code === 'PANEL_NARROW' ? least.least : 0) * 1000} mm` }).solved.geometry.path.ok).toBe(true)
  })

  test('a lower edge below the rim is not taken, and one level with it does not reach', () => {
    const read = resolveDocument(documentOf({ ...PANEL, 'panel.rise': '-20 mm' }))
    expect(read.ok).toBe(false)
    const level = planter({ 'panel.rise': '0 mm' })
    expect(level.solved.geometry.path.ok ? level.solved.slings?.watered.trouble : 'refused').toMatch(/none|refused/)
  })

  const POT = { 'stick.length': '700 mm', 'stick.span': '650 mm', 'stick.topCord': '1 m', 'panel.behindWidth': '20 mm' } as const
  test.each<[string, Patch]>([
    ['PANEL_OFF_BASE', { 'pot.rim': '99 mm', 'pot.base': '316 mm', 'pot.height': '124 mm', 'panel.width': '575 mm', 'panel.rise': '94 mm', 'cradle.first': '64 mm', 'panel.height': '274 mm', 'hook.projection': '106 mm' }],
    ['PANEL_OVER_RIM', { 'pot.rim': '127 mm', 'pot.base': '193 mm', 'pot.height': '194 mm', 'panel.width': '545 mm', 'panel.rise': '144 mm', 'cradle.first': '293 mm', 'panel.thickness': '15 mm', 'panel.height': '106 mm', 'hook.projection': '79 mm' }],
    ['PANEL_LOW', { 'pot.rim': '126 mm', 'pot.base': '277 mm', 'pot.height': '145 mm', 'panel.width': '122 mm', 'panel.rise': '3 mm', 'cradle.first': '293 mm', 'panel.thickness': '13 mm', 'panel.height': '164 mm', 'hook.projection': '42 mm' }],
  ])('says %s', (code, patch) => {
    const check = planter({ ...POT, ...patch })
    expect(codes(check)).toContain(code)
    expect(check.verdict).toBe('fails')
  })

  test('first knots above the rim', () => {
    const check = planter({ 'cradle.first': '30 cm' })
    expect(check.verdict).toBe('fails')
    expect(codes(check)).toContain('CRADLE_ABOVE_RIM')
  })

  test('more strands round the pot than the cords on the stick give', () => {
    const check = planter({ 'panel.cords': '5' })
    expect(check.verdict).toBe('fails')
    expect(sentence(check, 'PANEL_CORDS_FEW')).toContain('6 cords')
  })

  test('a panel wider than its stick', () => {
    const read = resolveDocument(documentOf({ ...PANEL, 'panel.width': '40 cm' }))
    expect(read.ok ? [] : read.problems.map((p) => p.code)).toEqual(['CONFLICT'])
  })

  test('corners are not reckoned; a curved side only roughly', () => {
    expect(linkIn(planter({ 'pot.shape': 'square' }), 'leg', 'watered').verdict).toBe('not enough known')
    expect(codes(planter({ 'pot.shape': 'square' }))).toContain('PANEL_CORNERS')
    expect(codes(planter({ 'pot.shape': 'bowl', 'pot.height': '110 mm', 'panel.width': '260 mm' }))).toContain('PANEL_CURVED')
  })
})

describe('random planters', () => {
  const checks = Array.from({ length: 24 }, (_, i) => ({ patch: randomPlanter(i + 1), check: checkOf(randomPlanter(i + 1)) }))

  test('have results that are numbers or not known, each with an id of its own; few have no rest', () => {
    let restless = 0
    for (const { check } of checks) {
      expect(new Set(check.links.map((l) => l.id)).size).toBe(check.links.length)
      for (const link of check.links) expect(link.utilisation === null || link.utilisation >= 0).toBe(true)
      if (check.solved.slings !== null && check.solved.slings.watered.trouble !== 'none') restless++
    }
    expect(restless).toBeLessThanOrEqual(1)
  })

  test('a heavier one never looks better', () => {
    const worse = checks.flatMap(({ patch, check }) => improvements(check, checkOf({ ...patch, 'weighed.mass': `${Number.parseFloat(patch['weighed.mass'] ?? '') * 1.3} kg` }), (l) => l.link !== 'load'))
    expect(worse).toEqual([])
  })
})
