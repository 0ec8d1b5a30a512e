import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { heaviestPot } from '../../../../src/advice/heaviestPot'
import { documentOf, checkOf, ORDINARY } from '../../hanger/hangerOf'

const codes = (check: ReturnType<typeof checkOf>): readonly string[] => check.links.flatMap((l) => l.findings.map((f) => f.code))
const of = (check: ReturnType<typeof checkOf>, link: string) => check.links.filter((l) => l.link === link)

describe('a knot that was seen to slip', () => {
  test('is not better than the model says, however short the test', () => {
    const slipped = { ...ORDINARY, 'testHang.mass': '20 kg', 'testHang.time': '2 h', 'testHang.slip': '60 mm' }
    for (const link of of(checkOf(slipped), 'gatheringGrip')) expect(link.verdict).toBe('not enough known')
  })

  test('fails under a load as heavy as it slipped with', () => {
    const slipped = checkOf({ ...ORDINARY, 'testHang.mass': '3 kg', 'testHang.time': '26 h', 'testHang.slip': '60 mm' })
    expect(of(slipped, 'gatheringGrip').find((l) => l.case === 'watered')?.verdict).toBe('fails')
  })
})

describe('a cord', () => {
  test('heavier than solid fibre of its diameter counts by its diameter', () => {
    const check = checkOf({ ...ORDINARY, 'cord.linearDensity': '48 g/m' })
    expect(codes(check)).toContain('CORD_TOO_HEAVY')
    expect(of(check, 'leg')[0]?.capacity?.value).toBeCloseTo(15 * 9, 9)
  })

  // The hank folded once and measured folded: twice the weight per metre. Rope of the tables weighed rightly passes.
  test.each<[string, Patch, boolean]>([
    ['loose cotton of 3 mm weighed doubled', { 'cord.linearDensity': '9.6 g/m' }, true],
    ['nylon braid of 5 mm weighed doubled', { 'cord.fibre': 'nylon', 'cord.make': 'braided', 'cord.diameter': '5 mm', 'cord.linearDensity': '26 g/m' }, true],
    ['polypropylene braid of 4 mm weighed doubled', { 'cord.fibre': 'polypropylene', 'cord.make': 'braided', 'cord.diameter': '4 mm', 'cord.linearDensity': '14 g/m' }, true],
    ['tight cotton of 3 mm', { 'cord.make': 'twisted', 'cord.linearDensity': '7.4 g/m' }, false],
    ['nylon rope of 3/16 in by its table', { 'cord.fibre': 'nylon', 'cord.make': 'rope', 'cord.diameter': '3/16 in', 'cord.linearDensity': '14.9 g/m' }, false],
    ['manila rope of 3/16 in by its table', { 'cord.fibre': 'manila', 'cord.make': 'rope', 'cord.diameter': '3/16 in', 'cord.linearDensity': '20.4 g/m' }, false],
    ['polyester rope of 6 mm by its table', { 'cord.fibre': 'polyester', 'cord.make': 'rope', 'cord.diameter': '6 mm', 'cord.linearDensity': '29 g/m' }, false],
  ])('%s', (_, patch, doubted) => {
    expect(codes(checkOf({ ...ORDINARY, ...patch })).includes('CORD_TOO_HEAVY')).toBe(doubted)
  })

  test('of jute over a drain hole just holds at best', () => {
    const check = checkOf({ ...ORDINARY, 'cord.fibre': 'jute', 'cord.make': 'twisted', 'cord.linearDensity': '9 g/m', 'cord.diameter': '5 mm' })
    expect(codes(check)).toContain('JUTE_DAMP')
    for (const link of of(check, 'gatheringTurn')) expect(link.verdict).not.toBe('holds')
  })
})

test('a latch keeps the ring in and adds no strength: the bowl counts as an open one', () => {
  const patch = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => path !== 'hook.rated'))
  const hook = (kind: string) => of(checkOf({ ...patch, 'hook.kind': kind, 'place.beneath': 'people' }), 'hook')[0]
  expect(hook('latched')?.capacity?.value).toBe(hook('open')?.capacity?.value)
  expect(hook('closed')?.capacity?.value).toBeCloseTo(4 * (hook('open')?.capacity?.value ?? 0), 9)
  expect(hook('open')?.verdict).toBe('fails')
  expect(hook('latched')?.findings.map((f) => f.code)).not.toContain('HOOK_OPEN_OVER_PEOPLE')
})

test('a weighing lighter than the mix alone is refused in the state it was weighed in too', () => {
  expect(codes(checkOf({ ...ORDINARY, 'pot.rim': '28 cm', 'pot.height': '25 cm', 'pot.base': '19 cm', 'weighed.mass': '0.5 kg', 'weighed.state': 'dry' }))).toContain('WEIGHED_TOO_LIGHT')
})

test('a wooden ring is settled by the test hang that its sentence asks for', () => {
  const untested = checkOf({ ...ORDINARY, 'ring.metal': 'wood' })
  const asked = untested.links.flatMap((l) => l.findings).find((f) => f.code === 'RING_UNRATED')
  expect(asked).toBeDefined()
  const mass = asked?.code === 'RING_UNRATED' ? asked.testMass : 0
  const tested = checkOf({ ...ORDINARY, 'ring.metal': 'wood', 'testHang.mass': `${Math.ceil(mass * 10) / 10} kg`, 'testHang.time': '25 h', 'testHang.slip': '1 mm' })
  expect(of(tested, 'ring').map((l) => l.verdict).filter((v) => v === 'not enough known' || v === 'fails')).toEqual([])
})

test('the heaviest pot is told only of a hanger whose legs and strands were said, and of none in natural cord outdoors for years', () => {
  const without = (path: string) => Object.fromEntries(Object.entries(ORDINARY).filter(([p]) => p !== path))
  expect(heaviestPot(documentOf(ORDINARY))).not.toBeNull()
  expect(heaviestPot(documentOf(without('make.legs')))).toBeNull()
  expect(heaviestPot(documentOf(without('make.strands')))).toBeNull()
  expect(heaviestPot(documentOf({ ...ORDINARY, 'place.exposure': 'outdoors' }))).toBeNull()
})

test('a jolt meets the pot as heavy as it can be: standing in water where it cannot surely run out', () => {
  const jolts = ['bump', 'setDown', 'drop', 'strandParted', 'legParted'] as const
  const dryable = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !path.startsWith('weighed')))
  for (const [drainage, state] of [['hole', 'watered'], ['none', 'flooded'], ['unknown', 'flooded']] as const) {
    const { loads } = checkOf({ ...dryable, 'pot.drainage': drainage }).solved
    for (const code of jolts) expect(loads[code].weight / loads[code].factor).toBeCloseTo(loads[state].weight, 9)
  }
  const { loads } = checkOf({ ...dryable, 'pot.drainage': 'none' }).solved
  expect(loads.flooded.weight).toBeGreaterThan(loads.watered.weight * 1.02)
})
