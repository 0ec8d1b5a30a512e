import { describe, expect, test } from 'vitest'
import type { CheckResult, Patch } from '#core'
import { centreOfAll } from '../../../../src/check/tiers/centreOfAll'
import { pottedTogether } from '../../../../src/check/tiers/pottedTogether'
import { radians } from '../../../../src/quantity/si'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'

const TWO: Patch = {
  ...ORDINARY, 'pot.rim': '150 mm', 'pot.height': '130 mm', 'pot.base': '100 mm', 'weighed.mass': '2.6 kg', 'weighed.state': 'watered', 'plant.height': '12 cm',
  'make.arrangement': 'tiers', 'make.totalLength': '85 cm', 'make.fringe': '20 cm', 'cord.diameter': '4 mm', 'cord.linearDensity': '8.5 g/m', 'cradle.first': '85 mm',
  'tiers.count': '2', 'tiers.how': 'runOn',
  'second.rim': '130 mm', 'second.height': '115 mm', 'second.base': '90 mm', 'second.mass': '1.8 kg', 'second.state': 'watered', 'second.strand': '420 mm', 'second.first': '75 mm',
}
const tiered = (patch: Patch): CheckResult => checkOf({ ...TWO, ...patch })
const cordsOf = (check: CheckResult): readonly number[] => check.solved.tiers.map(({ alone }) => alone.hangerMass.dry.likely)
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0)

describe('cords of pots one under another', () => {
  test('told as cut are all there is: what the lower pots take is left out of the first pot’s', () => {
    const cut = { 'make.cords': '8', 'make.cutLength': '5 m' } as const
    const alone = checkOf({ ...TWO, ...cut, 'make.arrangement': 'legs' })
    const whole = tiered(cut)
    const [first = NaN, second = NaN] = cordsOf(whole)
    expect(whole.solved.hangerMass.dry.likely).toBeCloseTo(first + second, 12)
    expect(first + second).toBeCloseTo(alone.solved.hangerMass.dry.likely, 9)
    expect(second).toBeGreaterThan(0.01)
    expect(second).toBeCloseTo(cordsOf(tiered({}))[1] ?? NaN, 12)
    for (const state of ['dry', 'watered', 'flooded'] as const) for (const end of ['low', 'likely', 'high'] as const) {
      expect(whole.solved.hangerMass[state][end]).toBeCloseTo(alone.solved.hangerMass[state][end], 9)
    }
  })

  test('told as cut far too short leave the first pot none, never less', () => {
    const few = tiered({ 'make.cords': '1', 'make.cutLength': '30 cm', 'make.legLength': '40 cm' })
    for (const state of ['dry', 'watered', 'flooded'] as const) {
      const mass = few.solved.tiers[0]?.alone.hangerMass[state]
      expect([mass?.low, mass?.likely, mass?.high].every((m) => m !== undefined && m >= 0)).toBe(true)
      expect(few.solved.hangerMass[state].high).toBeGreaterThanOrEqual(few.solved.tiers[1]?.alone.hangerMass[state].high ?? NaN)
    }
  })

  test('not told as cut are reckoned for each pot, and added up', () => {
    const whole = tiered({})
    expect(whole.solved.hangerMass.dry.likely).toBeCloseTo(sum(cordsOf(whole)), 12)
    expect(Math.min(...cordsOf(whole))).toBeGreaterThan(0)
  })
})

describe('from the hook to the end of the lowest fringe', () => {
  const drops = (check: CheckResult): readonly number[] => check.solved.tiers.map(({ hung }) => hung.geometry.drop ?? NaN)

  test('is all of them one after another, with every knot as far down as it is drawn', () => {
    const check = tiered({})
    const drawn = check.solved.tiers.map(({ hung }) => hung.drawnKnot?.drawn ?? 0)
    expect(drawn[0]).toBeGreaterThan(0.01)
    expect(drawn[1]).toBe(0)
    expect(check.solved.geometry.drop).toBeCloseTo(sum(drops(check)) + sum(drawn), 12)
  })

  test('is the longest of them where each has cords of its own', () => {
    const check = tiered({ 'tiers.how': 'ownCords' })
    expect(drops(check)[1]).toBeGreaterThan(drops(check)[0] ?? NaN)
    expect(check.solved.geometry.drop).toBe(drops(check)[1])
  })

  test('is not known where the strands of one do not reach round their pot', () => {
    expect(tiered({ 'second.strand': '120 mm' }).solved.geometry.drop).toBeNull()
    expect(tiered({ 'make.totalLength': '40 cm' }).solved.geometry.drop).toBeNull()
  })
})

describe('what all pots weigh together', () => {
  const partsOf = (check: CheckResult, state: 'dry' | 'watered' | 'flooded') => pottedTogether(check.solved)[state]

  test('is the sum, part by part', () => {
    const check = checkOf({ ...without(TWO, 'weighed.mass', 'weighed.state', 'second.mass', 'second.state'), 'saucer.mass': '120 g' })
    for (const state of ['dry', 'watered', 'flooded'] as const) {
      const each = check.solved.tiers.map(({ alone }) => alone.potted[state])
      const together = partsOf(check, state)
      expect(together.mass.high).toBeCloseTo(sum(each.map((p) => p.mass.high)), 12)
      const parts = new Set(each.flatMap(({ components }) => components.map(({ part }) => part)))
      expect(together.components.map(({ part }) => part)).toEqual([...parts])
      for (const { part, mass, water } of together.components) {
        const own = each.flatMap(({ components }) => components.filter((c) => c.part === part))
        expect(mass.likely).toBeCloseTo(sum(own.map((c) => c.mass.likely)), 12)
        expect(water.likely).toBeCloseTo(sum(own.map((c) => c.water.likely)), 12)
      }
    }
  })

  test('is weighed only if every pot was, and too light or standing in water if any is', () => {
    const weighed = (patch: Patch): boolean => pottedTogether(tiered(patch).solved).watered.weighed
    expect(weighed({})).toBe(true)
    expect(pottedTogether(checkOf({ ...without(TWO, 'second.mass', 'second.state'), 'weighed.mass': '0.3 kg' }).solved).watered.weighed).toBe(false)
    const light = (patch: Patch): boolean => pottedTogether(tiered(patch).solved).watered.tooLight
    expect(light({})).toBe(false)
    expect(light({ 'second.mass': '0.06 kg' })).toBe(true)
    expect(light({ 'weighed.mass': '0.06 kg' })).toBe(true)
  })
})

test('on cords of their own nothing hangs from the knot of the pot above, and no knot is drawn down', () => {
  const own = tiered({ 'tiers.how': 'ownCords' })
  expect(own.solved.drawnKnot).toBeNull()
  expect(own.solved.tiers.map(({ hung }) => hung.drawnKnot)).toEqual([null, null])
  expect(tiered({}).solved.drawnKnot).not.toBeNull()
})

describe('the common centre of gravity', () => {
  const loads = { potted: 5, hanger: 1, below: 2 }

  test('is the upper pot’s share at its own, the lower’s at the knot under the base, on the axis', () => {
    const { centre, offset } = centreOfAll(0.09, 0.006, loads, { drawn: 0.03, angleBelow: radians(1) })
    expect(centre).toBeCloseTo((4 * 0.09 + 2 * -0.03) / 6, 12)
    expect(offset).toBeCloseTo((4 * 0.006) / 6, 12)
  })

  test('is the pot’s own where nothing hangs from its knot', () => {
    expect(centreOfAll(0.09, 0.006, loads, null)).toEqual({ centre: 0.09, offset: 0.006 })
  })
})
