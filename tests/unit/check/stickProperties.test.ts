import { describe, expect, test } from 'vitest'
import type { CheckResult, LinkCode, LinkResult, Patch } from '#core'
import { checkOf } from '../hanger/hangerOf'
import { manyCases } from '../quantity/manyCases'
import { improvements } from './improvements'
import { stickPatch } from './stickPatch'

/** The first ones, and one that hangs from open links. */
const SEEDS = [...Array.from({ length: manyCases(20) }, (_, i) => i + 1), 93]
const HANGERS = SEEDS.map((seed): { seed: number; patch: Patch; check: CheckResult } => {
  const patch = stickPatch(seed)
  return { seed, patch, check: checkOf(patch) }
})

type Change = (patch: Patch) => Patch | null
const among = (...links: readonly LinkCode[]) => (l: LinkResult): boolean => links.includes(l.link)
/** A heavier stick lets the hanger drop, or be tugged at, with a smaller multiple of its weight, and so of the pot's, which is all a test hang stood for. */
const lighterDrop = (text: string): boolean => text.includes('stick.testHang.drop') || text.includes('stick.testHang.tug')
/** A lighter hanger is thrown further by the wind. */
const inWind = (text: string): boolean => text.includes('.gust:')
const numberIn = (text: string | undefined): number => Number.parseFloat(text ?? 'NaN')

const found = (change: Change, links: readonly LinkCode[], backwards: boolean): readonly string[] => HANGERS.flatMap(({ seed, patch, check }) => {
  const changed = change(patch)
  if (changed === null) return []
  const after = checkOf({ ...patch, ...changed })
  return (backwards ? improvements(after, check, among(...links)) : improvements(check, after, among(...links))).map((text) => `seed ${seed}, ${text}`)
})
const betterAfter = (change: Change, ...links: readonly LinkCode[]): readonly string[] => found(change, links, false)
const worseAfter = (change: Change, ...links: readonly LinkCode[]): readonly string[] => found(change, links, true)

test('the hangers are of all kinds', () => {
  const links = HANGERS.flatMap((h) => h.check.links).filter((l) => ['stick', 'topCord', 'connector'].includes(l.link))
  expect([...new Set(links.map((l) => l.verdict))].sort()).toEqual(['fails', 'holds', 'just holds', 'not enough known'])
  expect([...new Set(links.map((l) => l.part))].sort()).toEqual(expect.arrayContaining(['bend', 'judgedBending', 'openChain', 'stickBending', 'stickBendingAllowed', 'stickShear', 'stickShearAllowed', 'testHang', 'tiedToStick', 'weldedChain', 'wireHinge']))
})

describe('more of what is good never looks worse', () => {
  // A thicker stick is heavier: too little to weigh against the third power of its thickness.
  test('a thicker stick, for the stick', () => {
    expect(worseAfter((p) => ({ 'stick.diameter': `${numberIn(p['stick.diameter']) * 1.2} mm`, 'stick.hollow': `${numberIn(p['stick.hollow'])} mm` }), 'stick')).toEqual([])
  })

  // A longer cord weighs more: what each newton does is compared.
  test('a longer top cord: less pull in it, more that the stick bears', () => {
    for (const { seed, patch, check } of HANGERS) {
      if (patch['stick.held'] !== 'topCord') continue
      const longer = checkOf({ ...patch, 'stick.topCord': `${numberIn(patch['stick.topCord']) + numberIn(patch['stick.span']) * 0.2} mm` })
      const pullOf = (c: CheckResult): number => (c.links.find((l) => l.link === 'topCord' && l.case === 'dry')?.demand?.value ?? NaN) / c.solved.loads.dry.weight
      const bearsOf = (c: CheckResult): number => c.links.find((l) => l.link === 'stick' && l.case === 'dry' && (l.part === 'stickBending' || l.part === 'judgedBending'))?.capacity?.value ?? 0
      expect(pullOf(longer), `seed ${seed}`).toBeLessThan(pullOf(check))
      expect(bearsOf(longer), `seed ${seed}`).toBeGreaterThanOrEqual(bearsOf(check))
    }
  })

  test('thicker wire between, and links welded shut', () => {
    expect(worseAfter((p) => (p['connector.wire'] === undefined ? null : { 'connector.wire': `${numberIn(p['connector.wire']) + 1.5} mm` }), 'connector')).toEqual([])
    expect(worseAfter((p) => (p['connector.joint'] === 'open' ? { 'connector.joint': 'closed' } : null), 'connector')).toEqual([])
  })

  test('a heavy test hang that counts', () => {
    expect(worseAfter(() => ({ 'testHang.mass': '60 kg', 'testHang.time': '30 h', 'testHang.slip': '1 mm' }), 'stick', 'connector')).toEqual([])
  })
})

describe('more of what is bad never looks better', () => {
  // The wider the supports stand the less they share unequally, so that shear may fall.
  test('a wider span under a row of legs within it, for bending', () => {
    expect(betterAfter((p) => (p['stick.held'] === 'twoHooks' ? { 'stick.length': `${numberIn(p['stick.length']) + 60} mm`, 'stick.span': `${numberIn(p['stick.span']) + 60} mm` } : null), 'stick').filter((text) => !text.includes('stickShear') && !lighterDrop(text))).toEqual([])
  })

  test('a heavier pot, wet wood, grain that runs out', () => {
    expect(betterAfter((p) => ({ 'weighed.mass': `${numberIn(p['weighed.mass']) * 1.4} kg` }), 'stick', 'topCord', 'connector').filter((text) => !inWind(text))).toEqual([])
    expect(betterAfter((p) => (p['stick.state'] === 'dry' ? { 'stick.state': 'green' } : null), 'stick').filter((text) => !lighterDrop(text) && !inWind(text))).toEqual([])
    expect(betterAfter((p) => (p['stick.grain'] === 'straight' ? { 'stick.grain': 'unknown' } : p['stick.grain'] === 'unknown' ? { 'stick.grain': 'sloping' } : null), 'stick')).toEqual([])
  })
})

test('what hangs on hook and connector is never less than half the weight, nor more than all of it', () => {
  for (const { seed, patch, check } of HANGERS) {
    for (const l of check.links) {
      if (l.part === 'testHang' || !(l.link === 'connector' || (l.link === 'hook' && patch['rail.others'] === undefined))) continue
      const share = (l.demand?.value ?? NaN) / check.solved.loads[l.case].weight
      expect(share, `seed ${seed}, ${l.id}`).toBeGreaterThanOrEqual(patch['stick.held'] === 'twoHooks' ? 0.5 - 1e-9 : 1 - 1e-9)
      expect(share, `seed ${seed}, ${l.id}`).toBeLessThanOrEqual(1 + 1e-9)
    }
  }
})
