import { describe, expect, test } from 'vitest'
import { checkHanger, type LinkCode, type Patch, type PullTestRow } from '#core'
import { cordStrengths } from '../../../src/check/cordStrength'
import { hangerOf } from '../hanger/hangerOf'
import { testedHanger } from '../hanger/testedHanger'
import { manyCases } from '../quantity/manyCases'
import { oneOf, seededRandom, wholeBetween } from '../quantity/seededRandom'
import { randomPatch } from './randomPatch'

type Log = readonly PullTestRow['typed'][]
const LINKS_OF_CORD: readonly LinkCode[] = ['leg', 'gatheringTurn', 'wrapHoop']

/** Random hangers with and without a log of pull tests, some of rope, some with sharp pots and joins. */
const HANGERS = Array.from({ length: manyCases(32) }, (_, i): { seed: number; patch: Patch; log: Log } => {
  const random = seededRandom(i + 9000)
  const rope: Patch = i % 3 === 0 ? { 'cord.fibre': oneOf(random, ['manila', 'sisal', 'nylon', 'polyester', 'polypropylene', 'hemp']), 'cord.make': 'rope', 'cord.diameter': `${wholeBetween(random, 40, 160) / 10} mm` } : {}
  const { 'cord.linearDensity': weighed, ...rest } = randomPatch(i + 9000)
  const patch: Patch = { ...rest, ...(i % 3 === 0 || weighed === undefined ? {} : { 'cord.linearDensity': weighed }), ...rope, 'make.joined': oneOf(random, ['no', 'yes', 'splice', 'glued']), 'pot.edge': oneOf(random, ['rounded', 'sharp']) }
  const log = i % 2 === 0 ? [] : Array.from({ length: wholeBetween(random, 1, 7) }, () => ({
    load: `${wholeBetween(random, 90, 260)} N`, how: oneOf(random, ['straight', 'tied']), state: oneOf(random, ['dry', 'soaked']), time: `${wholeBetween(random, 1, 90)} s`,
  }))
  return { seed: i + 9000, patch, log }
})

/** What each part of the cord may carry in each situation, N. */
const allowed = (patch: Patch, log: Log): ReadonlyMap<string, number> =>
  new Map(checkHanger(testedHanger(patch, log)).links.flatMap((l) => (LINKS_OF_CORD.includes(l.link) && l.case !== 'strandParted' && l.allowable ? [[`${l.link} ${l.case}`, l.allowable.value] as const] : [])))

const BEFORE = HANGERS.map(({ patch, log }) => allowed(patch, log))

/** Where a change that should strengthen a cord lowers what some part may carry. */
function weakerAfter(change: (patch: Patch, log: Log) => { readonly patch: Patch; readonly log: Log } | null): readonly string[] {
  return HANGERS.flatMap(({ seed, patch, log }, i) => {
    const changed = change(patch, log)
    if (changed === null) return []
    const after = allowed({ ...patch, ...changed.patch }, changed.log)
    return [...BEFORE[i] ?? []].flatMap(([part, before]) => ((after.get(part) ?? NaN) >= before * (1 - 1e-9) ? [] : [`seed ${seed}, ${part}: ${before} becomes ${after.get(part)}`]))
  })
}

const scaled = (text: string | undefined, by: number): string => `${Number.parseFloat(text ?? 'NaN') * by} ${text?.split(' ')[1] ?? ''}`

test('the hangers are of all kinds: every way to know a cord', () => {
  const grades = HANGERS.map(({ patch, log }) => cordStrengths(testedHanger(patch, log)).leg.dry.grade)
  expect([...new Set(grades)].sort()).toEqual(['diameter', 'table', 'tested', 'weighed'])
})

describe('no part of the cord may carry less', () => {
  test('with more strands in each leg', () => {
    for (const more of [1, 2, 5]) expect(weakerAfter((patch, log) => ({ patch: { 'make.strands': String(Number(patch['make.strands']) + more) }, log }))).toEqual([])
  })

  test('with more of them filler cords', () => {
    expect(weakerAfter((patch, log) => ({ patch: { 'make.fillers': patch['make.strands'] ?? '' }, log }))).toEqual([])
  })

  test('with thicker cord of the same kind on a ring', () => {
    for (const by of [1.1, 1.3]) {
      expect(weakerAfter((patch, log) => (patch['make.top'] !== 'ring' || patch['cord.diameter'] === undefined || log.length > 0 ? null : {
        patch: { 'cord.diameter': scaled(patch['cord.diameter'], by), ...(patch['cord.linearDensity'] === undefined ? {} : { 'cord.linearDensity': scaled(patch['cord.linearDensity'], by * by) }) },
        log,
      }))).toEqual([])
    }
  })

  test('with cord that is heavier for its length', () => {
    // Only as long as there is room for its fibre: beyond, the weighing is doubted and counts for nothing.
    const doubted = (patch: Patch): boolean => cordStrengths(hangerOf(patch)).leg.dry.findings.some((f) => f.code === 'CORD_TOO_HEAVY')
    let compared = 0
    expect(weakerAfter((patch, log) => {
      const heavier = { 'cord.linearDensity': scaled(patch['cord.linearDensity'], 1.2) }
      if (patch['cord.linearDensity'] === undefined || patch['cord.diameter'] === undefined || doubted({ ...patch, ...heavier })) return null
      compared += 1
      return { patch: heavier, log }
    })).toEqual([])
    expect(compared).toBeGreaterThan(12)
  })

  test('with pull tests that were all a third stronger', () => {
    expect(weakerAfter((_, log) => ({ patch: {}, log: log.map((row) => ({ ...row, load: scaled(row.load, 4 / 3) })) }))).toEqual([])
  })

  test('with pull tests that broke later at the same load', () => {
    expect(weakerAfter((_, log) => ({ patch: {}, log: log.map((row) => ({ ...row, time: scaled(row.time, 3) })) }))).toEqual([])
  })

  test('with a thicker ring, a rounded pot or whole strands', () => {
    expect(weakerAfter((patch, log) => ({ patch: { 'ring.wire': scaled(patch['ring.wire'], 1.5) }, log }))).toEqual([])
    expect(weakerAfter((_, log) => ({ patch: { 'pot.edge': 'rounded' }, log }))).toEqual([])
    expect(weakerAfter((_, log) => ({ patch: { 'make.joined': 'no' }, log }))).toEqual([])
  })
})

test('a rope that grows thicker in its table is never weaker, whatever the step', () => {
  for (const fibre of ['manila', 'sisal', 'nylon', 'polyester', 'polypropylene', 'hemp', 'cotton']) {
    const forces = Array.from({ length: 140 }, (_, i) => cordStrengths(hangerOf({ 'cord.fibre': fibre, 'cord.make': 'rope', 'cord.diameter': `${(20 + i) / 10} mm` })).leg.dry.capacity?.value ?? NaN)
    forces.slice(1).forEach((force, i) => { expect(force).toBeGreaterThanOrEqual(forces[i] ?? NaN) })
  }
})
