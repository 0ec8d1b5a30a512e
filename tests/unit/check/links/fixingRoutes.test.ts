import { describe, expect, test } from 'vitest'
import { LINKS, type CheckResult, type LinkResult, type Patch } from '#core'
import { atOnce } from '../../../../src/check/links/fixing/fixingEvidence'
import { OWN_LINKS, ownHolds } from '../../../../src/check/ownHolds'
import { newtons } from '../../../../src/quantity/si'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'
import { BRACKET, ROUND, WALL_HOOK } from './places'

const check = (patch: Patch): CheckResult => checkOf({ ...ORDINARY, ...patch })
const fixing = (patch: Patch): LinkResult => worstOfLink(check(patch), 'fixing')
const refused = (patch: Patch): unknown => fixing(patch).findings.find((f) => f.code === 'FIXING_REFUSED')

describe('what is refused, whatever the numbers say', () => {
  test.each([
    'ceilingTileOrGrid', 'lightingBox', 'sprinkler', 'gasOrHeatingPipe', 'duct', 'furringOrResilientChannel', 'chipboard', 'trim', 'tensionRod', 'curtainRod', 'showerRod', 'towelRod', 'postTensionedSlab',
  ])('%s', (substrate) => {
    for (const support of ['ceilingHook', 'overBeam'] as const) {
      const result = fixing({ 'place.support': support, 'place.substrate': substrate, 'weighed.mass': '0.4 kg' })
      expect(result.verdict).toBe('fails')
      expect(result.utilisation).toBeNull()
      expect(result.findings).toContainEqual({ code: 'FIXING_REFUSED', what: substrate })
    }
  })

  test.each([
    ['adhesive', {}, 'adhesiveHook'], ['magnet', { 'place.substrate': 'steelBeam' }, 'magneticHook'], ['resinAnchor', { 'place.substrate': 'concrete', 'fixing.rated': '90 kgf', 'fixing.ratedFor': 'pullOut' }, 'resinAnchorOverhead'],
    ['plug', { 'place.substrate': 'concrete' }, 'plasticPlugOverhead'], ['plug', { 'place.substrate': 'concrete', 'fixing.rated': '90 kgf', 'fixing.ratedFor': 'shear' }, 'plasticPlugOverhead'],
    ['nail', {}, 'smoothNailPulledOut'], ['nail', WALL_HOOK, 'smoothNailPulledOut'],
    ['woodScrew', { 'fixing.grain': 'end' }, 'screwInEndGrain'], ['screwHook', { 'fixing.grain': 'end' }, 'screwInEndGrain'],
    ['nail', { ...WALL_HOOK, 'fixing.grain': 'end', 'hook.projection': '140 mm' }, 'nailInEndGrain'],
  ] as const)('%s with %j: %s', (kind, patch, what) => {
    expect(refused({ ...patch, 'fixing.kind': kind })).toEqual({ code: 'FIXING_REFUSED', what })
    expect(fixing({ ...patch, 'fixing.kind': kind }).verdict).toBe('fails')
  })

  test('a rod is not, once its brackets are rated; nor a plug overhead that its packet rates for that pull', () => {
    expect(fixing({ ...ROUND, 'place.substrate': 'curtainRod', 'bracket.rated': '60 kgf' })).toMatchObject({ verdict: 'holds', part: 'rated' })
    expect(fixing({ 'place.substrate': 'concrete', 'fixing.kind': 'plug', 'fixing.rated': '60 kgf', 'fixing.ratedFor': 'pullOut' })).toMatchObject({ verdict: 'holds', part: 'rated' })
  })

  test('but a tension rod stays so', () => {
    expect(fixing({ ...ROUND, 'place.substrate': 'tensionRod', 'bracket.rated': '60 kgf' }).verdict).toBe('fails')
  })
})

describe('a rating', () => {
  const rated = { 'fixing.rated': '60 kgf' } as const

  test('for shear says nothing of a pull, and is asked back', () => {
    for (const patch of [{ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor' }, { ...WALL_HOOK, 'place.substrate': 'solidBrick' }, { ...BRACKET, 'place.substrate': 'plasterboard', 'fixing.kind': 'boardFixing' }] as const) {
      const result = fixing({ ...patch, ...rated, 'fixing.ratedFor': 'shear' })
      expect(result.verdict).toBe('not enough known')
      expect(result.findings.map((f) => f.code)).toContain('RATING_FOR_SHEAR')
    }
  })

  test('for shear is enough where nothing pulls', () => {
    const clear = { ...WALL_HOOK, 'place.substrate': 'solidBrick', 'hook.projection': '140 mm' } as const
    expect(linkIn(check({ ...clear, ...rated, 'fixing.ratedFor': 'shear' }), 'fixing', 'watered')).toMatchObject({ verdict: 'holds', capacity: { value: 60 * 9.80665 } })
  })

  test('that does not say its way just holds at best where it surely meant the pull, and is not known elsewhere', () => {
    expect(fixing({ 'place.substrate': 'timber', ...rated })).toMatchObject({ verdict: 'just holds' })
    expect(fixing({ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', ...rated })).toMatchObject({ verdict: 'just holds' })
    for (const patch of [{ 'place.substrate': 'concrete', 'fixing.kind': 'plug' }, { 'place.substrate': 'timber', 'fixing.kind': 'unknown' }, { ...WALL_HOOK, 'place.substrate': 'timber' }, { ...BRACKET, 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor' }] as const) {
      expect(fixing({ ...patch, ...rated })).toMatchObject({ verdict: 'not enough known', utilisation: null })
    }
  })

  test('both ways is used up by pull and shear together', () => {
    const both = { ...WALL_HOOK, 'place.substrate': 'solidBrick', 'fixing.rated': '330 N', 'fixing.ratedFor': 'pullOut', 'fixing.ratedShear': '870 N' } as const
    const result = linkIn(check(both), 'fixing', 'dry')
    const at = (symbol: string): number => result.terms.find((t) => t.symbol === symbol)?.value ?? NaN
    expect(result.utilisation).toBeCloseTo(at('E_N') / 330 + at('E_V') / 870, 9)
    const one = linkIn(check({ ...without(both, 'fixing.ratedShear') }), 'fixing', 'dry')
    expect(one.utilisation).toBeCloseTo(at('E_N') / 330 + at('E_V') / 330, 9)
  })

  test('in kilograms is taken as the pull of that mass, and told', () => {
    const result = check({ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.rated': '60 kg', 'fixing.ratedFor': 'pullOut' })
    expect(linkIn(result, 'fixing', 'dry').capacity?.value).toBeCloseTo(60 * 9.80665, 9)
    expect(result.findings).toContainEqual({ code: 'FORCE_FROM_MASS', path: 'fixing.rated', force: expect.closeTo(588.399, 9) as number })
  })
})

describe('without a rating', () => {
  const plug = { ...WALL_HOOK, 'fixing.kind': 'plug', 'fixing.plugHole': '8 mm', 'weighed.mass': '1.9 kg', 'place.beneath': 'nothing' } as const

  // Low ends of the table of nylon plugs, N; dense block, which it has not, as brick with holes.
  test.each([['concrete', 600], ['solidBrick', 500], ['perforatedBrick', 150], ['denseBlock', 150], ['aeratedBlock', 80], ['plasterboard', 100]] as const)('a plug of 8 mm in %s counts its low figure, %d N', (substrate, low) => {
    const result = linkIn(check({ ...plug, 'place.substrate': substrate }), 'fixing', 'dry')
    expect(result).toMatchObject({ part: 'lowTable', capacity: { value: low } })
    expect(result.findings.map((f) => f.code)).toContain('LOW_TABLE_FIGURE')
    expect(['just holds', 'fails']).toContain(result.verdict)
  })

  test('it never does more than just hold, and one between two sizes counts as the smaller', () => {
    expect(fixing({ ...plug, 'place.substrate': 'concrete', 'weighed.mass': '0.3 kg' }).verdict).toBe('just holds')
    expect(linkIn(check({ ...plug, 'place.substrate': 'concrete', 'fixing.plugHole': '7.5 mm' }), 'fixing', 'dry').capacity?.value).toBe(400)
    expect(fixing({ ...plug, 'place.substrate': 'plasterboard', 'fixing.plugHole': '10 mm' }).verdict).toBe('not enough known')
  })

  test('of a hole that was only assumed nothing fails', () => {
    const heavy = { ...ORDINARY, ...plug, 'place.substrate': 'aeratedBlock', 'weighed.mass': '9 kg' } as const
    expect(worstOfLink(checkOf(heavy), 'fixing').verdict).toBe('fails')
    expect(worstOfLink(checkOf(without(heavy, 'fixing.plugHole')), 'fixing').verdict).toBe('not enough known')
  })

  test('masonry of unknown kind, an anchor, a bare screw or a board wall’s unknown fixing need the packet', () => {
    for (const patch of [{ 'place.substrate': 'masonry' }, { 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor' }, { 'place.substrate': 'solidBrick', 'fixing.kind': 'woodScrew' }] as const) {
      expect(codesOf(check({ ...plug, ...patch }), 'fixing')).toEqual(['MASONRY_NEEDS_RATING'])
      expect(fixing({ ...plug, ...patch }).verdict).toBe('not enough known')
    }
    expect(codesOf(check({ ...plug, 'place.substrate': 'plasterboard', 'fixing.kind': 'unknown' }), 'fixing')).toEqual(['BOARD_NEEDS_RATING'])
  })

  test('a toggle in a board wall counts as the weakest of the makers’ table, more where a steel stud is behind', () => {
    const capacity = (substrate: string): number => linkIn(check({ ...plug, 'fixing.kind': 'boardFixing', 'place.substrate': substrate }), 'fixing', 'dry').capacity?.value ?? NaN
    expect(capacity('plasterboard')).toBeCloseTo(20 * 4.4482216152605, 6)
    expect(capacity('plasterboardOnSteelStud')).toBeCloseTo(70 * 4.4482216152605, 6)
  })

  test('a steel stud is not trusted with a ceiling', () => {
    expect(fixing({ 'place.substrate': 'plasterboardOnSteelStud', 'fixing.kind': 'boardFixing' })).toMatchObject({ verdict: 'not enough known' })
  })

  test('aerated block needs 50 mm', () => {
    const aerated = { ...plug, 'place.substrate': 'aeratedBlock', 'weighed.mass': '0.4 kg' } as const
    expect(codesOf(check({ ...aerated, 'fixing.length': '60 mm', 'fixing.between': '4 mm' }), 'fixing')).not.toContain('AERATED_DEPTH')
    expect(fixing({ ...aerated, 'fixing.length': '60 mm', 'fixing.between': '12 mm' })).toMatchObject({ verdict: 'not enough known', findings: expect.arrayContaining([{ code: 'AERATED_DEPTH', given: expect.closeTo(0.048, 9) as number, least: 0.05 }]) as unknown })
  })

  test('the cone of an anchor in concrete is shown and not counted', () => {
    const result = linkIn(check({ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '45 mm', 'fixing.between': '5 mm' }), 'fixing', 'dry')
    expect(result.capacity).toBeNull()
    // EN 1992-4, k 7.7: 7.7 x 20^0.5 x 40^1.5 N.
    expect(result.terms.find((t) => t.symbol === 'R_cone')?.value).toBeCloseTo(7.7 * Math.sqrt(20) * 40 ** 1.5, 6)
  })

  test('steel, rail and branch are gone round or clamped, not screwed into', () => {
    for (const substrate of ['steelBeam', 'rail', 'branch'] as const) {
      expect(fixing({ 'place.substrate': substrate })).toMatchObject({ verdict: 'not enough known', findings: [{ code: 'GO_ROUND_INSTEAD', substrate }] })
      expect(fixing({ 'place.substrate': substrate, 'fixing.kind': 'metalAnchor', 'fixing.rated': '60 kgf', 'fixing.ratedFor': 'pullOut' }).verdict).toBe('holds')
    }
  })

  test('what is not made for timber says so', () => {
    for (const kind of ['plug', 'boardFixing', 'metalAnchor'] as const) expect(codesOf(check({ ...WALL_HOOK, 'fixing.kind': kind }), 'fixing')).toEqual(['FIXING_NOT_FOR_TIMBER'])
    expect(codesOf(check({ 'fixing.kind': 'unknown' }), 'fixing')).toEqual(['FIXING_KIND_UNKNOWN'])
  })
})

describe('a cord round something', () => {
  test.each(['steelBeam', 'timber', 'concrete'])('%s of the building just holds, and its edges are told', (substrate) => {
    const result = fixing({ ...ROUND, 'place.substrate': substrate })
    expect(result).toMatchObject({ verdict: 'just holds', utilisation: null })
    expect(result.findings.map((f) => f.code)).toEqual(['BEAM_CARRIES', 'CORD_OVER_EDGE'])
  })

  test.each([['rail', 'RAIL_NEEDS_RATING'], ['branch', 'BRANCH_UNTESTED']] as const)('%s is not known until it was pulled in place, and what is asked for settles it', (substrate, code) => {
    const untested = { ...without(ORDINARY, 'fixing.proof'), ...ROUND, 'place.substrate': substrate, 'place.beneath': 'people' } as const
    const found = worstOfLink(checkOf(untested), 'fixing').findings.find((f) => f.code === code)
    expect(worstOfLink(checkOf(untested), 'fixing').verdict).toBe('not enough known')
    const mass = found !== undefined && 'testMass' in found ? found.testMass : NaN
    expect(['holds', 'just holds']).toContain(worstOfLink(checkOf({ ...untested, 'fixing.proof': `${mass * 1.001} kg` }), 'fixing').verdict)
    expect(worstOfLink(checkOf({ ...untested, 'fixing.proof': `${mass * 0.999} kg` }), 'fixing').verdict).toBe('not enough known')
  })

  test('a branch over people must have borne three times a heavy pot: half of a pull counts for good, with the reserve of 1.5', () => {
    const heavy = checkOf({ ...without(ORDINARY, 'fixing.proof'), ...ROUND, 'place.substrate': 'branch', 'place.beneath': 'people', 'weighed.mass': '60 kg', 'weighed.state': 'watered', 'make.legLength': '3 m' })
    const found = worstOfLink(heavy, 'fixing').findings.find((f) => f.code === 'BRANCH_UNTESTED')
    const pull = found?.code === 'BRANCH_UNTESTED' ? found.testMass * 9.80665 : NaN
    const { flooded, drop, tug } = heavy.solved.loads
    expect(pull).toBeCloseTo((flooded.weight * 1.5) / 0.5, 6)
    expect(pull).toBeGreaterThan(Math.max(drop.weight, tug.weight))
  })

  test('a rated rail holds by its rating', () => {
    expect(fixing({ ...ROUND, 'place.substrate': 'rail', 'bracket.rated': '60 kgf' })).toMatchObject({ verdict: 'holds', part: 'rated' })
  })

  test('there is nothing to go round in a wall, and the unknown stays unknown', () => {
    expect(codesOf(check({ ...ROUND, 'place.substrate': 'solidBrick' }), 'fixing')).toEqual(['NOTHING_TO_GO_ROUND'])
    expect(codesOf(check({ ...ROUND, 'place.substrate': 'unknown' }), 'fixing')).toEqual(['SUBSTRATE_UNKNOWN'])
  })
})

describe('what a customer told of the place', () => {
  const told = { 'place.known': 'told', 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.ratedFor': 'pullOut' } as const

  test('counts as no better than a table, and says so', () => {
    const load = check({}).solved.loads.setDown.weight
    const rated = { 'fixing.rated': `${load / 2 / 0.75} N` } as const
    expect(fixing({ ...told, ...rated, 'place.known': 'seen' }).verdict).toBe('holds')
    const result = fixing({ ...told, ...rated })
    expect(result.verdict).toBe('just holds')
    expect(result.findings.map((f) => f.code)).toContain('TOLD_BY_CUSTOMER')
    expect(result.capacity?.basis).toBe('told by customer')
    expect(linkIn(check({ ...told, ...rated }), 'fixing', 'flooded').terms.find((t) => t.code === 'pottedMass')?.basis).toBe('your own')
  })
})

test('every kind of place has a result for fixing and none is silent', () => {
  const places: readonly Patch[] = [{}, WALL_HOOK, BRACKET, { ...BRACKET, 'place.support': 'swingArm' }, { ...ROUND, 'place.substrate': 'branch' }]
  for (const patch of places) {
    const links = new Set(check(patch).links.map((l) => l.link))
    expect(links.has('fixing')).toBe(true)
    expect(links.has('pin')).toBe(patch['place.support'] === 'wallHook')
    expect(links.has('bracket')).toBe(['bracket', 'swingArm'].includes(patch['place.support'] ?? ''))
    expect([...links].every((link) => LINKS.includes(link))).toBe(true)
  }
})

test.each(['curtainRod', 'showerRod', 'towelRod'])('the rating of a %s lifts no refusal of what is stuck or nailed to it', (rod) => {
  const rated = { 'place.substrate': rod, 'bracket.rated': '60 kgf', 'fixing.rated': '60 kgf', 'fixing.ratedFor': 'pullOut' } as const
  for (const kind of ['adhesive', 'magnet', 'nail', 'resinAnchor']) expect(codesOf(check({ ...rated, 'fixing.kind': kind }), 'fixing')).toEqual(['FIXING_REFUSED'])
  expect(codesOf(check({ ...rated, ...ROUND, 'fixing.kind': 'adhesive' }), 'fixing')).not.toContain('FIXING_REFUSED')
})

describe('the lines of a fixing', () => {
  const symbols = (patch: Patch): readonly string[] => fixing(patch).terms.map((t) => t.symbol)
  const ANCHOR = { 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.length': '45 mm', 'fixing.rated': '60 kgf', 'fixing.ratedFor': 'pullOut' } as const

  test('show the cone of concrete of an anchor in concrete of known depth, and of no other', () => {
    const bounded = (patch: Patch): boolean => check(patch).links.some((l) => l.link === 'fixing' && l.terms.some((t) => t.symbol === 'R_cone'))
    const unrated = without({ ...ORDINARY, ...ANCHOR }, 'fixing.rated', 'fixing.ratedFor')
    const shown = bounded(ANCHOR) || bounded(unrated)
    expect(shown).toBe(true)
    for (const patch of [ANCHOR, unrated]) {
      expect(bounded({ ...patch, 'place.substrate': 'solidBrick' })).toBe(false)
      expect(bounded({ ...patch, 'fixing.kind': 'plug' })).toBe(false)
      expect(bounded(without(patch, 'fixing.length'))).toBe(false)
    }
  })

  test('count a board fixing only in board', () => {
    const board = { ...BRACKET, 'fixing.kind': 'boardFixing' } as const
    expect(fixing({ ...board, 'place.substrate': 'plasterboard' }).part).toBe('lowTable')
    for (const substrate of ['concrete', 'solidBrick', 'timber'] as const) {
      const elsewhere = fixing({ ...board, 'place.substrate': substrate })
      expect(elsewhere.capacity).toBeNull()
      expect(elsewhere.verdict).not.toMatch(/holds/)
    }
  })

  test('name the hole of a plug, and of a plug alone', () => {
    const wall = { ...WALL_HOOK, 'place.substrate': 'solidBrick', 'fixing.kind': 'plug', 'fixing.plugHole': '8 mm' } as const
    expect(symbols(wall)).toContain('d_p')
    expect(symbols({ ...BRACKET, 'fixing.kind': 'boardFixing', 'place.substrate': 'plasterboard' })).not.toContain('d_p')
  })

  test('call what a customer told theirs, and what was reckoned from it reckoned', () => {
    const basis = (known: string) => {
      const { terms, capacity } = fixing({ ...ANCHOR, 'place.known': known })
      const of = (symbol: string): string | undefined => terms.find((t) => t.symbol === symbol)?.basis
      return { rated: of('R'), gravity: of('g'), weight: of('W'), pots: of('m_pot'), capacity: capacity?.basis }
    }
    expect(basis('seen')).toEqual({ rated: 'your own', gravity: 'published', weight: 'computed', pots: basis('told').pots, capacity: 'your own' })
    expect(basis('told')).toMatchObject({ rated: 'told by customer', gravity: 'published', weight: 'computed', capacity: 'told by customer' })
  })

  test('call the load on it W where one hanger alone hangs there, and P with others', () => {
    expect(symbols({})).not.toContain('P')
    expect(symbols({ 'rail.others': '2 kg' })).toContain('P')
  })
})

test('pull and shear are one pull: by their shares of what is borne, or added up where nothing is borne along the wall', () => {
  const bears = (shear: number) => ({ pull: newtons(100), pullTerms: [], shear: newtons(shear), shearTerms: [] })
  const asked = { ok: true, pull: newtons(10), shear: newtons(5), load: newtons(12), terms: [] } as const
  expect(atOnce(asked, bears(50)).demand.value).toBeCloseTo(10 + 5 * 2, 12)
  expect(atOnce(asked, bears(0)).demand.value).toBeCloseTo(15, 12)
  expect(atOnce({ ...asked, pull: newtons(0) }, bears(50))).toMatchObject({ demand: { value: 5 }, capacity: 50 })
  expect(atOnce({ ...asked, shear: newtons(0) }, bears(50))).toMatchObject({ demand: { value: 10 }, capacity: 100 })
})

describe('what the hanger itself answers for', () => {
  const holds = (patch: Patch): boolean => ownHolds(checkOf({ ...ORDINARY, ...patch }).solved)

  test('leaves out the place, and what hangs the hanger there', () => {
    expect(holds({})).toBe(true)
    for (const patch of [{ 'place.substrate': 'ceilingTileOrGrid' }, { 'hook.rated': '1 kgf' }, { 'fixing.kind': 'adhesive' }] as const) expect(holds(patch)).toBe(true)
    expect(holds({ 'weighed.mass': '90 kg', 'weighed.state': 'watered' })).toBe(false)
    for (const link of ['fixing', 'bracket', 'pin', 'hook', 'hookShank', 'connector', 'load']) expect(OWN_LINKS).not.toContain(link)
    expect(OWN_LINKS).toEqual(expect.arrayContaining(['leg', 'gatheringGrip', 'ring', 'stick', 'topCord', 'seat', 'cradle']))
  })
})
