import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { REFUSED_ANGLE, WIDE_ANGLE } from '../../../../src/catalogue/legs'
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

describe('the slope of the V', () => {
  /** A cord whose halves stand so many degrees from the vertical: half the span over half the cord is their sine. */
  const at = (degrees: number) => linkIn(onStick({ 'stick.topCord': `${300 / Math.sin((degrees * Math.PI) / 180)} mm`, 'stick.topStrands': '24' }), 'topCord', 'dry')
  const inDegrees = (angle: number) => (angle * 180) / Math.PI

  test('is told from the angle on at which legs count as wide, refused from where they are refused', () => {
    const [wide, refused] = [inDegrees(WIDE_ANGLE.value), inDegrees(REFUSED_ANGLE.value)]
    const told = (degrees: number) => at(degrees).findings.flatMap((f) => (f.code === 'TOP_CORD_SHALLOW' ? [f.refused] : []))
    expect([wide - 0.1, wide + 0.1, refused - 0.1, refused + 0.1].map(told)).toEqual([[], [false], [false], [true]])
  })

  test('is told in degrees from the level', () => {
    const degrees = (inDegrees(WIDE_ANGLE.value) + inDegrees(REFUSED_ANGLE.value)) / 2
    const told = at(degrees).findings.flatMap((f) => (f.code === 'TOP_CORD_SHALLOW' ? [f.degrees] : []))
    expect(told).toHaveLength(1)
    expect(told[0]).toBeCloseTo(90 - degrees, 2)
  })
})

test('the overall factor is what its dry strands break at over the pull of the watered plant', () => {
  const check = onStick({ 'stick.topStrands': '6' })
  const [dry, watered] = [linkIn(check, 'topCord', 'dry'), linkIn(check, 'topCord', 'watered')]
  expect(watered.overallFactor).toBeCloseTo((6 * (dry.capacity?.value ?? NaN)) / (watered.demand?.value ?? NaN), 9)
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
    for (const strands of [1, 6]) {
      const parted = linkIn(over(String(strands)), 'topCord', 'strandParted')
      expect(parted.findings).toContainEqual({ code: 'TOP_CORD_PARTS', strands })
      expect(parted.overallFactor).toBeNull()
    }
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

describe('with one of a row taken down', () => {
  const ROW = {
    ...ON_STICK, 'make.arrangement': 'row', 'make.top': 'ring', 'row.count': '3', 'row.spacing': '35 cm', 'row.others': '3 kg',
    'stick.length': '120 cm', 'stick.span': '80 cm', 'stick.topCord': '150 cm', 'stick.topStrands': '24', 'stick.over': 'loose',
  } as const
  const row = (patch: Patch) => linkIn(checkOf({ ...ROW, ...patch }), 'topCord', 'neighbourDown')
  const height = Math.sqrt(0.75 ** 2 - 0.4 ** 2)
  /** The two left hang in the middle and at an end: the heavier one there takes the load furthest off, by lever. */
  const lever = (): number => {
    const own = checkOf(ROW).solved.loads.neighbourDown.weight
    const other = 3 * 9.80665
    return Math.max(own, other) / (own + other)
  }
  const leans = (patch: Patch) => row(patch).findings.flatMap((f) => (f.code === 'ROW_LEANS' ? [f] : []))

  test('the stick leans until what is left hangs under the hook', () => {
    expect(leans({})).toHaveLength(1)
    expect(leans({})[0]?.degrees).toBeCloseTo((Math.atan2(0.35 * lever(), height) * 180) / Math.PI, 6)
  })

  test('a cord laid over the hook runs from where friction holds no longer, a hitched one only leans', () => {
    const most = 0.4 * Math.tanh(0.14 * Math.atan2(height, 0.4))
    const at = (share: number) => ({ 'row.spacing': `${((share * most) / lever()) * 1000} mm` })
    expect(leans(at(0.99)).map((f) => f.runs)).toEqual([false])
    expect(leans(at(1.01)).map((f) => f.runs)).toEqual([true])
    expect(row(at(0.99)).verdict).toBe('just holds')
    expect(row(at(1.01)).verdict).toBe('fails')
    expect(leans({ 'stick.over': 'tied' }).map((f) => f.runs)).toEqual([false])
    expect(row({ 'stick.over': 'tied' }).verdict).toBe('just holds')
  })

  test.each(['row.count', 'row.spacing', 'stick.span', 'stick.topCord'] as const)('is not said to run where %s was only assumed', (path) => {
    const assumed = linkIn(checkOf(without(ROW, path)), 'topCord', 'neighbourDown')
    expect(assumed.findings.flatMap((f) => (f.code === 'ROW_LEANS' ? [f.runs] : []))).toEqual([true])
    expect(assumed.verdict).toBe('not enough known')
  })
})
