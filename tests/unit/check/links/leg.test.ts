import { describe, expect, test } from 'vitest'
import { checkHanger, resolveDocument, withInspections, type CheckResult, type Patch } from '#core'
import { checkOf, documentOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const leg = (patch: Patch) => worstOfLink(checkOf({ ...ORDINARY, ...patch }), 'leg')
const codes = (patch: Patch) => codesOf(checkOf({ ...ORDINARY, ...patch }), 'leg')

describe('what is known of the cord', () => {
  test('weighed loose cotton over furniture, by hand', () => {
    // 4.8 g/m at 4 cN/tex = 192 N; 1.4 effective strands; indoors 0.8; watered 0.9 years of 3; reserve 2.
    const watered = linkIn(checkOf(ORDINARY), 'leg', 'watered')
    expect(watered.capacity?.value).toBeCloseTo(192, 9)
    expect(watered.allowable?.value).toBeCloseTo((192 * 1.4 * 0.8 * (1 - 0.088 * Math.log10((0.9 * 365.25 * 86400) / 10))) / 2, 9)
    expect(watered.grade).toBe('weighed')
  })

  test('nothing: not enough is known, and it is said what to weigh', () => {
    const check = checkOf(without(ORDINARY, 'cord.diameter', 'cord.linearDensity'))
    const worst = worstOfLink(check, 'leg')
    expect(worst.verdict).toBe('not enough known')
    expect(worst.utilisation).toBeNull()
    expect(codesOf(check, 'leg')).toContain('CORD_UNKNOWN')
    for (const link of ['gatheringTurn', 'wrapHoop'] as const) expect(worstOfLink(check, link).verdict).toBe('not enough known')
  })

  test('only the diameter: it may hold at 40 %, and above that not enough is known', () => {
    const light = checkOf({ ...without(ORDINARY, 'cord.linearDensity'), 'cord.diameter': '8 mm', 'weighed.mass': '2 kg' })
    expect(linkIn(light, 'leg', 'watered')).toMatchObject({ verdict: 'holds', grade: 'diameter' })
    const heavier = checkOf({ ...without(ORDINARY, 'cord.linearDensity'), 'cord.diameter': '4 mm' })
    const watered = linkIn(heavier, 'leg', 'watered')
    expect(watered.utilisation).toBeGreaterThan(0.4)
    expect(watered.utilisation).toBeLessThan(1)
    expect(watered.verdict).toBe('not enough known')
    expect(codesOf(heavier, 'leg')).toContain('CORD_BY_DIAMETER')
  })

  test('grams per metre without a fibre count as the diameter only', () => {
    const check = checkOf(without(ORDINARY, 'cord.fibre'))
    expect(worstOfLink(check, 'leg').grade).toBe('diameter')
    expect(check.links.flatMap((l) => l.findings)).toContainEqual({ code: 'CORD_BY_DIAMETER', linearDensityKnown: true })
  })

  test('a rating comes before weighing, and weighing before measuring', () => {
    expect(leg({ 'cord.rated': '700 N' }).grade).toBe('rated')
    expect(leg({}).grade).toBe('weighed')
    expect(linkIn(checkOf({ ...ORDINARY, 'cord.rated': '150 N' }), 'leg', 'dry').capacity?.value).toBe(150)
  })

  test('an overall factor below 5 never holds', () => {
    // Nothing beneath, for a month, plain over a thick bar: little is taken off, so the numbers alone would let it hold.
    const check = checkOf({ ...ORDINARY, 'place.beneath': 'nothing', 'place.life': '30 days', 'make.strands': '2', 'make.build': 'plain', 'make.top': 'bunched', 'hook.wire': '30 mm', 'cord.rated': '74 N' })
    const watered = linkIn(check, 'leg', 'watered')
    expect(watered.utilisation).toBeLessThan(0.8)
    expect(watered.overallFactor).toBeLessThan(5)
    expect(watered.overallFactor).toBeGreaterThan(4.5)
    expect(watered.verdict).toBe('just holds')
    expect(codesOf(check, 'leg')).toContain('LOW_OVERALL_FACTOR')
  })
})

describe('the overall factor', () => {
  const factorOf = (patch: Patch): number => linkIn(checkOf({ ...ORDINARY, ...patch }), 'leg', 'watered').overallFactor ?? NaN

  test('is that of the fewest strands that carry anywhere: no sharp edge raises it, and a third filler by half at most', () => {
    // 3 mm over a sharp edge: four strands x 1/3 there, fewer than the two fillers x 0.7.
    const sharp = linkIn(checkOf({ ...ORDINARY, 'pot.edge': 'sharp' }), 'leg', 'watered')
    expect(sharp.part).toBe('potEdge')
    expect(sharp.overallFactor).toBeCloseTo(factorOf({}), 9)
    // Three fillers x 0.7 bear more than four strands x 0.5 in the lark's heads, and are three strands all the same.
    expect(linkIn(checkOf({ ...ORDINARY, 'make.fillers': '3' }), 'leg', 'watered').part).toBe('larksHead')
    expect(factorOf({ 'make.fillers': '3' }) / factorOf({})).toBeCloseTo(1.5, 1)
  })
})

describe('the angle of the legs', () => {
  // By hand: rim radius 105, side and base 258 mm along; a free part of r / sin(angle).
  const lengthFor = (degrees: number): Patch => {
    const along = 0.07 + Math.hypot(0.035, 0.185)
    return { 'cradle.first': '115 mm', 'make.legLength': `${along + 0.105 / Math.sin((degrees * Math.PI) / 180) - 0.115} m` }
  }

  test.each([[59, []], [61, ['LEG_ANGLE_WIDE']], [74, ['LEG_ANGLE_WIDE']], [76, ['LEG_ANGLE_REFUSED']]])('of %d degrees from the vertical: %j', (degrees, said) => {
    const found = codes(lengthFor(degrees)).filter((code) => code.startsWith('LEG_ANGLE'))
    expect(found).toEqual(said)
    if (said.includes('LEG_ANGLE_REFUSED')) expect(leg(lengthFor(degrees)).verdict).toBe('fails')
  })

  test.each([66, 79])('of %d degrees say by how much longer legs would lie at 60', (degrees) => {
    const { 'make.legLength': length } = lengthFor(degrees)
    const found = checkOf({ ...ORDINARY, ...lengthFor(degrees) }).links.flatMap((l) => l.findings).find((f) => f.code === 'LEG_ANGLE_WIDE' || f.code === 'LEG_ANGLE_REFUSED')
    const longer = found !== undefined && 'longer' in found ? found.longer : NaN
    expect(found !== undefined && 'degrees' in found ? found.degrees : NaN).toBeCloseTo(degrees, 9)
    expect(Number.parseFloat(length ?? '') + longer).toBeCloseTo(Number.parseFloat(lengthFor(60)['make.legLength'] ?? ''), 9)
  })

  test('above 60 degrees even strong cord only just holds', () => {
    const strong = { 'cord.rated': '9 kN' }
    expect(linkIn(checkOf({ ...ORDINARY, ...strong, ...lengthFor(59) }), 'leg', 'watered').verdict).toBe('holds')
    expect(linkIn(checkOf({ ...ORDINARY, ...strong, ...lengthFor(61) }), 'leg', 'watered').verdict).toBe('just holds')
  })

  test('legs that cannot reach round the pot fail and say how much is missing', () => {
    const check = checkOf({ ...ORDINARY, 'make.legLength': '19 cm' })
    expect(worstOfLink(check, 'leg').verdict).toBe('fails')
    // Strand 190 + 115 mm; level with the rim it needs 70 + 188.3 + 105 mm.
    const short = check.links.flatMap((l) => l.findings).find((f) => f.code === 'LEG_TOO_SHORT')
    expect(short).toMatchObject({ strand: expect.closeTo(0.305, 12) as number, least: expect.closeTo(0.07 + Math.hypot(0.035, 0.185) + 0.105, 12) as number })
  })

  test('a leg length told alone is at fault as well', () => {
    expect(worstOfLink(checkOf({ ...without(ORDINARY, 'make.totalLength', 'make.fringe'), 'make.legLength': '19 cm' }), 'leg').verdict).toBe('fails')
  })

  test('a length that was only assumed is not at fault', () => {
    const check = checkOf({ ...without(ORDINARY, 'make.totalLength', 'make.fringe'), 'pot.rim': '44 cm', 'pot.height': '40 cm', 'pot.base': '31 cm' })
    expect(codesOf(check, 'leg')).toContain('LEG_TOO_SHORT')
    expect(worstOfLink(check, 'leg').verdict).toBe('not enough known')
  })
})

describe('weather', () => {
  test('natural cord outdoors over people fails, however strong', () => {
    const outdoors: Patch = { 'place.exposure': 'outdoors', 'place.life': '1 year', 'cord.rated': '20 kN' }
    expect(leg({ ...outdoors, 'place.beneath': 'people' }).verdict).toBe('fails')
    expect(codes({ ...outdoors, 'place.beneath': 'people' })).toContain('NATURAL_CORD_OUTDOORS_OVER_PEOPLE')
    expect(leg({ ...outdoors, 'place.beneath': 'furniture' }).verdict).toBe('holds')
  })

  test('natural cord lasts one season outdoors', () => {
    const two: Patch = { 'place.exposure': 'outdoors', 'place.life': '2 years', 'cord.rated': '20 kN' }
    expect(leg(two).verdict).toBe('fails')
    expect(codes(two)).toContain('NATURAL_CORD_OUTDOORS')
  })

  test('polyester and nylon lose more each year in the sun, nylon more of it', () => {
    const ageingOf = (patch: Patch): number | undefined => leg({ 'cord.fibre': 'polyester', 'cord.make': 'braided', ...patch }).factors.find((f) => f.code === 'ageing')?.value
    expect(ageingOf({ 'place.exposure': 'outdoors', 'place.life': '1 year' })).toBeCloseTo(0.7, 12)
    expect(ageingOf({ 'place.exposure': 'outdoors', 'place.life': '3 years' })).toBeCloseTo(0.7 ** 3, 12)
    // Most of the loss comes in the first twelve months: a short life is not spared it.
    expect(ageingOf({ 'place.exposure': 'outdoors', 'place.life': '4 months' })).toBeCloseTo(0.7, 12)
    expect(ageingOf({ 'place.life': '3 years' })).toBe(0.8)
    // 60 % lost in 36 months, at worst all of it in the first twelve.
    expect(ageingOf({ 'cord.fibre': 'nylon', 'place.exposure': 'outdoors', 'place.life': '1 year' })).toBeCloseTo(0.4, 12)
    expect(ageingOf({ 'cord.fibre': 'nylon', 'place.exposure': 'outdoors', 'place.life': '4 years' })).toBeCloseTo(0.4 * 0.4, 12)
  })

  test.each(['polypropylene', 'viscose', 'unknown'])('what %s loses outdoors is not known, over people or not', (fibre) => {
    for (const beneath of ['people', 'nothing']) {
      const patch: Patch = { 'cord.fibre': fibre, 'cord.rated': '20 kN', 'place.exposure': 'outdoors', 'place.life': '1 year', 'place.beneath': beneath }
      expect(leg(patch).verdict).toBe('not enough known')
      expect(codes(patch)).toEqual(expect.arrayContaining(['OUTDOOR_LOSS_UNKNOWN']))
      expect(codes(patch).filter((code) => code.startsWith('NATURAL'))).toEqual([])
    }
  })
})

describe('one strand gone', () => {
  const lone: Patch = { 'make.legs': '3', 'make.strands': '1', 'make.build': 'plain', 'cord.rated': '9 kN' }

  test('over people a leg of one strand fails, however strong', () => {
    expect(leg({ ...lone, 'place.beneath': 'people' })).toMatchObject({ verdict: 'fails', case: 'strandParted' })
    expect(codes({ ...lone, 'place.beneath': 'people' })).toContain('STRAND_PARTS_AND_FALLS')
  })

  test('so does a knotted one with one filler cord', () => {
    expect(codes({ ...lone, 'make.strands': '3', 'make.build': 'sinnet', 'place.beneath': 'public' })).toContain('STRAND_PARTS_AND_FALLS')
  })

  test('over furniture it may', () => {
    expect(codes({ ...lone, 'place.beneath': 'furniture' })).not.toContain('STRAND_PARTS_AND_FALLS')
    expect(leg({ ...lone, 'place.beneath': 'furniture' }).verdict).not.toBe('fails')
  })

  test('with more strands, or more legs to catch the pot, people may sit beneath', () => {
    expect(codes({ ...lone, 'make.strands': '3', 'place.beneath': 'people' })).not.toContain('STRAND_PARTS_AND_FALLS')
    expect(codes({ ...lone, 'make.legs': '8', 'place.beneath': 'people' })).not.toContain('STRAND_PARTS_AND_FALLS')
  })

  test('over people it must be known what happens', () => {
    const unknown = { ...without(ORDINARY, 'cord.diameter', 'cord.linearDensity'), 'make.strands': '1', 'make.build': 'plain', 'make.legs': '8', 'place.beneath': 'people' }
    expect(codesOf(checkOf(unknown), 'leg')).toContain('STRAND_PARTS_UNKNOWN')
    expect(linkIn(checkOf(unknown), 'leg', 'strandParted').verdict).toBe('not enough known')
  })

  test('of an unknown cord: said over people by what is not known of the cord, and over furniture not asked', () => {
    const parted = (beneath: string) => checkOf({ ...without(ORDINARY, 'cord.diameter', 'cord.linearDensity'), 'place.beneath': beneath }).links.filter((l) => l.link === 'leg' && l.case === 'strandParted')
    expect(parted('people').map((l) => l.findings.map((f) => f.code))).toEqual([['CORD_UNKNOWN']])
    expect(parted('furniture')).toEqual([])
  })

  test('where a look found one gone before, the next may be the last', () => {
    const unknown = { ...without(ORDINARY, 'cord.diameter', 'cord.linearDensity'), 'make.strands': '2', 'make.build': 'plain', 'make.legs': '8', 'place.beneath': 'people' }
    const found = (...seen: readonly { readonly what: 'strandGone'; readonly leg: string }[]): readonly string[] => {
      const read = resolveDocument(withInspections(documentOf(unknown), seen.map((typed) => ({ typed, extra: {} }))))
      if (!read.ok) throw new Error(JSON.stringify(read.problems))
      return codesOf(checkHanger(read.hanger), 'leg')
    }
    expect(found()).not.toContain('STRAND_PARTS_UNKNOWN')
    expect(found({ what: 'strandGone', leg: '2' })).toContain('STRAND_PARTS_UNKNOWN')
  })

  test('what is left is judged by an accident’s reserve, for a day', () => {
    const parted = linkIn(checkOf(ORDINARY), 'leg', 'strandParted')
    const factorOf = (code: string): number | undefined => parted.factors.find((f) => f.code === code)?.value
    expect(factorOf('reserve')).toBe(1)
    expect(factorOf('effectiveStrands')).toBeCloseTo(0.7, 12)
    expect(factorOf('duration')).toBeCloseTo(1 - 0.088 * Math.log10(8640), 12)
  })
})

describe('the sum of the demand', () => {
  const termsOf = (check: CheckResult) => linkIn(check, 'leg', 'watered').terms
  const term = (check: CheckResult, symbol: string) => termsOf(check).find((t) => t.symbol === symbol)

  test('is the worst solved leg or the standards’ floor, on three legs at most', () => {
    for (const legs of ['3', '6']) {
      const check = checkOf({ ...ORDINARY, 'make.legs': legs })
      const { geometry: { path }, loads, slings } = check.solved
      expect(term(check, 'E')?.formula).toBe('max(T_s, T_min)')
      expect(term(check, 'T_min')?.value).toBeCloseTo(loads.watered.weight / (3 * Math.cos(path.ok ? path.angle : NaN)), 9)
      expect(term(check, 'T_s')?.value).toBe(slings?.watered.solvedTension)
    }
  })

  test.each([['16 cm', '36 cm'], ['30 cm', '60 cm']])('is that of the leg that bears most, with its own angle: a trough %s wide and %s long', (width, length) => {
    const check = checkOf({ ...ORDINARY, 'pot.shape': 'trough', 'pot.rim': width, 'pot.base': width, 'pot.length': length, 'pot.strandsAt': 'sides', 'make.totalLength': '160 cm' })
    const { slings, geometry: { legs } } = check.solved
    const each = slings?.watered.each ?? []
    const worst = each.indexOf(Math.max(...each))
    expect(term(check, 'beta')?.value).toBeCloseTo(legs[worst]?.path.angle ?? NaN, 9)
    expect(term(check, 'T_s')?.value).toBe(slings?.watered.solvedEach?.[worst])
    expect(linkIn(check, 'leg', 'watered').demand?.value).toBe(each[worst])
  })

  test.each<[string, Patch]>([['too short', { 'make.totalLength': '40 cm' }], ['from which the pot tips', { 'plant.height': '3 m', 'plant.mass': '40 kg' }]])('of legs %s has no tension, nor an overall factor', (_, patch) => {
    const check = checkOf({ ...ORDINARY, ...patch })
    expect(linkIn(check, 'leg', 'watered')).toMatchObject({ demand: null, overallFactor: null, verdict: 'fails' })
    expect(termsOf(check).filter((t) => ['E', 'T_s', 'T_min', 'beta'].includes(t.symbol))).toEqual([])
  })

  test('takes what hangs as the maker’s own where it was weighed so and hangs alone', () => {
    const potted = (patch: Patch) => term(checkOf(patch), 'm_pot')
    const weighed = { ...ORDINARY, 'weighed.state': 'watered' } as const
    const alone = potted(weighed)
    expect(alone?.basis).toBe('your own')
    expect(potted(without(weighed, 'weighed.mass', 'weighed.state'))).toMatchObject({ basis: 'computed', source: alone?.source })
    const above = potted({ ...weighed, 'make.arrangement': 'tiers' })
    expect(above?.basis).toBe('computed')
    expect(above?.source).not.toBe(alone?.source)
  })
})

describe('the lines of a leg', () => {
  test('call the potted plants the user’s own only where all that hangs there was weighed as one', () => {
    const massOf = (patch: Patch) => linkIn(checkOf({ ...ORDINARY, 'weighed.mass': '3 kg', 'weighed.state': 'watered', ...patch }), 'leg', 'watered').terms.find((t) => t.symbol === 'm_pot')
    expect(massOf({})?.basis).toBe('your own')
    const two = massOf({ 'make.arrangement': 'tiers', 'tiers.count': '2', 'tiers.how': 'runOn', 'second.mass': '1 kg', 'second.state': 'watered', 'second.strand': '60 cm' })
    expect(two?.basis).toBe('computed')
    expect(two?.source).toContain('below')
  })

  test('show the pull of the leg that is worst with its floor, along a stick not the hardest solved', () => {
    const check = checkOf({ ...ORDINARY, 'make.top': 'stick', 'stick.bunch': '200 mm', 'stick.length': '400 mm', 'stick.span': '360 mm', 'make.legs': '6', 'make.tolerance': '0 mm' })
    const { slings } = check.solved
    const each = slings?.watered.each ?? []
    const worst = each.indexOf(Math.max(...each))
    const { terms } = linkIn(check, 'leg', 'watered')
    expect(slings?.watered.solvedTension).toBeGreaterThan(slings?.watered.solvedEach?.[worst] ?? NaN)
    expect(terms.find((t) => t.symbol === 'T_s')?.value).toBe(slings?.watered.solvedEach?.[worst])
    expect(terms.find((t) => t.symbol === 'E')?.value).toBe(each[worst])
  })
})
