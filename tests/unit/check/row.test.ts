import { describe, expect, test } from 'vitest'
import { stickMass } from '../../../src/load/stickMass'
import { stickBeam, stickSag } from '../../../src/check/stickBeam'
import { codesOf, linkIn } from './linkOf'
import { onStick } from './links/stickOf'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const G = 9.80665
/** Three like hangers on rings, 45 cm apart on a stick of 1.2 m that two hooks hold 80 cm apart. */
const ROW = {
  'make.arrangement': 'row', 'make.top': 'ring', 'row.count': '3', 'row.spacing': '45 cm',
  'stick.length': '120 cm', 'stick.span': '80 cm', 'stick.diameter': '35 mm', 'stick.held': 'twoHooks',
} as const
const row = (patch: Parameters<typeof onStick>[0]) => onStick({ ...ROW, ...patch })
const demand = (check: ReturnType<typeof row>, link: 'stick' | 'hook' | 'fixing' | 'topCord' | 'leg', code: 'dry' | 'watered' | 'bump' | 'neighbourDown') => linkIn(check, link, code).demand?.value ?? NaN

describe('hangers side by side on one stick', () => {
  test('leave each hanger’s own legs as they are', () => {
    const { weight } = row({}).solved.loads.watered
    const alone = checkOf({ ...ORDINARY, 'make.top': 'ring', 'make.tolerance': '0 mm', 'seat.offset': '0 mm' })
    expect(demand(row({}), 'leg', 'watered') / weight).toBeCloseTo(demand(alone, 'leg', 'watered') / alone.solved.loads.watered.weight, 4)
  })

  test('on two hooks, each bears half of all three; with an outer one down the other bears more than half of two', () => {
    const check = row({ 'row.others': '4 kg' })
    const own = check.solved.loads.watered.weight
    // This one may hang anywhere: at an end, 45 cm out from the middle, 80 cm between the hooks.
    const [near, middle, far] = [(40 + 45) / 80, 0.5, (40 - 45) / 80]
    const other = 4 * G
    expect(demand(check, 'hook', 'watered')).toBeCloseTo(Math.max(own * near + other * (middle + far), own * middle + other * (near + far)), 6)
    expect(demand(check, 'hook', 'neighbourDown')).toBeCloseTo(Math.max(own * near + other * middle, own * middle + other * near), 6)
  })

  test('bend the stick outside its hooks: 5 cm out', () => {
    const check = row({})
    const { weight, potted } = check.solved.loads.watered
    expect(potted).toBeGreaterThan(0)
    const { terms } = linkIn(check, 'stick', 'watered')
    const moment = terms.find((t) => t.code === 'momentShare')?.value ?? NaN
    const others = (check.solved.potted.watered.mass.high * G) / weight
    // Middle load: sagging P a / 4 less both overhangs; the stick's own weight counts with this hanger.
    expect(moment).toBeGreaterThan(0.8 / 4 - 0.05 * (1 + others))
    expect(moment).toBeLessThan(0.8 / 4)
  })

  test('are each jolted by themselves: the others hang at rest', () => {
    const check = row({ 'row.count': '2', 'row.spacing': '40 cm', 'row.others': '5 kg' })
    const { weight } = check.solved.loads.bump
    expect(demand(check, 'hook', 'bump')).toBeCloseTo(0.75 * weight + 0.25 * 5 * G, 6)
  })

  test('one heavier neighbour is never safer for stick, hooks and fixing', () => {
    const [light, heavy] = [row({ 'row.others': '2 kg' }), row({ 'row.others': '9 kg' })]
    for (const link of ['stick', 'hook', 'fixing'] as const) {
      expect(linkIn(heavy, link, 'watered').utilisation ?? NaN).toBeGreaterThan(linkIn(light, link, 'watered').utilisation ?? NaN)
    }
  })

  test('tip off hooks set too close once an outer one is taken down', () => {
    expect(codesOf(row({ 'stick.span': '30 cm' }), 'stick')).toContain('ROW_TIPS')
    expect(row({ 'stick.span': '30 cm' }).verdicts.hanger).toBe('fails')
  })

  test('need a stick as long as their row, and room for their pots', () => {
    expect(codesOf(row({ 'stick.length': '60 cm', 'stick.span': '50 cm' }), 'stick')).toContain('ROW_BEYOND_STICK')
    expect(codesOf(row({ 'row.spacing': '12 cm' }), 'stick')).toContain('ROW_TOUCHES')
    expect(codesOf(row({}), 'stick')).not.toContain('ROW_TOUCHES')
  })
})

describe('a row on one top cord', () => {
  const onCord = (patch: Parameters<typeof onStick>[0]) => row({ 'stick.held': 'topCord', 'stick.topCord': '150 cm', 'stick.span': '110 cm', 'row.others': '3 kg', ...patch })

  test('pulls the cord with all its weight: T = W Lc / (4 h) (equilibrium of the V)', () => {
    const check = onCord({ 'row.count': '2', 'row.spacing': '0.05 m', 'row.others': '3 kg' })
    const own = check.solved.loads.watered.weight
    const all = own + 3 * G
    const height = Math.sqrt(0.75 ** 2 - 0.55 ** 2)
    const offset = (0.025 * Math.abs(own - 3 * G)) / all
    expect(demand(check, 'topCord', 'watered')).toBeCloseTo(((all * 1.5) / (4 * height)) * (1 + (2 * offset) / 1.1), 6)
    expect(demand(check, 'hook', 'watered')).toBeCloseTo(all, 6)
  })

  test('runs over the hook when an outer hanger is taken down, and leans a little where they hang close', () => {
    const said = (patch: Parameters<typeof onStick>[0]) => linkIn(onCord(patch), 'topCord', 'neighbourDown').findings.flatMap((f) => (f.code === 'ROW_LEANS' ? [f.runs] : []))
    expect(said({})).toEqual([true])
    expect(linkIn(onCord({}), 'topCord', 'neighbourDown').verdict).toBe('fails')
    expect(said({ 'row.spacing': '5 cm' })).toEqual([false])
  })
})

test('a row round a beam or branch loads it with all its hangers and needs no stick', () => {
  const check = checkOf({ ...ORDINARY, 'make.arrangement': 'row', 'row.count': '4', 'row.others': '3 kg', 'place.support': 'overBeam', 'place.substrate': 'branch' })
  expect(check.links.some((l) => l.link === 'stick')).toBe(false)
  expect(demand(check, 'fixing', 'watered')).toBeCloseTo(check.solved.loads.watered.weight + 3 * 3 * G, 6)
  expect(demand(check, 'fixing', 'neighbourDown')).toBeCloseTo(check.solved.loads.watered.weight + 2 * 3 * G, 6)
})

test('a hanger that hangs alone has no row', () => {
  expect(onStick({}).links.some((l) => l.case === 'neighbourDown')).toBe(false)
})

describe('a row on its stick', () => {
  test('with one taken down hangs as one of two, or three of four, any of them gone', () => {
    const two = row({ 'row.count': '2', 'row.spacing': '40 cm', 'row.others': '5 kg' })
    expect(demand(two, 'hook', 'neighbourDown')).toBeCloseTo(0.75 * two.solved.loads.neighbourDown.weight, 6)
    const four = row({ 'row.count': '4', 'row.spacing': '20 cm', 'row.others': '5 kg' })
    const { weight } = four.solved.loads.neighbourDown
    // Places 30 and 10 cm either side; the fuller hook gets most with the farthest on its other side gone.
    const [far, near] = [(40 + 30) / 80, (40 + 10) / 80]
    expect(demand(four, 'hook', 'neighbourDown')).toBeCloseTo(Math.max(weight * far + 5 * G * (near + 1 - near), weight * near + 5 * G * (far + 1 - near), weight * (1 - near) + 5 * G * (far + near)), 6)
  })

  test('makes it sag most with the heavy one in the middle', () => {
    const [light, even] = ['0.1 kg', '2 kg'].map((others) => stickBeam(row({ 'row.spacing': '30 cm', 'row.others': others }).solved, 'watered'))
    if (!light?.ok || !even?.ok) throw new Error('no beam')
    // Of almost nothing beside it: W L3 / 48 for each newton, in the middle of its supports.
    expect(stickSag(light) / (0.8 ** 3 / 48)).toBeGreaterThan(1)
    expect(stickSag(light) / (0.8 ** 3 / 48)).toBeLessThan(1.1)
    expect(stickSag(even)).toBeGreaterThan(stickSag(light))
  })

  test('says where the load of unequal neighbours lies in the words of a row', () => {
    const source = (check: ReturnType<typeof row>): string | undefined => linkIn(check, 'stick', 'watered').terms.find((t) => t.symbol === 'e_s')?.source
    expect(source(row({ 'stick.held': 'topCord', 'stick.topCord': '120 cm' }))).toContain('row’s load')
    expect(source(onStick({}))).toContain('legs')
  })
})

test('pots closer than they are wide touch: by the rim, or by the belly of one that has one', () => {
  const touches = (patch: Parameters<typeof onStick>[0]): boolean => codesOf(row(patch), 'stick').includes('ROW_TOUCHES')
  const close = { 'row.spacing': '21 cm', 'pot.rim': '200 mm', 'pot.height': '180 mm', 'pot.base': '140 mm', 'pot.belly': '240 mm', 'pot.bellyHeight': '90 mm' } as const
  expect(touches(close)).toBe(false)
  expect(touches({ ...close, 'pot.shape': 'bellied' })).toBe(true)
  expect(touches({ ...close, 'row.spacing': '19 cm' })).toBe(true)
})

test('what one hook bears is told in the words of a row, of two hooks in those of a lever', () => {
  const source = (check: ReturnType<typeof row>): string | undefined => linkIn(check, 'hook', 'watered').terms.find((t) => t.symbol === 'k_h')?.source
  expect(source(row({ 'row.others': '4 kg' }))).toContain('whole row')
  expect(source(onStick({ 'stick.held': 'twoHooks', 'stick.bunch': '240 mm' }))).toContain('lever')
})

test('others that were not weighed are like this one, but for the stick, which hangs there once', () => {
  const check = row({ 'row.count': '2', 'row.spacing': '40 cm' })
  const { weight, potted, hanger } = check.solved.loads.watered
  const stick = stickMass(check.solved.hanger.answers, 'watered').high
  expect(stick).toBeGreaterThan(0.3)
  expect(demand(check, 'hook', 'watered')).toBeCloseTo(0.75 * weight + 0.25 * (potted + hanger - stick) * G, 6)
})
