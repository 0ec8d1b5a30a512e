import { describe, expect, test } from 'vitest'
import { slingInput, solveBattery, solveWithoutLeg, tensionsOf, type BatteryInput } from '../../../src/check/slingBattery'
import { roundLegs, type RoundLeg, type SlingPlan } from '../../../src/check/slingPlan'
import { metres } from '../../../src/quantity/si'
import { solveSling } from '../../../src/statics/sling/solveSling'
import { ON_AXIS, tautPath, tautPathTo, type TautPath } from '../../../src/statics/tautPath'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { equalLegs } from './equalLegs'

const PROFILE = [{ r: 0.07, z: 0 }, { r: 0.105, z: 0.185 }] as const

const PATH = pathOf()
const legsOf = (count: number): SlingPlan => equalLegs(count, PATH)

function pathOf(): TautPath {
  const path = tautPath({ profile: PROFILE, upper: ON_AXIS, strand: metres(0.8) })
  if (!path.ok) throw new Error('no path')
  return path
}

function battery(change: Partial<BatteryInput>): BatteryInput {
  return { plan: legsOf(4), stiffness: 2300, bedded: 6900, mass: 6, centre: 0.16, offset: 0, tolerance: 0, ...change }
}
const WEIGHT = 6 * 9.80665

describe('the worst leg', () => {
  test('of an even sling with the weight on its axis is an even share, and the rule for three counts', () => {
    const { solvedTension, tension, floor, sum, nearlySlack } = solveBattery(battery({}))
    const angle = Math.asin(0.105 / PATH.free)
    // The stretched leg stands a little steeper than the slack one.
    expect(solvedTension).toBeLessThan(WEIGHT / (4 * Math.cos(angle)))
    expect(solvedTension).toBeGreaterThan(WEIGHT / 4)
    expect(floor).toBeCloseTo(WEIGHT / (3 * Math.cos(angle)), 12)
    expect(tension).toBe(floor)
    expect(sum).toBeCloseTo(4 * (solvedTension ?? NaN), 9)
    expect(nearlySlack).toBe(0)
  })

  test('is pulled harder by a weight off the axis, whichever side that is', () => {
    const even = solveBattery(battery({})).solvedTension ?? NaN
    const off = solveBattery(battery({ offset: 0.02 })).solvedTension ?? NaN
    expect(off).toBeGreaterThan(even * 1.05)
  })

  test('is pulled harder in legs of unequal length, the more so in stiff ones', () => {
    const at = (change: Partial<BatteryInput>): number => solveBattery(battery({ tolerance: 0.006, ...change })).solvedTension ?? NaN
    expect(at({})).toBeGreaterThan(solveBattery(battery({})).solvedTension ?? NaN)
    expect(at({ bedded: 20_000 })).toBeGreaterThan(at({}))
  })

  test('of four stiff legs 10 mm apart in length carries half with one opposite, and the others hang slack', () => {
    const { solvedTension, nearlySlack } = solveBattery(battery({ tolerance: 0.01, bedded: 60_000 }))
    expect(nearlySlack).toBe(2)
    expect(solvedTension ?? NaN).toBeGreaterThan(WEIGHT / 2)
    expect(solvedTension ?? NaN).toBeLessThan(0.6 * WEIGHT)
  })

  test.each([4, 5, 7])('of %d is never pulled harder by any one leg longer or shorter than was reckoned', (legs) => {
    const input = battery({ plan: legsOf(legs), tolerance: 0.007 })
    const reckoned = solveBattery(input).solvedTension ?? NaN
    for (const change of [0.007, -0.007]) {
      for (let i = 0; i < legs; i++) {
        const uneven = solveSling(slingInput(input, input.bedded, [0, 0, input.centre], Array.from({ length: legs }, (_, leg) => (leg === i ? change : 0))))
        expect(Math.max(...tensionsOf(uneven))).toBeLessThanOrEqual(reckoned * (1 + 1e-9))
      }
    }
  })

  test('of three legs, which always share by balance, hardly minds their lengths', () => {
    const three = (tolerance: number): number => solveBattery(battery({ plan: legsOf(3), bedded: 60_000, tolerance })).solvedTension ?? NaN
    expect(three(0.01) / three(0)).toBeLessThan(1.12)
  })
})

describe('a sling without a rest', () => {
  test('of a pot whose weight is above its hook is unstable and has no tension', () => {
    expect(solveBattery(battery({ centre: 1.4 }))).toMatchObject({ trouble: 'unstable', tension: null, sum: null })
  })

  test('still has the rule’s tension to show', () => {
    expect(solveBattery(battery({ centre: 1.4 })).floor).toBeGreaterThan(0)
  })
})

describe('legs that are not alike', () => {
  // Four along a stick of unequal spacing, over a rectangle: leave radii and upper ends all their own.
  const PLACES: readonly (readonly [angle: number, radius: number, along: number])[] = [[0.42, 0.152, 0.06], [Math.PI - 0.42, 0.152, -0.025], [Math.PI + 0.42, 0.152, -0.06], [2 * Math.PI - 0.42, 0.152, 0.025]]
  const legsAt = (turn: number, mirror: 1 | -1): readonly RoundLeg[] => PLACES.map(([angle, radius, along]): RoundLeg => {
    const [seen, stick] = [mirror * angle + turn, mirror * 0.2 + turn]
    const upper = [along * Math.cos(stick), along * Math.sin(stick)] as const
    const end = { out: along * Math.cos(stick - seen), aside: along * Math.sin(stick - seen) }
    return { angle: seen, upper, path: tautPathTo([{ r: 0.11, z: 0 }, { r: radius, z: 0.17 }], end, 0.72) }
  })
  const eachOf = (turn: number, mirror: 1 | -1): readonly number[] => solveBattery(battery({ plan: roundLegs(legsAt(turn, mirror)), tolerance: 0.004 })).each ?? []

  test('have tensions of their own, the same however the whole is turned or mirrored', () => {
    const [first, second] = [eachOf(0, 1), eachOf(0, 1)[1] ?? NaN]
    expect(Math.abs((first[0] ?? NaN) - second)).toBeGreaterThan(0.5)
    for (const [turn, mirror] of [[Math.PI / 2, 1], [Math.PI, 1], [0, -1]] as const) eachOf(turn, mirror).forEach((tension, i) => expect(tension).toBeCloseTo(first[i] ?? NaN, 6))
  })

  test('each have their own floor: as much as a counted leg, at their own angle', () => {
    const legs = legsAt(0, 1)
    roundLegs(legs).legs.forEach(({ floor }, i) => expect(floor).toBeCloseTo(1 / (3 * Math.cos(legs[i]?.path.angle ?? NaN)), 12))
  })

  test('half a turn apart stand for each other; of all alike one stands for all', () => {
    expect(roundLegs(legsAt(0, 1))).toMatchObject({ distinct: [0, 1], alike: false })
    expect(legsOf(7)).toMatchObject({ distinct: [0], alike: true })
  })
})

describe('a sling of unlike legs', () => {
  /** Five strands to a stick of 24 cm, each from its own place. */
  const spread = (): BatteryInput => {
    const { plan, loads, potted } = checkOf({ ...ORDINARY, 'make.top': 'stick', 'stick.bunch': '240 mm', 'stick.length': '400 mm', 'stick.span': '360 mm', 'make.legs': '5' }).solved
    if (plan === null) throw new Error('no plan')
    return { plan, stiffness: 2300, bedded: 6900, mass: loads.watered.weight / 9.80665, centre: potted.watered.centre, offset: 0.01, tolerance: 0.003 }
  }

  test('tells the hardest pull of any leg, and the greatest of the floors', () => {
    const input = spread()
    const { solvedEach, solvedTension, each, tension, floor } = solveBattery(input)
    expect(new Set(solvedEach?.map((pull) => Math.round(pull * 1e3))).size).toBeGreaterThan(1)
    expect(solvedTension).toBe(Math.max(...solvedEach ?? []))
    expect(tension).toBe(Math.max(...each ?? []))
    const floors = input.plan.legs.map((leg) => leg.floor * input.mass * 9.80665)
    expect(Math.max(...floors)).toBeGreaterThan(1.001 * Math.min(...floors))
    expect(floor).toBeCloseTo(Math.max(...floors), 9)
  })

  test('without a leg is told with that one pulling nothing and the others in their places, the worst of all that may go', () => {
    const input = { ...spread(), tolerance: 0, offset: 0 }
    const alone = input.plan.distinct.map((leg) => solveWithoutLeg({ ...input, plan: { ...input.plan, distinct: [leg] } }))
    const worst = solveWithoutLeg(input)
    expect(new Set(alone.map(({ tension }) => Math.round((tension ?? 0) * 1e3))).size).toBeGreaterThan(1)
    expect(worst.tension).toBe(Math.max(...alone.map(({ tension }) => tension ?? NaN)))
    for (const [i, one] of alone.entries()) {
      const gone = input.plan.distinct[i] ?? NaN
      expect(one.gone).toBe(gone)
      expect(one.each).toHaveLength(5)
      expect(one.each?.[gone]).toBe(0)
      expect(one.each?.filter((_, leg) => leg !== gone)).toEqual(tensionsOf(one.drawn))
      expect(one.sum).toBeCloseTo(tensionsOf(one.drawn).reduce((a, b) => a + b, 0), 9)
    }
  })

  test('of three cannot spare one: two are left, about which the pot turns', () => {
    const three = { ...spread(), tolerance: 0, offset: 0, plan: legsOf(3) }
    expect(solveWithoutLeg({ ...three, plan: { ...three.plan, distinct: [0, 1, 2] } }).trouble).toBe('lost support')
  })
})

test('a leg is nearly slack below a twentieth of an even share', () => {
  for (const tolerance of [0.0005, 0.001, 0.0015, 0.002, 0.003, 0.006]) {
    const input = battery({ tolerance })
    const slack = input.plan.uneven.map((longer) => tensionsOf(solveSling(slingInput(input, input.bedded, [0, 0, input.centre], longer.map((share) => share * tolerance)))).filter((pull) => pull < (0.05 * WEIGHT) / 4).length)
    expect(solveBattery(input).nearlySlack).toBe(Math.max(...slack))
  }
  const counts = [0.0005, 0.006].map((tolerance) => solveBattery(battery({ tolerance })).nearlySlack)
  expect(counts[0]).toBe(0)
  expect(counts[1]).toBeGreaterThan(0)
})
