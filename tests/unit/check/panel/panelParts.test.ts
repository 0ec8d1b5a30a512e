import { describe, expect, test } from 'vitest'
import type { CheckResult, LinkResult, Patch } from '#core'
import { panelLegLink } from '../../../../src/check/links/panel/panelLegLink'
import { panelTurnLink } from '../../../../src/check/links/panel/panelTurnLink'
import { panelFindings, sharesFinding } from '../../../../src/check/panel/panelFindings'
import { panelGroups } from '../../../../src/check/panel/panelGroups'
import { panelOnStick } from '../../../../src/check/panel/panelOnStick'
import { panelSections, strandSections } from '../../../../src/check/panel/panelSections'
import { panelTable } from '../../../../src/check/panel/panelTable'
import type { CaseSling, Solved } from '../../../../src/check/solved'
import { radians } from '../../../../src/quantity/si'
import { checkOf, hangerOf } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'
import { without } from '../../hanger/without'

const planter = (patch: Patch): CheckResult => checkOf({ ...PANEL, ...patch })
const { solved } = planter({})
/** The planter with another sling just watered, everything else as it was. */
const withSling = (sling: Partial<CaseSling>, of: Solved = solved): Solved => {
  if (of.slings === null) throw new Error('no slings')
  return { ...of, slings: { ...of.slings, watered: { ...of.slings.watered, ...sling } } }
}
const watered = (links: readonly LinkResult[], part?: string): LinkResult => {
  const found = links.find((l) => l.case === 'watered' && (part === undefined || l.part === part))
  if (found === undefined) throw new Error('not there')
  return found
}

describe('the pull of one kind of strands', () => {
  test('is that of the worse of the two sides', () => {
    const groups = panelGroups(withSling({ each: [3, 7, 5, 2], solvedEach: [1, 4, 2, 1] }), 'watered')
    expect(groups.map(({ kind, tension, solved: pull }) => [kind, tension, pull])).toEqual([['front', 7, 4], ['back', 5, 2]])
  })

  test('is not said where there is no rest', () => {
    expect(panelGroups(withSling({ each: null, solvedEach: null }), 'watered').map(({ tension, solved: pull }) => [tension, pull])).toEqual([[null, null], [null, null]])
    const links = panelLegLink(withSling({ each: null, solvedEach: null, trouble: 'unstable' }))
    const front = watered(links, 'frontStrands')
    expect(front.verdict).toBe('fails')
    expect(front.terms.map((t) => t.symbol)).not.toContain('T_s')
    expect(front.overallFactor).toBeNull()
    expect(watered(panelLegLink(withSling({ each: [1, 1, 1, 1], solvedEach: null })), 'frontStrands').terms.map((t) => t.symbol)).not.toContain('T_min')
  })

  test('says where it goes', () => {
    const [front, back] = ['frontStrands', 'backStrands'].map((part) => watered(panelLegLink(solved), part).terms.find((t) => t.symbol === 'beta')?.source)
    expect(front).toContain('to the front of the pot')
    expect(back).toContain('behind the pot')
  })
})

describe('the turn into the wraps', () => {
  const turned = (each: readonly number[]): LinkResult => watered(panelTurnLink(withSling({ each, solvedEach: each })))

  test('is judged where one strand pulls hardest, not where the group does', () => {
    // Four strands to each corner in front, two to each half behind.
    expect(turned([100, 100, 60, 60]).demand?.value).toBe(60)
    expect(turned([100, 100, 40, 40]).demand?.value).toBe(100)
    expect(turned([60, 60, 100, 100]).demand?.value).toBe(100)
  })

  test('of jute that never dries fails, of splashed jute just holds at best', () => {
    const jute = { 'cord.fibre': 'jute', 'pot.drainage': 'hole' } as const
    const splashed = watered(planter({ ...jute, 'weighed.mass': '0.5 kg' }).links.filter((l) => l.link === 'gatheringTurn'))
    expect(splashed.verdict).toBe('just holds')
    const damp = watered(planter({ ...jute, 'place.watering': 'daily', 'weighed.mass': '0.5 kg' }).links.filter((l) => l.link === 'gatheringTurn'))
    expect(damp.findings.map((f) => f.code)).toContain('JUTE_NEVER_DRY')
    expect(damp.verdict).toBe('fails')
  })

  test('has no overall factor of an unknown cord, nor where nothing pulls it for sure', () => {
    expect(turned([100, 100, 60, 60]).overallFactor).toBeGreaterThan(0)
    expect(watered(panelTurnLink(withSling({ each: null, solvedEach: null }))).overallFactor).toBeNull()
    const unknown = checkOf(without(PANEL, 'cord.diameter', 'cord.linearDensity'))
    for (const link of [...panelTurnLink(unknown.solved), ...panelLegLink(unknown.solved)]) expect(link.overallFactor).toBeNull()
  })
})

describe('what one strand less means over people', () => {
  const parted = (patch: Patch): readonly LinkResult[] => planter({ 'place.beneath': 'people', ...patch }).links.filter((l) => l.link === 'leg' && l.case === 'strandParted')
  const codes = (links: readonly LinkResult[]): readonly string[] => [...new Set(links.flatMap((l) => l.findings).map((f) => f.code))]

  test('fails where the pot goes with it', () => {
    const weak = parted({ 'panel.front': '1', 'panel.behind': '2', 'panel.cords': '12' })
    expect(codes(weak)).toContain('STRAND_PARTS_AND_FALLS')
    expect(weak.filter((l) => l.findings.some((f) => f.code === 'STRAND_PARTS_AND_FALLS')).map((l) => l.verdict)).toContain('fails')
  })

  test('is not known of an unknown cord', () => {
    const unknown = checkOf({ ...without(PANEL, 'cord.diameter', 'cord.linearDensity'), 'place.beneath': 'people' }).links.filter((l) => l.link === 'leg' && l.case === 'strandParted')
    expect(codes(unknown)).toContain('STRAND_PARTS_UNKNOWN')
    expect(codes(unknown)).not.toContain('STRAND_PARTS_AND_FALLS')
    expect(unknown.map((l) => l.verdict)).toContain('not enough known')
  })

  test('is shown where the rest carry on, and over furniture no more than that', () => {
    expect(parted({}).map((l) => l.part)).toEqual(['frontStrands', 'backStrands', 'panelCords'])
    expect(planter({ 'panel.front': '1', 'panel.behind': '2' }).links.filter((l) => l.case === 'strandParted')).toEqual([])
  })
})

describe('what bears on all strands', () => {
  test('says an unstable sling, one that has lost its hold, and one that was not found', () => {
    const of = (trouble: CaseSling['trouble']) => panelFindings(withSling({ trouble }), 'watered')
    expect(of('unstable')).toMatchObject({ atLeast: 'fails', findings: [{ code: 'SLING_UNSTABLE' }] })
    expect(of('lost support')).toMatchObject({ atLeast: 'fails', findings: [{ code: 'SLING_LOST_SUPPORT' }] })
    expect(of('not converged')).toMatchObject({ atLeast: 'not enough known', findings: [{ code: 'SLING_NOT_CONVERGED' }] })
    expect(of('none')).toEqual({ atLeast: 'holds', findings: [] })
  })

  test('says a wide angle in degrees, and refuses a very wide one', () => {
    const { panel } = solved.geometry
    if (!panel?.ok) throw new Error('no panel')
    const at = (degrees: number) => panelFindings({ ...solved, geometry: { ...solved.geometry, panel: { ...panel, path: { ...panel.path, angle: radians((degrees * Math.PI) / 180) } } } }, 'watered')
    expect(at(59)).toEqual({ atLeast: 'holds', findings: [] })
    expect(at(61)).toMatchObject({ atLeast: 'just holds', findings: [{ code: 'PANEL_ANGLE', degrees: expect.closeTo(61, 9) as number, refused: false }] })
    expect(at(76)).toMatchObject({ atLeast: 'fails', findings: [{ code: 'PANEL_ANGLE', degrees: expect.closeTo(76, 9) as number, refused: true }] })
  })

  test('tells how the weight is shared only where all three ways of tying it have a rest', () => {
    expect(sharesFinding(solved)).toMatchObject([{ code: 'PANEL_SHARES', tolerance: 0.008 }])
    for (const gone of [0, 1, 2]) {
      const shares = (solved.panel?.shares ?? []).map((share, i) => (i === gone ? { ...share, front: null } : share))
      expect(sharesFinding({ ...solved, panel: solved.panel === null ? null : { ...solved.panel, shares } })).toEqual([])
    }
    expect(sharesFinding(planter({ 'make.tolerance': '0 mm' }).solved)).toEqual([])
  })
})

describe('the wall', () => {
  /** What the strands pull the pot towards the wall with, over the weight, as drawn. */
  const towardsWall = (of: Solved): number => {
    const drawn = of.slings?.watered.drawn
    const tensions = drawn !== undefined && 'T' in drawn ? drawn.T : []
    return (of.plan?.legs ?? []).reduce((sum, { upper, lower }, i) => {
      const reach = upper.map((x, k) => x - (lower[k] ?? NaN))
      return sum - ((tensions[i] ?? NaN) * (reach[1] ?? NaN)) / Math.hypot(...reach)
    }, 0) / of.loads.watered.weight
  }

  test.each<[string, Patch]>([['at the rim', {}], ['at the base', { 'pot.shape': 'cylinder', 'cradle.first': '110 mm', 'panel.width': '260 mm', 'seat.offset': '0 mm' }]])('pushes back %s as much as the strands pull towards it', (_, patch) => {
    const of = planter({ 'seat.offset': '0 mm', ...patch }).solved
    const [drawn] = panelTable(of)
    expect(drawn?.wall ?? NaN).toBeGreaterThan(0.01)
    expect(Math.abs((drawn?.wall ?? NaN) - towardsWall(of))).toBeLessThan(0.1 * (drawn?.wall ?? NaN))
    expect(drawn?.wall).toBe((drawn?.wallAtRim ?? NaN) + (drawn?.wallAtBase ?? NaN))
  })

  test('pushes at rim and base of one that its plant tips, and the two are told as one', () => {
    const [drawn] = panelTable(planter({ 'plant.height': '60 cm', 'plant.mass': '3 kg' }).solved)
    expect(Math.min(drawn?.wallAtRim ?? NaN, drawn?.wallAtBase ?? NaN)).toBeGreaterThan(0.1)
    expect(drawn?.wall).toBeCloseTo((drawn?.wallAtRim ?? NaN) + (drawn?.wallAtBase ?? NaN), 12)
  })

  test('is not said where there is no rest', () => {
    const share = { longer: 0, front: null, behind: null, wallAtRim: null, wallAtBase: null }
    const panel = { ...(solved.panel as NonNullable<Solved['panel']>), shares: [share] }
    expect(panelTable({ panel })).toEqual([{ ...share, wall: null }])
    expect(panelTable({ panel: null })).toEqual([])
  })
})

describe('where its parts are', () => {
  const panelOf = (patch: Patch) => {
    const { panel } = planter(patch).solved.geometry
    if (!panel?.ok) throw new Error('cannot hang so')
    return panel
  }

  test('stick and edge stand off the pot’s axis by what they stand off the wall; hung from a ceiling straight above it', () => {
    const panel = panelOf({})
    const axis = 0.085 + 0.01
    expect(panel.stickFromAxis).toBeCloseTo(0.03 - axis, 12)
    expect(panel.edgeFromAxis).toBeCloseTo((panel.points.upper[0]?.[1] ?? NaN) - axis, 12)
    const free = panelOf({ 'place.support': 'ceilingHook' })
    expect(free.stickFromAxis).toBe(0)
    expect(free.edgeFromAxis).toBe(0)
  })

  test('a strand in front touches the side and the base edge, and is as long as its pieces', () => {
    for (const first of [95, 40]) {
      const panel = panelOf({ 'cradle.first': `${first} mm` })
      const { front } = panel.points
      const upTo = Math.max(first / 1000, 0.06) + front.onPot
      expect(panel.path.touched).toEqual([panel.path.leave, { r: 0.06, z: 0 }])
      expect(panel.path.knotToLeave).toBeCloseTo(upTo, 12)
      expect(panel.strand).toBeCloseTo(0.26 + front.free + upTo, 12)
    }
  })

  test('solves it drawn aside to either side, away from the wall, and towards it', () => {
    const ways = (solved.plan?.asides ?? []).map((aside) => [Math.cos(aside), Math.sin(aside)].map((x) => Math.round(x)))
    expect(ways).toEqual([[1, 0], [0, 1], [-0, -1]])
  })
})

describe('its sections', () => {
  const { answers } = hangerOf(PANEL)
  const cord = { tied: false, size: null }
  const parts = (patch: Patch) => strandSections(hangerOf({ ...PANEL, ...patch }).answers, 4, false, cord).map((s) => s.part)

  test('count a joint only where one was told', () => {
    expect(parts({})).toEqual(['plainStrands'])
    expect(parts({ 'make.joined': 'yes' })).toEqual(['plainStrands', 'tiedStrands'])
    expect(parts({ 'make.joined': 'splice' })).toEqual(['plainStrands', 'splicedStrands'])
    expect(parts({ 'make.joined': 'glued' })).toEqual(['plainStrands'])
  })

  test('through the knots of a net half carry, one at least', () => {
    const through = (strands: number) => strandSections(answers, strands, true, cord).find((s) => s.part === 'alternatingKnots')?.strands
    expect([0, 1, 2, 5].map(through)).toEqual([0, 1, 1, 2])
    expect(panelSections(answers, 5, cord).map((s) => s.strands)).toEqual([5, 2])
  })
})

describe('how it loads its stick', () => {
  test('as drawn, all in front, all behind, and each group in turn at its most; always the whole weight', () => {
    const loadings = panelOnStick(solved, 'watered')
    expect(loadings).toHaveLength(3 + 4)
    for (const { own, loads } of loadings) {
      expect(own).toBe(4)
      expect(loads.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
    }
    const shares = loadings.map(({ loads }) => loads.map(({ share }) => share))
    expect(shares[1]).toEqual([0.5, 0.5, 0, 0])
    expect(shares[2]).toEqual([0, 0, 0.5, 0.5])
  })

  test('stays a number where one group bears all of it', () => {
    const drawn = solved.slings?.watered.drawn
    if (drawn === undefined || !('T' in drawn)) throw new Error('no rest')
    const all = withSling({ drawn: { ...drawn, T: drawn.T.map((t, i) => (i === 0 ? t : 0)) as typeof drawn.T } })
    for (const { loads } of panelOnStick(all, 'watered')) for (const { share } of loads) expect(share).toBeGreaterThanOrEqual(0)
  })

  test('alone under the middle where its strands cannot hang so', () => {
    const middle = [{ own: 1, loads: [{ at: 0, share: 1 }] }]
    expect(panelOnStick(withSling({ each: null }), 'watered')).toEqual(middle)
    expect(panelOnStick({ ...solved, slings: null }, 'watered')).toEqual(middle)
    expect(panelOnStick({ ...solved, plan: null }, 'watered')).toEqual(middle)
  })
})
