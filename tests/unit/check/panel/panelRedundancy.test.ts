import { describe, expect, test } from 'vitest'
import type { CheckResult, Patch } from '#core'
import { panelRedundancy, worseOutcome } from '../../../../src/check/panel/panelRedundancy'
import type { CaseSling, Solved } from '../../../../src/check/solved'
import { newtons, radians, type Newtons } from '../../../../src/quantity/si'
import { checkOf } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'
import { without } from '../../hanger/without'

const planter = (patch: Patch): CheckResult => checkOf({ ...PANEL, ...patch })
const { solved } = planter({})

/** Right and left front, then the halves behind. */
const pulls = (front: number, back: number): readonly Newtons[] => [front, front, back, back].map(newtons)

/** The planter with these pulls, N, while whole and once a group has gone; everything else as it was. */
function pulledBy(before: readonly Newtons[], gone: { readonly front?: Partial<CaseSling>, readonly back?: Partial<CaseSling> }): Solved {
  if (solved.panel === null || solved.slings === null) throw new Error('no panel')
  const { front, back } = solved.panel.without
  const level = { ...front.drawn, tiltRadians: radians(0) } as CaseSling['drawn']
  const quiet = { trouble: 'none', drawn: level, each: pulls(0, 0) } as const
  return {
    ...solved,
    slings: { ...solved.slings, strandParted: { ...solved.slings.strandParted, each: before } },
    panel: { ...solved.panel, without: { front: { ...front, ...quiet, ...gone.front }, back: { ...back, ...quiet, ...gone.back } } },
  }
}

/** The largest pull in front, N, at which the strands stay once those of the other corner have gone, if they pulled a share of it before. */
function mostInFront(share: number): number {
  let [stays, falls] = [0, 1e5]
  while (falls - stays > 1e-6) {
    const pull = (stays + falls) / 2
    const { front } = panelRedundancy(pulledBy(pulls(pull * share, 0), { front: { each: pulls(pull, 0) } }))
    if (front === 'stays') stays = pull
    else falls = pull
  }
  return stays
}

describe('the strands that are left when a group of a planter goes', () => {
  test('carry their own pull and twice what they gain by it, as of a load that comes at once', () => {
    const [suddenOnly, whole] = [mostInFront(0), mostInFront(1)]
    // From nothing to T: 2 T; from T / 2 to T: 1.5 T; no gain: T itself, at rest or at once.
    expect(mostInFront(0.5)).toBeCloseTo(Math.min(whole, (2 / 1.5) * suddenOnly), 3)
    expect(suddenOnly).toBeGreaterThan(1)
    expect(whole).toBeGreaterThan(suddenOnly)
    expect(whole).toBeLessThanOrEqual(2 * suddenOnly + 1e-3)
  })

  test('are not jolted where they lose by it', () => {
    // Twice T before counts at once, as 2 T does; a loss taken for a gain would leave nothing of it.
    expect(mostInFront(2)).toBeCloseTo(Math.min(mostInFront(1), mostInFront(0)), 3)
  })

  test('give way by themselves behind or in front: either takes the pot down', () => {
    const heavy = 1e5
    expect(panelRedundancy(pulledBy(pulls(0, 0), { front: { each: pulls(heavy, 0) } })).front).toBe('falls')
    expect(panelRedundancy(pulledBy(pulls(0, 0), { front: { each: pulls(0, heavy) } })).front).toBe('falls')
    expect(panelRedundancy(pulledBy(pulls(0, 0), { back: { each: pulls(0, heavy) } }))).toMatchObject({ front: 'stays', back: 'falls' })
  })

  test('leave the pot tipped where it leans too far, fallen where it finds no rest, and unsaid where that was not found', () => {
    const of = (front: Partial<CaseSling>) => panelRedundancy(pulledBy(pulls(0, 0), { front })).front
    const leaning = (tilt: number) => ({ drawn: { ...solved.slings?.watered.drawn, tiltRadians: radians(tilt) } as CaseSling['drawn'] })
    expect([0.1, 0.5].map((tilt) => of(leaning(tilt)))).toEqual(['stays', 'tips'])
    expect(of({ trouble: 'lost support' })).toBe('falls')
    expect(of({ trouble: 'unstable' })).toBe('falls')
    expect(of({ each: null })).toBe('falls')
    expect(of({ trouble: 'not converged' })).toBe('unknown')
    expect(of({ drawn: { ok: false, reason: 'none' } as unknown as CaseSling['drawn'] })).toBe('tips')
  })
})

describe('one strand of a group', () => {
  test('stays by those beside it where they carry all, and takes the group along where they cannot', () => {
    const { strand } = panelRedundancy(pulledBy(pulls(1, 1), { back: { each: pulls(0, 1e5) } }))
    expect(strand).toBe('stays')
    expect(panelRedundancy(pulledBy(pulls(1, 1e5), { back: { each: pulls(0, 1e5) } })).strand).toBe('falls')
  })

  test('that is alone is its group', () => {
    const single = planter({ 'panel.behind': '2', 'panel.front': '1' }).solved
    const { front, back, strand } = panelRedundancy(single)
    expect(strand).toBe(worseOutcome([front, back]))
    expect(strand).not.toBe('stays')
  })
})

describe('what cannot be said is not said', () => {
  test('of an unknown cord', () => {
    const unknown = checkOf(without(PANEL, 'cord.diameter', 'cord.linearDensity')).solved
    const { back, strand } = panelRedundancy(unknown)
    expect([back, strand]).toEqual(['unknown', 'unknown'])
  })

  test('of strands that cannot go so', () => {
    expect(panelRedundancy(planter({ 'panel.width': '150 mm' }).solved)).toEqual({ front: 'unknown', back: 'unknown', strand: 'unknown' })
  })
})
