import { describe, expect, test } from 'vitest'
import type { CatalogueEntry } from '../../../src/catalogue/collectEntries'
import { catalogueEntries } from '../../../src/catalogue/entries'
import { CATALOGUE_CODES } from '../../../src/words/catalogueCodes'
import { catalogueFigure } from '../../../src/words/catalogueFigure'
import { CATALOGUE_NAMES, catalogueName, nameEntry } from '../../../src/words/catalogueNames'
import { searchCatalogue } from '../../../src/words/searchCatalogue'

const entries = catalogueEntries()
const named = entries.map(nameEntry)
const find = (word: string) => searchCatalogue(named, word).map((e) => e.id)
const entryOf = (id: string): CatalogueEntry => {
  const entry = entries.find((e) => e.id === id)
  if (entry === undefined) throw new Error(`no ${id}`)
  return entry
}

describe('names', () => {
  test('every entry has words', () => {
    expect(entries.filter((e) => catalogueName(e) === null).map((e) => e.id)).toEqual([])
  })

  test('words are there for no entry that is gone', () => {
    const used = new Set(entries.map((e) => catalogueName(e)?.pattern))
    expect(Object.keys(CATALOGUE_NAMES).filter((pattern) => !used.has(pattern))).toEqual([])
  })

  test('every code that has words is in use', () => {
    const parts = new Set(entries.flatMap((e) => e.path))
    expect(Object.values(CATALOGUE_CODES).flatMap((codes) => Object.keys(codes)).filter((code) => !parts.has(code))).toEqual([])
  })

  test('no two entries of a subject are named alike', () => {
    const whole = named.map((e) => `${e.subjectName}: ${e.name}`)
    expect(whole.filter((name, i) => whole.indexOf(name) !== i)).toEqual([])
  })

  test('names are words, not codes', () => {
    expect(named.filter((e) => /[{}_]|undefined|don’t know|[a-z][A-Z](?!h)/.test(e.name) || e.name === e.id).map((e) => e.name)).toEqual([])
  })
})

describe('figures in a maker’s units', () => {
  test.each([
    ['pottingMixes.POTTING_MIXES.bark.watered', '0.61 to 0.8 kg per litre, likely 0.75'],
    ['ropeTables.MANILA_ROPE.10 mm.linearDensity', '56.4 g/m'],
    ['ropeTables.MANILA_ROPE.10 mm.breaking', '551 kg (1215 lb)'],
    ['cords.FIBRE_PROPERTIES.jute.tenacity.tight', '8.5 cN/tex'],
    ['cords.BREAK_BY_DIAMETER', '1.53 kg (3.37 lb) per mm²'],
    ['cords.MASS_BY_DIAMETER', '0.418 to 0.657 g/m per mm², likely 0.537'],
    ['potMaterials.POT_MATERIALS.plastic.uptake', '0'],
    ['potMaterials.POT_MATERIALS.steel.wall', '0.5 to 0.8 mm, likely 0.65'],
    ['knots.BEND.points', '1: 0.5; 2: 0.75; 8: 0.95'],
    ['timber.ALLOWABLE_DURATION.steps', 'up to 10 minutes: 1.6; up to 7 days: 1.25; up to 61 days: 1.15; up to 10 years: 1; longer: 0.9'],
    ['timber.TIMBER_DURATION.n', '0.0464'],
    ['lateral.LATERAL_LIMIT.smoothNail.softwood.steps', '0.29: 50 N per mm^1.5; 0.43: 62.5 N per mm^1.5; 0.48: 76.5 N per mm^1.5'],
    ['lateral.BENDING_YIELD.nail.steps', 'up to 3.6 mm: 689 MPa; up to 4.5 mm: 621 MPa; up to 6 mm: 552 MPa'],
    ['sticks.SLOPE_OF_GRAIN.points', '1 in 25: 0.96; 1 in 20: 0.93; 1 in 15: 0.89; 1 in 10: 0.81; 1 in 5: 0.55'],
    ['withdrawal.WITHDRAWAL_ULTIMATE.lagScrew', '125 N per mm^1.75'],
    ['concrete.CONCRETE_CONE.castIn', '10 N per MPa^0.5 mm^1.5'],
    ['screws.SCREW_GAUGES.No. 8.outside', '4.17 mm'],
    ['chain.PROOF_COIL.3/16 in.limit', '363 kg (800 lb)'],
    ['plugs.NYLON_PLUGS.6 mm.pullOut.perforatedBrick', '10.2 kg (22.5 lb) to 15.3 kg (33.7 lb), likely 12.7 kg (28.1 lb)'],
    ['boardFixings.BRACKET_MOMENT.steelStudsWide', '33.9 N m'],
    ['ceilings.ELECTRICAL_BOXES.lamp', '22.7 kg (50 lb)'],
    ['woods.WOODS.americanBeech.elasticity', '11.9 GPa'],
    ['woods.WOODS.americanBeech.rupture', '103 MPa'],
    ['duration.FLOODED_TIME', '7 days'],
    ['legs.WIDE_ANGLE', '60°'],
  ])('%s: %s', (id, text) => {
    expect(catalogueFigure(entryOf(id))).toBe(text)
  })

  test('a range of forces keeps kg and lb of each end', () => {
    const figure = { kind: 'range', low: 9.80665, likely: 19.6133, high: 49.03325 } as const
    expect(catalogueFigure({ ...entryOf('knots.WRAP_TENSION'), figure })).toBe('1 kg (2.2 lb) to 5 kg (11 lb), likely 2 kg (4.41 lb)')
  })

  test('a unit without words of its own is still written', () => {
    expect(catalogueFigure({ ...entryOf('knots.WRAP_TENSION'), unit: 'm/s', figure: { kind: 'single', value: 1.25 } })).toBe('1.25 m/s')
  })
})

describe('searching', () => {
  test('nothing asked finds all', () => {
    expect(find('  ')).toHaveLength(entries.length)
  })

  test.each(['LARK’S HEAD', 'lark\'s head', 'larks head', 'girth hitch', 'Cow Hitch'])('%s finds the lark’s head', (word) => {
    expect(find(word)).toContain('knots.LARKS_HEAD.points')
    expect(find(word)).toContain('knotEfficiencies.KNOT_EFFICIENCIES.larksHead.onThinBar')
    expect(find(word)).not.toContain('knotEfficiencies.KNOT_EFFICIENCIES.bowline.handbook')
  })

  test.each([
    ['reef', 'knotEfficiencies.KNOT_EFFICIENCIES.square.institute'],
    ['abaca', 'ropeTables.MANILA_ROPE.6 mm.breaking'],
    ['flax', 'cords.FIBRE_PROPERTIES.linen.wet'],
    ['rayon', 'frictionPairs.FRICTION_PAIRS.viscoseOnViscose.sliding'],
    ['coco', 'pottingMixes.POTTING_MIXES.coir.watered'],
    ['PP', 'ropeTables.POLYPROPYLENE_ROPE.6 mm.breaking'],
    ['dowel', 'woods.WOODS.americanBeech.rupture'],
    ['drywall', 'boardFixings.BOARD_FIXINGS.board13.toggleQuarter.pullOut'],
    ['wall plug', 'plugs.NYLON_PLUGS.8 mm.pullOut.concrete'],
    ['coach screw', 'withdrawal.WITHDRAWAL_ALLOWABLE.lagScrew'],
    ['pull-out', 'withdrawal.WITHDRAWAL_ULTIMATE.woodScrew'],
    ['aircrete', 'plugs.NYLON_PLUGS.8 mm.pullOut.aerated'],
    ['safety factor', 'reserves.RESERVE.people'],
    ['efficiency', 'knots.TIED_STRAND'],
    ['substrate', 'pottingMixes.POTTING_MIXES.cactus.dry'],
  ])('the trade’s “%s” finds %s, and not everything', (word, id) => {
    expect(find(word)).toContain(id)
    expect(find(word).length).toBeLessThan(entries.length * 0.6)
  })

  test('a short word is found only as a whole word', () => {
    expect(find('PP')).not.toContain('plants.PLANT_CENTRE_SHARE')
    expect(find('pe')).toEqual([])
  })

  test('a source finds what was taken from it', () => {
    expect(find('ci 1308')).toContain('ropeTables.SISAL_ROPE.8 mm.breaking')
    expect(find('wood handbook')).toContain('woods.WOODS.whiteAsh.rupture')
  })

  test('a subject finds all of its entries', () => {
    expect(find('rope tables')).toEqual(entries.filter((e) => e.subject === 'ropeTables').map((e) => e.id))
  })

  test('a basis finds what is known so', () => {
    const found = searchCatalogue(named, 'from memory')
    expect(found.length).toBeGreaterThan(20)
    for (const e of named) if (e.basis === 'from memory') expect(found).toContain(e)
  })

  test.each(['zeppelin', 'qqq', '[', '.*'])('%s finds nothing', (word) => {
    expect(find(word)).toEqual([])
  })
})
