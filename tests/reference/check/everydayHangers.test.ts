import { describe, expect, test } from 'vitest'
import type { LinkCode, Patch, Verdict } from '#core'
import { checkOf } from '../../unit/hanger/hangerOf'
import { codesOf, worstOfLink } from '../../unit/check/linkOf'

// Common practice, no source: five invented hangers, each with the verdict that a practised maker
// would give and their reason in a line. The place is a good one throughout, so that the hanger is judged.

const GOOD_PLACE: Patch = {
  'hook.kind': 'closed', 'hook.rated': '40 kgf', 'hook.wire': '6 mm', 'hook.projection': '30 mm', 'ring.metal': 'steel', 'ring.wire': '5 mm', 'ring.inside': '40 mm',
  'place.substrate': 'timber', 'fixing.diameter': '6 mm', 'fixing.penetration': '45 mm', 'fixing.proof': '20 kg', 'cradle.kind': 'net',
}
const CORD_LINKS = ['leg', 'gatheringTurn', 'wrapHoop'] as const satisfies readonly LinkCode[]
const verdictsOf = (patch: Patch, links: readonly LinkCode[]): readonly Verdict[] => links.map((link) => worstOfLink(checkOf(patch), link).verdict)
const used = (patch: Patch, link: LinkCode): number => worstOfLink(checkOf(patch), link).utilisation ?? NaN

describe('a small succulent in plastic, 4 x 2 plain strands of weighed 3 mm string, over a desk', () => {
  const succulent: Patch = {
    ...GOOD_PLACE, 'pot.rim': '11 cm', 'pot.height': '10 cm', 'pot.base': '8 cm', 'pot.material': 'plastic', 'pot.drainage': 'hole', 'mix.kind': 'cactus', 'plant.height': '8 cm',
    'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.diameter': '3 mm', 'cord.linearDensity': '4.6 g/m',
    'make.legs': '4', 'make.strands': '2', 'make.build': 'plain', 'make.totalLength': '75 cm', 'make.fringe': '15 cm', 'cradle.first': '7 cm', 'place.beneath': 'furniture',
  }

  test('holds with ease: a kilogram on eight strands', () => {
    expect(verdictsOf(succulent, [...CORD_LINKS, 'seat', 'ring'])).toEqual(['holds', 'holds', 'holds', 'holds', 'holds'])
    for (const link of CORD_LINKS) expect(used(succulent, link)).toBeLessThan(0.5)
    expect(checkOf(succulent).verdict).toBe('just holds')
  })

  test('only the grip of its knot waits for a test hang', () => {
    const notHeld = checkOf(succulent).links.filter((l) => l.verdict !== 'holds')
    expect(new Set(notHeld.map((l) => l.link))).toEqual(new Set(['gatheringGrip']))
    expect(checkOf({ ...succulent, 'testHang.mass': '5 kg', 'testHang.time': '25 h', 'testHang.slip': '1 mm' }).verdict).toBe('holds')
  })

  test('stays up with one strand cut through', () => {
    expect(checkOf(succulent).redundancy.strand).toBe('stays')
  })
})

describe('an 8 in fern in terracotta over a table, four legs of weighed 5 mm braid', () => {
  const fern: Patch = {
    ...GOOD_PLACE, 'pot.rim': '20 cm', 'pot.height': '18 cm', 'pot.base': '14 cm', 'pot.material': 'terracotta', 'pot.drainage': 'hole', 'plant.height': '35 cm',
    'cord.fibre': 'cotton', 'cord.make': 'braided', 'cord.diameter': '5 mm', 'cord.linearDensity': '13 g/m',
    'make.legs': '4', 'make.strands': '4', 'make.build': 'sinnet', 'make.totalLength': '110 cm', 'make.fringe': '22 cm', 'cradle.first': '12 cm', 'place.beneath': 'furniture',
  }

  test('holds: this is what such braid is sold for', () => {
    expect(verdictsOf(fern, CORD_LINKS)).toEqual(['holds', 'holds', 'holds'])
    expect(['holds', 'just holds']).toContain(checkOf(fern).verdict)
  })

  test('and still at least just holds over a sofa, on a closed hook', () => {
    expect(verdictsOf({ ...fern, 'place.beneath': 'people' }, CORD_LINKS)).not.toContain('fails')
    expect(verdictsOf({ ...fern, 'place.beneath': 'people' }, CORD_LINKS)).not.toContain('not enough known')
  })

  test('on two strands of 2 mm string it does not: a maker would not try', () => {
    const thin: Patch = { ...fern, 'cord.make': 'loose', 'cord.diameter': '2 mm', 'cord.linearDensity': '2 g/m', 'make.strands': '2' }
    expect(worstOfLink(checkOf(thin), 'leg').verdict).toBe('fails')
  })
})

describe('a 25 cm bowl without a hole over a sofa, cord known by its diameter only', () => {
  const bowl: Patch = {
    ...GOOD_PLACE, 'pot.shape': 'bowl', 'pot.rim': '25 cm', 'pot.height': '13 cm', 'pot.base': '12 cm', 'pot.material': 'stoneware', 'pot.drainage': 'none', 'plant.height': '15 cm',
    'cord.fibre': 'cotton', 'cord.make': 'loose', 'cord.diameter': '5 mm',
    'make.legs': '4', 'make.strands': '4', 'make.build': 'sinnet', 'make.totalLength': '115 cm', 'make.fringe': '20 cm', 'cradle.first': '13 cm', 'place.beneath': 'people',
  }

  test('not enough known: cords of one thickness differ sixfold, and people sit there', () => {
    expect(worstOfLink(checkOf(bowl), 'leg').verdict).toBe('not enough known')
    expect(codesOf(checkOf(bowl), 'leg')).toContain('CORD_BY_DIAMETER')
  })

  test('thinner, it is not taken for good either', () => {
    for (const diameter of ['4 mm', '3 mm', '2 mm']) expect(['not enough known', 'fails']).toContain(worstOfLink(checkOf({ ...bowl, 'cord.diameter': diameter }), 'leg').verdict)
  })

  test('weighed, the same cord is judged: the answer it asked for settles it', () => {
    const leg = worstOfLink(checkOf({ ...bowl, 'cord.linearDensity': '12.4 g/m' }), 'leg')
    expect(leg.grade).toBe('weighed')
    expect(['holds', 'just holds']).toContain(leg.verdict)
  })

  test('is to be looked at every three months, for people are beneath', () => {
    expect(checkOf(bowl).care.inspect).toMatchObject({ every: 3, reasons: expect.arrayContaining(['peopleBeneath']) as unknown })
  })
})

describe('polyester braid outdoors over a garden path', () => {
  const porch: Patch = {
    ...GOOD_PLACE, 'pot.rim': '22 cm', 'pot.height': '19 cm', 'pot.base': '15 cm', 'pot.material': 'plastic', 'pot.drainage': 'hole', 'plant.height': '20 cm',
    'cord.fibre': 'polyester', 'cord.make': 'braided', 'cord.diameter': '4 mm', 'cord.linearDensity': '8.5 g/m',
    'make.legs': '4', 'make.strands': '4', 'make.build': 'sinnet', 'make.totalLength': '115 cm', 'make.fringe': '20 cm', 'cradle.first': '12 cm',
    'place.beneath': 'wayThrough', 'place.exposure': 'outdoors', 'place.watering': 'daily', 'place.life': '2 years',
  }

  test('the cord holds for two summers: polyester is what one takes outdoors', () => {
    expect(verdictsOf(porch, CORD_LINKS)).toEqual(['holds', 'holds', 'holds'])
    expect(checkOf(porch).care.replaceAfter).toBe(checkOf(porch).care.life)
  })

  test('slick knots are not trusted before a test hang', () => {
    expect(worstOfLink(checkOf(porch), 'gatheringGrip').verdict).toBe('not enough known')
  })

  test.each([['cotton', 'fails'], ['polypropylene', 'not enough known']])('of %s it is %s: rot in a season, or sun in weeks', (fibre, verdict) => {
    expect(worstOfLink(checkOf({ ...porch, 'cord.fibre': fibre }), 'leg').verdict).toBe(verdict)
  })

  test('and cotton for one season only just passes as such, to be replaced the next', () => {
    const season: Patch = { ...porch, 'cord.fibre': 'cotton', 'place.life': '6 months', 'cord.linearDensity': '9 g/m' }
    expect(['holds', 'just holds']).toContain(worstOfLink(checkOf(season), 'leg').verdict)
    expect(codesOf(checkOf(season), 'leg')).toContain('NATURAL_CORD_OUTDOORS')
  })
})

describe('jute twine under a terracotta pot with a drain hole', () => {
  const twine: Patch = {
    ...GOOD_PLACE, 'pot.rim': '16 cm', 'pot.height': '14 cm', 'pot.base': '11 cm', 'pot.material': 'terracotta', 'pot.drainage': 'hole', 'plant.height': '20 cm',
    'cord.fibre': 'jute', 'cord.make': 'twisted', 'cord.diameter': '4 mm', 'cord.linearDensity': '6.5 g/m',
    'make.legs': '4', 'make.strands': '4', 'make.build': 'sinnet', 'make.totalLength': '95 cm', 'make.fringe': '20 cm', 'cradle.first': '9 cm', 'place.beneath': 'furniture',
  }

  test('just holds at best, for a year: strong enough, but it rots where it drips', () => {
    expect(worstOfLink(checkOf(twine), 'leg').verdict).toBe('holds')
    expect(worstOfLink(checkOf(twine), 'gatheringTurn').verdict).toBe('just holds')
    expect(checkOf(twine).care).toMatchObject({ replaceAfter: 31_557_600, inspect: { every: 1 } })
  })

  test('in a cover pot it holds: the knot stays dry', () => {
    expect(worstOfLink(checkOf({ ...twine, 'cover.inside': '20 cm', 'cover.height': '14 cm', 'cover.mass': '900 g' }), 'gatheringTurn').verdict).toBe('holds')
  })

  test('watered daily it is refused', () => {
    expect(worstOfLink(checkOf({ ...twine, 'place.watering': 'daily' }), 'gatheringTurn').verdict).toBe('fails')
  })
})
