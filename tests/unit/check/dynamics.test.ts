import { describe, expect, test } from 'vitest'
import { findingText, type CaseCode, type CheckResult, type Finding, type Patch } from '#core'
import { TUG_PULL } from '../../../src/catalogue/jolts'
import { GUST_SPEED, WINDS } from '../../../src/catalogue/wind'
import { windLoad } from '../../../src/load/windLoad'
import { metresPerSecond, STANDARD_GRAVITY } from '../../../src/quantity/si'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { linkIn, worstOfLink } from './linkOf'

const OUTDOORS: Patch = { ...ORDINARY, 'cord.fibre': 'polyester', 'cord.make': 'braided', 'place.exposure': 'outdoors' }
const loadsOf = (patch: Patch) => checkOf(patch).solved.loads
const whole = (patch: Patch) => checkOf(patch).solved.wholeCases
const found = <C extends Finding['code']>(patch: Patch, code: C) => checkOf(patch).findings.find((f): f is Extract<Finding, { code: C }> => f.code === code) ?? null

describe('a gust', () => {
  test('is a case outdoors only, and told there only', () => {
    for (const exposure of ['indoors', 'steamy']) expect(whole({ ...OUTDOORS, 'place.exposure': exposure })).not.toContain('gust')
    expect(found(ORDINARY, 'LEANS_IN_WIND')).toBeNull()
    expect(whole(OUTDOORS)).toContain('gust')
    expect(findingText(found(OUTDOORS, 'LEANS_IN_WIND') as Finding)).toMatch(/65 km\/h \(40 mph\).*clear of walls and glass/)
  })

  test('may strike the wall of a bracket that reaches less far than it swings, never a ceiling’s', () => {
    const on = (patch: Patch) => found({ ...OUTDOORS, ...patch }, 'LEANS_IN_WIND')?.strikes
    expect(on({})).toBe(false)
    expect(on({ 'place.support': 'bracket', 'bracket.reach': '30 cm' })).toBe(true)
    expect(on({ 'place.support': 'bracket', 'bracket.reach': '1 m', 'place.wind': 'sheltered', 'plant.width': '10 cm' })).toBe(false)
    expect(on({ 'place.support': 'wallHook' })).toBe(true)
  })

  test('pushes on pot, leaves and cords as worked by hand', () => {
    const patch: Patch = { ...OUTDOORS, 'pot.shape': 'taperedRound', 'pot.rim': '24 cm', 'pot.base': '16 cm', 'pot.height': '21 cm', 'plant.width': '44 cm', 'plant.height': '26 cm', 'plant.trail': '7 cm', 'make.legs': '5', 'make.strands': '4', 'make.totalLength': '90 cm', 'cord.diameter': '3 mm' }
    const { pot, leaves, cords, force } = windLoad(hangerOf(patch).answers, metresPerSecond(12))
    expect(pot.area).toBeCloseTo(0.2 * 0.21, 12)
    expect(leaves.area).toBeCloseTo(0.44 * 0.33, 12)
    expect(cords.area).toBeCloseTo(5 * 0.9 * 1.3 * 2 * 0.003, 12)
    // At 12 m/s leaves keep 0.6 less two fifths of 0.1.
    expect(force).toBeCloseTo(0.613 * 144 * (1.2 * pot.area + 0.56 * leaves.area + 1.2 * cords.area), 9)
  })

  test('without leaves only pot and cords are pushed', () => {
    const { leaves, pot, cords, pressure, force } = windLoad(hangerOf({ ...OUTDOORS, 'plant.width': '0 mm' }).answers, metresPerSecond(20))
    expect(leaves.area).toBe(0)
    expect(force).toBeCloseTo(pressure * 1.2 * (pot.area + cords.area), 9)
  })

  test('a square pot catches no less than a round one of its width', () => {
    const on = (shape: string) => windLoad(hangerOf({ ...OUTDOORS, 'pot.shape': shape }).answers, metresPerSecond(14)).pot
    expect(on('square').area * on('square').drag).toBeGreaterThan(on('taperedRound').area * on('taperedRound').drag)
  })

  test('of every speed pushes harder than of any slower one, though leaves fold', () => {
    const { answers } = hangerOf({ ...OUTDOORS, 'plant.width': '2 m', 'plant.height': '1 m', 'pot.rim': '4 cm', 'make.strands': '1' })
    let before = 0
    for (let speed = 0.5; speed <= 60; speed += 0.25) {
      const { leaves, pressure } = windLoad(answers, metresPerSecond(speed))
      expect(pressure * leaves.share, `${speed} m/s`).toBeGreaterThan(before)
      before = pressure * leaves.share
    }
  })

  test('in a windier place nothing is pulled less, and it leans further', () => {
    const speeds = WINDS.map((wind) => GUST_SPEED[wind].value)
    expect([...speeds].sort((a, b) => a - b)).toEqual(speeds)
    const solved = WINDS.map((wind) => checkOf({ ...OUTDOORS, 'place.wind': wind }).solved)
    for (const [calmer, windier] of [[solved[0], solved[1]], [solved[1], solved[2]]]) {
      expect(windier?.loads.gust.weight).toBeGreaterThan(calmer?.loads.gust.weight ?? NaN)
      expect(windier?.loads.gust.side).toBeGreaterThan(calmer?.loads.gust.side ?? NaN)
      expect(windier?.gust?.lean).toBeGreaterThan(calmer?.gust?.lean ?? NaN)
    }
  })

  test('leans a heavier pot less', () => {
    const leans = ['2 kg', '3.1 kg', '5 kg', '9 kg'].map((mass) => checkOf({ ...OUTDOORS, 'weighed.mass': mass, 'weighed.state': 'watered' }).solved.gust?.leanWatered ?? NaN)
    leans.slice(1).forEach((lean, i) => expect(lean).toBeLessThan(leans[i] ?? NaN))
    expect(leans.every((lean) => lean > 0 && lean < Math.PI / 2)).toBe(true)
  })

  test('pulls by 3 sqrt(W^2 + F^2) - 2 W, at the heaviest or the lightest', () => {
    for (const wind of WINDS) {
      const { loads, gust, potted, hangerMass } = checkOf({ ...OUTDOORS, 'place.wind': wind }).solved
      const light = (potted.dry.mass.low + hangerMass.dry.low) * STANDARD_GRAVITY
      const F = gust?.force ?? NaN
      expect(loads.gust.weight).toBeCloseTo(Math.max(...[loads[loads.gust.case.state].weight, light].map((W) => 3 * Math.hypot(W, F) - 2 * W)), 9)
      expect(loads.gust.side).toBeGreaterThan(F)
      expect(gust?.swing).toBeCloseTo(2 * Math.atan2(F, light), 12)
    }
  })

  test('bends the hook’s shank, and the leg bears it', () => {
    const check = checkOf({ ...OUTDOORS, 'place.wind': 'exposed' })
    expect(linkIn(check, 'hookShank', 'gust').utilisation).toBeGreaterThan(linkIn(check, 'hookShank', 'bump').utilisation ?? NaN)
    expect(linkIn(check, 'leg', 'gust').demand?.value).toBeGreaterThan(linkIn(check, 'leg', 'watered').demand?.value ?? NaN)
  })

  test('blows at all that hangs from the same hook, a bump at one', () => {
    const alone = checkOf(OUTDOORS)
    const beside = checkOf({ ...OUTDOORS, 'rail.others': '3 kg' })
    const row = checkOf({ ...OUTDOORS, 'make.arrangement': 'row', 'row.count': '3', 'row.spacing': '30 cm', 'stick.length': '90 cm', 'stick.span': '80 cm', 'stick.topCord': '130 cm' })
    const { weight, factor } = alone.solved.loads.gust
    const side = (check: CheckResult, code: CaseCode): number => linkIn(check, 'hookShank', code).demand?.value ?? NaN
    expect(side(beside, 'gust') / side(alone, 'gust')).toBeCloseTo(1 + (3 * STANDARD_GRAVITY * factor) / weight, 9)
    expect(side(beside, 'bump')).toBeCloseTo(side(alone, 'bump'), 9)
    expect(side(row, 'gust')).toBeGreaterThan(2.5 * row.solved.loads.gust.side)
    expect(side(row, 'bump')).toBeCloseTo(row.solved.loads.bump.side, 9)
    expect(linkIn(beside, 'hook', 'gust').demand?.value).toBeCloseTo(weight + 3 * STANDARD_GRAVITY * factor, 9)
  })

  test('an outdoor hanger of synthetic cord, test-hung, holds on an open balcony in ordinary wind', () => {
    const check = checkOf({ ...OUTDOORS, 'place.wind': 'open', 'place.life': '1 year', 'make.strands': '6', 'gathering.wraps': '14', 'ring.rated': '600 N', 'testHang.mass': '22 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' })
    expect(['holds', 'just holds']).toContain(check.verdict)
    expect(linkIn(check, 'leg', 'gust').verdict).toBe('holds')
  })
})

describe('rain', () => {
  test('hangs on leaves outdoors, never dry, and comes on top of a weighing', () => {
    const rainOf = (patch: Patch, state: 'dry' | 'watered' | 'flooded') => checkOf(patch).solved.potted[state].components.find((c) => c.part === 'rain')?.mass ?? null
    expect(rainOf(ORDINARY, 'flooded')).toBeNull()
    expect(rainOf(OUTDOORS, 'dry')).toBeNull()
    const weighed: Patch = { ...OUTDOORS, 'weighed.mass': '5.2 kg', 'weighed.state': 'watered', 'plant.mass': '0.6 kg' }
    const { low, likely, high } = rainOf(weighed, 'watered') ?? { low: NaN, likely: NaN, high: NaN }
    expect(low).toBe(0)
    expect(likely).toBeCloseTo(0.24, 12)
    expect(high).toBeCloseTo(0.6, 12)
    expect(checkOf(weighed).solved.potted.watered.mass.high).toBeCloseTo(5.8, 12)
  })
})

describe('a tug', () => {
  const OVER_PEOPLE: Patch = { ...ORDINARY, 'place.beneath': 'people' }

  test('is a child’s over people unless nobody can reach it, and nobody’s elsewhere unless said', () => {
    expect(whole(ORDINARY)).not.toContain('tug')
    expect(whole({ ...ORDINARY, 'place.beneath': 'wayThrough' })).not.toContain('tug')
    expect(whole({ ...OVER_PEOPLE, 'place.reach': 'nobody' })).not.toContain('tug')
    for (const beneath of ['people', 'public']) expect(found({ ...ORDINARY, 'place.beneath': beneath }, 'TUG_RECKONED')).toMatchObject({ who: 'child', assumed: true })
    expect(found({ ...ORDINARY, 'place.reach': 'cat' }, 'TUG_RECKONED')).toMatchObject({ who: 'cat', assumed: false })
  })

  test('pulls its force more than the weight, half of it aside at 30 degrees', () => {
    for (const who of ['cat', 'child'] as const) {
      const { tug, watered, flooded } = loadsOf({ ...ORDINARY, 'place.reach': who })
      const atRest = tug.case.state === 'watered' ? watered.weight : flooded.weight
      expect(tug.weight - atRest).toBeCloseTo(TUG_PULL[who].value, 9)
      expect(tug.side).toBeCloseTo(TUG_PULL[who].value / 2, 9)
      expect(tug.sideDown - atRest).toBeCloseTo((TUG_PULL[who].value * Math.sqrt(3)) / 2, 9)
    }
  })

  test('of a child is an accident and uses the reserve up, of a cat it is not', () => {
    expect(loadsOf({ ...ORDINARY, 'place.reach': 'child' }).tug.case.accidental).toBe(true)
    expect(loadsOf({ ...ORDINARY, 'place.reach': 'cat' }).tug.case.accidental).toBe(false)
  })

  test('decides over a cot where the hook is thin, not over a sideboard', () => {
    const thin: Patch = { ...ORDINARY, 'hook.kind': 'latched', 'hook.wire': '4 mm', 'hook.projection': '35 mm', 'weighed.mass': '2 kg', 'weighed.state': 'flooded' }
    expect(worstOfLink(checkOf(thin), 'hookShank').verdict).toMatch(/holds/)
    const cot = checkOf({ ...thin, 'place.beneath': 'people', 'place.reach': 'child' })
    expect(worstOfLink(cot, 'hookShank')).toMatchObject({ verdict: 'fails', case: 'tug' })
  })

  test('of a cat in the pot pulls at the knot’s grip, of a child at the fringe below it does not; a gust does', () => {
    const grip = (patch: Patch) => checkOf(patch).links.filter((l) => l.link === 'gatheringGrip').map((l) => l.case)
    expect(grip({ ...ORDINARY, 'place.reach': 'cat' })).toContain('tug')
    expect(grip({ ...ORDINARY, 'place.reach': 'child' })).not.toContain('tug')
    expect(grip(OUTDOORS)).toContain('gust')
    expect(grip(ORDINARY)).not.toContain('gust')
  })

  test('adds its whole force to what a test mass stood for', () => {
    const patch: Patch = { ...ORDINARY, 'place.reach': 'cat', 'testHang.mass': '40 kg', 'testHang.time': '24 h', 'testHang.slip': '1 mm' }
    const { tug, watered } = loadsOf(patch)
    const held = linkIn(checkOf(patch), 'gatheringGrip', 'tug')
    expect(held.part).toBe('testHang')
    expect(held.demand?.value).toBeCloseTo((tug.case.state === 'watered' ? watered.potted : tug.potted) * STANDARD_GRAVITY + TUG_PULL.cat.value, 9)
  })

  test('that is only assumed makes nothing fail: it says whom to ask about', () => {
    const thin: Patch = { ...OVER_PEOPLE, 'hook.kind': 'latched', 'hook.wire': '4 mm', 'hook.projection': '35 mm', 'weighed.mass': '2 kg', 'weighed.state': 'flooded' }
    const shank = worstOfLink(checkOf(thin), 'hookShank')
    expect(shank).toMatchObject({ verdict: 'not enough known', case: 'tug' })
    expect(shank.findings).toContainEqual({ code: 'ASSUMED_PART_FAILS', path: 'place.reach', assumed: 'child' })
    expect(worstOfLink(checkOf({ ...thin, 'place.reach': 'child' }), 'hookShank').verdict).toBe('fails')
    expect(worstOfLink(checkOf({ ...thin, 'place.reach': 'nobody' }), 'hookShank').verdict).toMatch(/holds/)
  })
})
