import { describe, expect, it } from 'vitest'
import { radians } from '../../../../src/quantity/si'
import { pinnedAt } from '../../../../src/statics/seat/slidingSeat'
import { withoutEachLeg, withoutEachStrand } from '../../../../src/statics/seat/withoutEach'
import { solveSling } from '../../../../src/statics/sling/solveSling'
import { seededRandom } from '../../quantity/seededRandom'
import { randomSeat, roundSeat } from './randomSeat'

const round = { legs: 5, ring: 0.108, leaveRadius: 0.108, leaveHeight: 0.15, baseRadius: 0.076, rise: 0.587, EA: 1e7, weight: 60, centre: 0.15 }
const TIPS = radians(0.26)

describe('one leg parted', () => {
  // m upright legs, one cut: T_j = (W/m) [1 + (1 + 2 cos phi_j) / (m - 3)]; peak 1.809017 W/m for five.
  it('leaves five upright legs the peak of the closed form', () => {
    const each = withoutEachLeg(pinnedAt(roundSeat(round)), TIPS)
    expect(each.map(({ outcome }) => outcome)).toEqual(new Array(5).fill('stays'))
    for (const { leg, worst, tensions } of each) {
      expect(worst! / 12).toBeCloseTo(1.809017, 4)
      expect(tensions![leg]).toBe(0)
    }
  })

  it('lets a pot on three fall', () => {
    expect(withoutEachLeg(pinnedAt(roundSeat({ ...round, legs: 3 })), TIPS).map(({ outcome, why }) => `${outcome} ${String(why)}`)).toEqual(new Array(3).fill('falls TOO_FEW_LEGS'))
  })

  it('tells tipping from staying by the angle given', () => {
    const sling = pinnedAt(roundSeat({ ...round, legs: 4, ring: 0, EA: 2900, centre: 0.1 }))
    const [one] = withoutEachLeg(sling, TIPS)
    expect(one!.outcome).toBe('stays')
    expect(withoutEachLeg(sling, radians(one!.tilt! / 2))[0]!.outcome).toBe('tips')
  })

  it('tells each leg of an uneven hanger by itself, and what was wrong from the start', () => {
    const sling = pinnedAt(roundSeat({ ...round, legs: 4, ring: 0.02, EA: 2900, centre: 0.08 }))
    const worst = withoutEachLeg({ ...sling, EA: [900, 2900, 4100, 5600] }, TIPS).map((w) => w.worst!.toFixed(3))
    expect(new Set(worst).size).toBeGreaterThan(2)
    expect(withoutEachLeg({ ...sling, mass: 0 }, TIPS).map(({ why }) => why)).toEqual(new Array(4).fill('BAD_MASS'))
  })
})

describe('one strand parted', () => {
  it('leaves its leg softer, and takes a leg of one strand along', () => {
    const sling = pinnedAt(roundSeat({ ...round, legs: 4, ring: 0.04, EA: 2900, centre: 0.1 }))
    const each = withoutEachStrand(sling, [4, 4, 4, 1], TIPS)
    const soft = solveSling({ ...sling, EA: [2175 * (sling.EA[0]! / 2900), ...sling.EA.slice(1)] })
    expect(each[0]!.tensions![0]).toBeCloseTo('T' in soft ? soft.T[0]! : NaN, 9)
    expect(each[3]).toEqual(withoutEachLeg(sling, TIPS)[3])
  })
})

it('answers for random hangers', () => {
  const random = seededRandom(59)
  for (let i = 0; i < 60; i++) {
    for (const { outcome, worst, tilt } of withoutEachLeg(pinnedAt(randomSeat(random, i % 3 === 0)), TIPS)) {
      if (outcome === 'stays' || outcome === 'tips') expect(worst! > 0 && tilt! >= 0).toBe(true)
    }
  }
})
