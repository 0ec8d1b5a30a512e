import { describe, expect, test } from 'vitest'
import { isWorse, LINKS, type CheckResult, type LinkCode, type LinkResult, type Patch } from '#core'
import { STATES } from '../../../src/load/states'
import { checkOf } from '../hanger/hangerOf'
import { manyCases } from '../quantity/manyCases'
import { improvements } from './improvements'
import { randomPatch } from './randomPatch'

const HANGERS = Array.from({ length: manyCases(40) }, (_, i): { seed: number; patch: Patch; check: CheckResult } => {
  const patch = randomPatch(i + 1)
  return { seed: i + 1, patch, check: checkOf(patch) }
})

/** What gets better where the change of each hanger should make nothing better; a change of null leaves a hanger out. */
function betterAfter(change: (patch: Patch) => Patch | null, among: (link: LinkResult) => boolean): readonly string[] {
  return HANGERS.flatMap(({ seed, patch, check }) => {
    const changed = change(patch)
    return changed === null ? [] : improvements(check, checkOf({ ...patch, ...changed }), among).map((found) => `seed ${seed}, ${found}`)
  })
}
/** The same backwards: the change should make nothing worse. */
function worseAfter(change: (patch: Patch) => Patch | null, among: (link: LinkResult) => boolean): readonly string[] {
  return HANGERS.flatMap(({ seed, patch, check }) => {
    const changed = change(patch)
    return changed === null ? [] : improvements(checkOf({ ...patch, ...changed }), check, among).map((found) => `seed ${seed}, ${found}`)
  })
}

const numberIn = (text: string | undefined): number => Number.parseFloat(text ?? 'NaN')
const all = (): boolean => true
const oneOfLinks = (...links: readonly LinkCode[]) => (l: LinkResult): boolean => links.includes(l.link)
// A weighing may be too light to be true, and is complained of only then; a heavier one may well be true. A lighter hanger is thrown further by the wind.
const carries = (l: LinkResult): boolean => l.link !== 'load' && l.case !== 'gust'

test('the hangers are of all kinds: every verdict, every link, some without an answer', () => {
  const links = HANGERS.flatMap((h) => h.check.links)
  expect([...new Set(links.map((l) => l.verdict))].sort()).toEqual(['fails', 'holds', 'just holds', 'not enough known'])
  const asked: readonly LinkCode[] = LINKS.filter((link) => !['connector', 'topCord', 'stick', 'ringCord'].includes(link))
  expect([...new Set(links.map((l) => l.link))].sort()).toEqual([...asked].sort())
  expect(links.some((l) => l.utilisation === null)).toBe(true)
})

describe('more of what is bad never looks better', () => {
  test('a heavier weighed mass', () => {
    // A sling that found no rest within its steps is not known, neither better nor worse.
    const unsolved = HANGERS.filter(({ check: { solved } }) => Object.values(solved.slings ?? {}).some((sling) => sling.trouble === 'not converged')).map((h) => h.patch)
    expect(unsolved.length).toBeLessThan(0.02 * HANGERS.length)
    expect(betterAfter((p) => (p['weighed.mass'] === undefined || unsolved.includes(p) ? null : { 'weighed.mass': `${numberIn(p['weighed.mass']) * 1.3} kg` }), carries)).toEqual([])
  })

  test('more at stake beneath', () => {
    const stricter = { nothing: 'furniture', furniture: 'people', wayThrough: 'public' } as const
    expect(betterAfter((p) => {
      const beneath = p['place.beneath']
      return beneath === 'nothing' || beneath === 'furniture' || beneath === 'wayThrough' ? { 'place.beneath': stricter[beneath] } : null
    }, all)).toEqual([])
  })

  test('a longer service life', () => {
    expect(betterAfter((p) => ({ 'place.life': `${numberIn(p['place.life']) + 1} years` }), all)).toEqual([])
  })

  test('daily watering, a steamy room, the open air', () => {
    expect(betterAfter((p) => (p['place.watering'] === 'weekly' ? { 'place.watering': 'daily' } : null), all)).toEqual([])
    expect(betterAfter((p) => (p['place.exposure'] === 'indoors' ? { 'place.exposure': 'steamy' } : null), all)).toEqual([])
    // Outdoors the hanger is soaked: a heavier hanger drops with a smaller multiple of its weight, and so of the pot's.
    expect(betterAfter((p) => (p['place.exposure'] === 'steamy' ? { 'place.exposure': 'outdoors' } : null), oneOfLinks('leg', 'gatheringTurn', 'wrapHoop'))).toEqual([])
  })

  test('a windier place, wider leaves', () => {
    const outdoors = (p: Patch): boolean => p['place.exposure'] === 'outdoors'
    expect(betterAfter((p) => (outdoors(p) ? { 'place.wind': 'exposed' } : null), all)).toEqual([])
    expect(betterAfter((p) => (outdoors(p) ? { 'plant.width': '90 cm' } : null), all)).toEqual([])
  })

  test('a pot set in further off centre', () => {
    expect(betterAfter((p) => ({ 'seat.offset': `${numberIn(p['seat.offset']) + 6} mm` }), oneOfLinks('leg', 'gatheringTurn', 'seat'))).toEqual([])
  })
})

describe('more of what is good never looks worse', () => {
  // On a bunched top a thicker cord bends worse over the same hook, and stiffer legs share unequal lengths worse.
  test('thicker cord of the same kind, legs of a given length on a ring', () => {
    expect(worseAfter((p) => (p['cord.diameter'] === undefined || p['make.top'] !== 'ring' ? null : {
      'cord.diameter': `${numberIn(p['cord.diameter']) * 1.25} mm`,
      ...(p['cord.linearDensity'] === undefined ? {} : { 'cord.linearDensity': `${numberIn(p['cord.linearDensity']) * 1.25 ** 2} g/m` }),
    }), oneOfLinks('leg', 'gatheringTurn', 'wrapHoop'))).toEqual([])
  })

  test('more wraps, for the grip', () => {
    expect(worseAfter((p) => ({ 'gathering.wraps': String(numberIn(p['gathering.wraps']) + 3) }), oneOfLinks('gatheringGrip'))).toEqual([])
  })

  test('a deeper thread, for the fixing', () => {
    expect(worseAfter((p) => ({ 'fixing.penetration': `${numberIn(p['fixing.penetration']) + 9} mm` }), oneOfLinks('fixing'))).toEqual([])
  })

  test('a shorter arm, more screws and a taller plate, for the fixing and the arm', () => {
    expect(worseAfter((p) => (p['bracket.reach'] === undefined ? null : { 'bracket.reach': `${numberIn(p['bracket.reach']) * 0.7} mm` }), oneOfLinks('fixing', 'bracket'))).toEqual([])
    expect(worseAfter((p) => (p['bracket.screws'] === undefined ? null : { 'bracket.screws': String(numberIn(p['bracket.screws']) + 1) }), oneOfLinks('fixing'))).toEqual([])
    expect(worseAfter((p) => (p['bracket.top'] === undefined ? null : { 'bracket.top': `${numberIn(p['bracket.top']) + 60} mm` }), oneOfLinks('fixing'))).toEqual([])
  })

  test('a wider plate, for the fixing of a bracket that is pulled aside', () => {
    expect(worseAfter((p) => (p['place.support'] === 'bracket' ? { 'bracket.wide': '60 mm' } : null), oneOfLinks('fixing'))).toEqual([])
  })

  test('a place that was seen, not told; nothing else hung there', () => {
    expect(worseAfter((p) => (p['place.known'] === 'told' ? { 'place.known': 'seen' } : null), all)).toEqual([])
    expect(betterAfter((p) => (p['rail.others'] === undefined ? null : { 'rail.others': '7 kg' }), oneOfLinks('fixing', 'bracket', 'pin'))).toEqual([])
  })

  test('thicker wire, for the shank, the pin and the ring', () => {
    expect(worseAfter((p) => ({ 'hook.wire': `${numberIn(p['hook.wire']) + 1} mm` }), oneOfLinks('hookShank', 'pin'))).toEqual([])
    expect(worseAfter((p) => (p['ring.rated'] === undefined && p['ring.metal'] !== 'wood' ? { 'ring.wire': `${numberIn(p['ring.wire']) + 1} mm` } : null), oneOfLinks('ring'))).toEqual([])
  })

  test('a test hang that counts, for the grip and a wooden ring', () => {
    expect(worseAfter(() => ({ 'testHang.mass': '40 kg', 'testHang.time': '30 h', 'testHang.slip': '1 mm' }), oneOfLinks('gatheringGrip', 'ring'))).toEqual([])
  })
})

describe('every check', () => {
  test('has finite numbers only', () => {
    const odd = HANGERS.flatMap(({ seed, check }) => check.links.flatMap((l) => {
      const numbers = [l.demand?.value, l.capacity?.value, l.allowable?.value, l.utilisation, l.overallFactor, ...l.factors.map((f) => f.value), ...l.terms.map((t) => t.value)]
      return numbers.every((x) => x === null || x === undefined || Number.isFinite(x)) ? [] : [`seed ${seed}, ${l.id}`]
    }))
    expect(odd).toEqual([])
  })

  test('allows the capacity times all factors, and uses what is asked over what is allowed', () => {
    const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.abs(b)
    const odd = HANGERS.flatMap(({ seed, check }) => check.links.flatMap(({ id, capacity, factors, allowable, demand, utilisation }) => {
      if (capacity === null || allowable === null) return []
      const product = factors.reduce((p, f) => p * f.value, capacity.value)
      const used = demand === null || utilisation === null || close(utilisation, demand.value / allowable.value)
      return close(allowable.value, product) && used ? [] : [`seed ${seed}, ${id}`]
    }))
    expect(odd).toEqual([])
  })

  test('is as bad as its worst link, on each side and in all', () => {
    for (const { check: { links, verdict, verdicts } } of HANGERS) {
      const worst = (some: readonly LinkResult[]) => some.map((l) => l.verdict).reduce((a, b) => (isWorse(b, a) ? b : a))
      expect(verdict).toBe(worst(links))
      expect(verdicts.hanger).toBe(worst(links.filter((l) => l.side === 'hanger')))
      expect(verdicts.place).toBe(worst(links.filter((l) => l.side === 'place')))
    }
  })

  test('is governed by the largest utilisation among its worst verdicts', () => {
    for (const { check: { links, verdict, governing } } of HANGERS) {
      const used = links.filter((l) => l.verdict === verdict).map((l) => l.utilisation ?? -1)
      expect(governing?.verdict).toBe(verdict)
      expect(governing?.utilisation ?? -1).toBe(Math.max(...used))
    }
  })

  test('names each result once', () => {
    for (const { check: { links } } of HANGERS) expect(new Set(links.map((l) => l.id)).size).toBe(links.length)
  })

  test('weighs in order: low, likely, high; dry, watered, flooded', () => {
    for (const { seed, check: { solved: { potted } } } of HANGERS) {
      for (const state of STATES) {
        const { low, likely, high } = potted[state].mass
        expect(low > 0 && low <= likely && likely <= high, `seed ${seed} ${state}`).toBe(true)
      }
      for (const end of ['low', 'likely', 'high'] as const) {
        expect(potted.dry.mass[end] <= potted.watered.mass[end] && potted.watered.mass[end] <= potted.flooded.mass[end], `seed ${seed} ${end}`).toBe(true)
      }
    }
  })

  test('says the same twice', () => {
    for (const { patch, check } of HANGERS.slice(0, 20)) expect(checkOf(patch).links).toEqual(check.links)
  })
})
