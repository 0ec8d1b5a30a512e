import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { without } from '../../hanger/without'
import { checkOf } from '../../hanger/hangerOf'
import { codesOf, linkIn, worstOfLink } from '../linkOf'
import { ON_STICK, onStick } from './stickOf'

const tension = (patch: Patch): number => {
  const check = onStick(patch)
  return (linkIn(check, 'topCord', 'watered').demand?.value ?? NaN) / check.solved.loads.watered.weight
}

describe('the pull in the top cord', () => {
  // 30 cm between the ends, 50 cm of cord: the hook stands 20 cm above, T = W Lc / (4 h) = 5/8 W.
  test('is 5/8 of the weight in a 3-4-5 V, the legs all in the middle', () => {
    for (const legs of ['3', '4']) expect(tension({ 'stick.bunch': '0 mm', 'make.legs': legs })).toBeCloseTo(0.625, 9)
  })

  test('is more in the half towards a leg that bears more: by lever', () => {
    // Four legs over 90 mm, the outermost a third: the load is 45 x (1/3 - 2/9) = 5 mm off the middle.
    expect(tension({})).toBeCloseTo(0.625 * (1 + 5 / 150), 9)
  })

  test('grows as the cord gets shorter, and is told to be shallow', () => {
    expect(tension({ 'stick.topCord': '32 cm' })).toBeGreaterThan(tension({ 'stick.topCord': '40 cm' }))
    expect(codesOf(onStick({ 'stick.topCord': '40 cm' }), 'topCord')).not.toContain('TOP_CORD_SHALLOW')
    expect(worstOfLink(onStick({ 'stick.topCord': '34 cm', 'stick.topStrands': '24' }), 'topCord').verdict).toBe('just holds')
    expect(worstOfLink(onStick({ 'stick.topCord': '305 mm', 'stick.topStrands': '24' }), 'topCord').verdict).toBe('fails')
  })
})

test('a cord no longer than the stick between its ends does not reach: cord and stick say so', () => {
  const short = onStick({ 'stick.topCord': '29 cm' })
  for (const link of ['topCord', 'stick'] as const) {
    expect(worstOfLink(short, link)).toMatchObject({ verdict: 'fails', utilisation: null })
    expect(codesOf(short, link)).toEqual(['TOP_CORD_TOO_SHORT'])
  }
  expect(short.solved.geometry.top).toBeNull()
  const guessed = checkOf({ ...without(ON_STICK, 'stick.span'), 'stick.length': '70 cm' })
  expect(worstOfLink(guessed, 'topCord').verdict).toBe('not enough known')
})

test('it is weakest at its knots on a thick hook, over a hook thinner than itself at the bend', () => {
  expect(linkIn(onStick({}), 'topCord', 'watered')).toMatchObject({ part: 'tiedToStick' })
  const thin = linkIn(onStick({ 'hook.wire': '2 mm' }), 'topCord', 'watered')
  expect(thin.part).toBe('bend')
  // Bend over 2 mm wire of a 3 mm cord: in proportion below a ratio of 1, 0.5 x 2/3.
  expect(thin.factors.find((f) => f.code === 'effectiveStrands')?.value).toBeCloseTo((4 * 0.5 * 2) / 3, 9)
})

test('it bends over what hangs between, where that is thinner than the hook', () => {
  const between = { 'connector.kind': 'carabiner', 'connector.rated': '90 kgf', 'connector.wire': '2 mm' } as const
  expect(linkIn(onStick(between), 'topCord', 'watered').part).toBe('bend')
})

test('friction of the hook holds it level: e = (s / 2) tanh(mu q), by hand', () => {
  const said = linkIn(onStick({}), 'topCord', 'watered').findings.flatMap((f) => (f.code === 'TOP_CORD_OFFSET' ? [f.most] : []))
  expect(said).toHaveLength(1)
  expect(said[0]).toBeCloseTo(0.15 * Math.tanh(0.14 * Math.atan2(4, 3)), 9)
})

describe('legs that are knotted unequally', () => {
  const told = (patch: Patch) => {
    const link = linkIn(onStick({ 'make.tolerance': '15 mm', 'stick.bunch': '140 mm', 'stick.topStrands': '12', ...patch }), 'topCord', 'watered')
    return { codes: link.findings.map((f) => f.code), verdict: link.verdict, of: <C extends string>(code: C) => link.findings.find((f) => f.code === code) }
  }

  test('bring the load so far off the middle that a cord laid over the hook runs; a hitch holds it, and it leans', () => {
    const runs = told({}).of('TOP_CORD_RUNS')
    expect(runs?.code === 'TOP_CORD_RUNS' && runs.offset > runs.most).toBe(true)
    expect(told({}).verdict).toBe('just holds')
    const tied = told({ 'stick.over': 'tied' })
    expect(tied.codes).not.toContain('TOP_CORD_RUNS')
    expect(tied.codes).toContain('TOP_CORD_LEANS')
    expect(tied.verdict).toBe('holds')
  })

  test('lean by atan(e / h), one half pulled more than the other by no more than it would without leaning', () => {
    const tied = told({ 'stick.over': 'tied' }).of('TOP_CORD_LEANS')
    const runs = told({}).of('TOP_CORD_RUNS')
    if (tied?.code !== 'TOP_CORD_LEANS' || runs?.code !== 'TOP_CORD_RUNS') throw new Error('not told')
    expect(tied.degrees).toBeCloseTo((Math.atan(runs.offset / 0.2) * 180) / Math.PI, 9)
    // Moments about the hook: halves as 15 cm + e to 15 cm - e.
    expect(tied.ratio).toBeCloseTo((0.15 + runs.offset) / (0.15 - runs.offset), 9)
  })

  test('wood is rougher than steel: round a beam it runs later', () => {
    const round: Patch = { 'place.support': 'overBeam', 'place.substrate': 'timber', 'stick.bunch': '0 mm' }
    const most = (patch: Patch): number => {
      const said = told({ ...round, ...patch }).of('TOP_CORD_OFFSET')
      return said?.code === 'TOP_CORD_OFFSET' ? said.most : NaN
    }
    expect(most({})).toBeCloseTo(0.15 * Math.tanh(0.28 * Math.atan2(4, 3)), 9)
    expect(most({ 'place.substrate': 'steelBeam' })).toBeCloseTo(0.15 * Math.tanh(0.14 * Math.atan2(4, 3)), 9)
  })
})

describe('over people', () => {
  const over = (strands: string) => onStick({ 'place.beneath': 'people', 'hook.kind': 'closed', 'stick.topStrands': strands, 'weighed.mass': '2 kg' })

  test('one strand must not let it fall', () => {
    expect(linkIn(over('1'), 'topCord', 'strandParted').verdict).toBe('fails')
    expect(linkIn(over('6'), 'topCord', 'strandParted').verdict).toBe('holds')
    expect(codesOf(over('6'), 'topCord')).toContain('TOP_CORD_PARTS')
  })

  test('is not asked where nobody is beneath', () => {
    expect(onStick({}).links.some((l) => l.link === 'topCord' && l.case === 'strandParted')).toBe(false)
  })
})

test('two hooks need no top cord', () => {
  expect(onStick({ 'stick.held': 'twoHooks' }).links.map((l) => l.link)).not.toContain('topCord')
})

test('a length or number of strands that was only assumed is not said to hold', () => {
  expect(worstOfLink(checkOf({ ...without(ON_STICK, 'stick.topStrands'), 'weighed.mass': '0.3 kg' }), 'topCord').verdict).toBe('just holds')
})
