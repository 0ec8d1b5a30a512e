import { describe, expect, test } from 'vitest'
import { finish } from '../../../src/advice/edge'
import { chooseSizes, type ChoicesAsked } from '../../../src/choosing/chooseSizes'
import { changeBetween, withChange } from '../../../src/choosing/change'
import type { Choice, ChoiceFound } from '../../../src/choosing/choice'
import { CHOICES, DECIDES, inOrder, type ChoiceCode } from '../../../src/choosing/question'
import { checkPatched } from '../../../src/advice/evaluate'
import { isWorse } from '../../../src/check/verdict'
import { DEMOS } from '../../../src/hanger/demos'
import { editField, patchDocument, type HangerDocument, type Patch } from '../../../src/hanger/document'
import { parseDocument } from '../../../src/hanger/parse'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

function demo(name: string): HangerDocument {
  const parsed = parseDocument(DEMOS.find(({ file }) => file.startsWith(name))?.text ?? '')
  if (!parsed.ok) throw new Error(name)
  return parsed.document
}
const asked = (document: HangerDocument, choices: readonly ChoiceCode[], more: Partial<ChoicesAsked> = {}): ChoicesAsked => ({ document, choices, own: [], material: null, mix: null, ...more })
const choose = (document: HangerDocument, choices: readonly ChoiceCode[], more: Partial<ChoicesAsked> = {}): readonly Choice[] => finish(chooseSizes(asked(document, choices, more)))
/** The first answers, then no more is asked. */
function firstOf(steps: ReturnType<typeof chooseSizes>, count: number): readonly Choice[] {
  const told: Choice[] = []
  for (const step of steps) {
    if (step.kind === 'chosen') told.push(step.choice)
    if (told.length === count) break
  }
  return told
}
function found(choice: Choice | undefined): ChoiceFound {
  if (choice?.found !== true) throw new Error(JSON.stringify(choice?.reason))
  return choice
}
const decidedHold = (document: HangerDocument, choice: keyof typeof DECIDES, patch: Patch): boolean =>
  checkPatched(document, patch)?.links.every((l) => !DECIDES[choice].includes(l.link) || !isWorse(l.verdict, 'just holds')) === true

const IVY = demo('ivy')
const FERN = demo('fern')

describe('the answers are the edge', () => {
  test('of a stick: it holds as sold, and the next thinner does not', () => {
    const stick = found(choose(IVY, ['stick'])[0])
    expect(stick.value).toBe(0.012)
    const bare = editField(IVY, 'testHang.mass', null)
    expect([decidedHold(withChange(IVY, stick.change), 'stick', {}), decidedHold(bare, 'stick', { 'stick.diameter': '10 mm' })]).toEqual([true, false])
    expect(stick.limit).toMatchObject({ value: 0.01, stop: { kind: 'link', link: 'stick', verdict: 'fails', now: null } })
  })

  test('of wraps: counted exactly, without the test hang of the present knot', () => {
    const wraps = found(choose(FERN, ['wraps'])[0])
    const bare = withChange(FERN, changeBetween(FERN, patchDocument(editField(FERN, 'testHang.mass', null), {})))
    const value = wraps.value as number
    expect([decidedHold(bare, 'wraps', { 'gathering.wraps': String(value) }), decidedHold(bare, 'wraps', { 'gathering.wraps': String(value - 1) })]).toEqual([true, false])
    expect({ isUntested: wraps.isUntested, now: wraps.now, close: wraps.close, forNext: wraps.isForNext }).toEqual({ isUntested: true, now: 8, close: 0, forNext: false })
    expect(wraps.change.typed['testHang.mass']).toBeNull()
  })

  test('of the legs: both ends of one search, the shorter found to 5 mm', () => {
    const [shortest, longest] = choose(documentOf(ORDINARY), ['shortestLeg', 'longestLeg']).map(found)
    expect(shortest?.value).toBeLessThan(shortest?.now ?? 0)
    expect(longest?.value).toBeGreaterThanOrEqual(longest?.now ?? 0)
    expect((shortest?.value ?? 0) - (shortest?.limit?.value ?? 0)).toBeCloseTo(0.005, 9)
  })

  test('of the heaviest pot: the weight that is told holds, a tenth more does not', () => {
    const heaviest = found(choose(FERN, ['heaviestPot'])[0])
    const value = heaviest.value as number
    const own = (mass: number): boolean => checkPatched(editField(FERN, 'weighed.tare', null), { 'weighed.mass': `${mass} kg`, 'weighed.state': 'watered' })?.links.every((l) => l.side === 'place' || l.link === 'load' || !isWorse(l.verdict, 'just holds')) === true
    expect([own(value), own(value + 0.1)]).toEqual([true, false])
    expect(heaviest.limit?.value).toBeCloseTo(value + 0.1, 9)
  })

  test('of the widest pot: found to 5 mm, and put in with its material and mix', () => {
    const concrete = found(choose(FERN, ['largestRim'], { material: 'concrete', mix: 'peatPerlite' })[0])
    expect((concrete.limit?.value ?? 0) - (concrete.value ?? 0)).toBeCloseTo(0.005, 9)
    expect(withChange(FERN, concrete.change).typed).toMatchObject({ 'pot.material': 'concrete', 'mix.kind': 'peatPerlite', 'pot.have': 'yes' })
  })
})

describe('what is told of an answer', () => {
  const heavier = (mass: number): readonly Choice[] => firstOf(chooseSizes(asked(patchDocument(documentOf(ORDINARY), { 'weighed.mass': `${mass} kg`, 'weighed.state': 'watered' }), ['cord'])), 8)

  test('a heavier pot never asks for a smaller cord', () => {
    const [light, heavy] = [heavier(2), heavier(5)]
    let both = 0
    light.forEach((one, i) => {
      const other = heavy[i] as Choice
      expect(other.of).toEqual(one.of)
      if (!other.found) return
      both += 1
      expect(other.value).toBeGreaterThanOrEqual(found(one).value as number)
    })
    expect(both).toBeGreaterThan(2)
  })

  test('nothing else comes off worse than now, and where it would that is what stops it', () => {
    const now = checkPatched(editField(IVY, 'testHang.mass', null), {})
    const stops = choose(IVY, ['legs', 'strands']).map(found).flatMap(({ until }) => (until?.limit.stop.kind === 'link' ? [until.limit.stop] : []))
    expect(stops).not.toEqual([])
    for (const stop of stops) {
      expect(now?.links.some((l) => l.link === stop.link)).toBe(true)
      expect(stop.now !== null && isWorse(stop.verdict, stop.now)).toBe(true)
    }
  })

  test('cords of the shelf come first, as they are, with their own pull tests', () => {
    const own = { name: 'Rope from the barn', document: patchDocument(documentOf(ORDINARY), { 'cord.rated': '200 kgf', 'cord.diameter': '5 mm' }) }
    const [first, second] = firstOf(chooseSizes(asked(documentOf(ORDINARY), ['cord'], { own: [own] })), 2)
    expect(first).toMatchObject({ found: true, of: { kind: 'shelf', name: 'Rope from the barn' }, value: 0.005, change: { typed: { 'cord.rated': '200 kgf' } } })
    expect(second?.of?.kind).toBe('catalogue')
    const [same] = firstOf(chooseSizes(asked(FERN, ['cord'], { own: [{ name: 'The one it is on', document: { ...FERN, pullTests: [...FERN.pullTests] } }] })), 1)
    expect(found(same)).toMatchObject({ now: 0.004, value: 0.004, change: { typed: {} } })
  })

  test('of a made hanger what can still be changed comes first', () => {
    expect(inOrder(CHOICES, false)).toEqual(CHOICES)
    expect(inOrder(CHOICES, true).slice(0, 4)).toEqual(['wraps', 'fixing', 'heaviestPot', 'largestRim'])
    expect(choose(FERN, ['stick', 'wraps']).map(({ choice, isForNext }) => [choice, isForNext])).toEqual([['wraps', false], ['stick', true]])
  })

  test('each answer comes as it is found', () => {
    const steps = [...chooseSizes(asked(FERN, ['wraps', 'stick']))]
    expect(steps.filter(({ kind }) => kind === 'chosen')).toHaveLength(2)
    expect(steps[0]).toEqual({ kind: 'tried', choice: 'wraps' })
  })
})

describe('why there is no answer', () => {
  test.each([
    ['no pot yet', { ...ORDINARY, 'pot.have': 'no' }, 'strands', { code: 'noPot' }],
    ['no hanger yet', { ...ORDINARY, 'make.have': 'no' }, 'heaviestPot', { code: 'noHanger' }],
    ['no stick', ORDINARY, 'stick', { code: 'notConcerned' }],
    ['no word of the place', { ...ORDINARY, 'place.substrate': 'unknown' }, 'fixing', { code: 'answersNeeded', paths: ['place.substrate'] }],
    ['no legs of a panel', { ...ORDINARY, 'make.arrangement': 'panel' }, 'legs', { code: 'notConcerned' }],
    ['legs not counted', { ...ORDINARY, 'make.legs': '' }, 'heaviestPot', { code: 'answersNeeded', paths: ['make.legs', 'make.strands'] }],
    ['a pot that nothing bears', { ...ORDINARY, 'weighed.mass': '140 kg', 'weighed.state': 'watered' }, 'wraps', { code: 'notEnoughKnown', link: 'gatheringGrip' }],
  ] as const)('%s', (_, patch, choice, reason) => {
    const document = Object.entries(patch).reduce((next, [path, text]) => editField(next, path as keyof Patch, text), documentOf({}))
    expect(choose(document, [choice])).toMatchObject([{ found: false, reason }])
  })

  test('with no hanger yet a cord can be chosen to start from', () => {
    const [first] = firstOf(chooseSizes(asked(documentOf({ 'pot.rim': '12 cm', 'pot.material': 'plastic', 'make.have': 'no' }), ['cord'])), 1)
    expect(found(first).change.typed).toMatchObject({ 'make.have': 'yes', 'cord.fibre': 'cotton' })
  })

  test('none of a document that cannot be read', () => {
    expect(choose(editField(FERN, 'pot.rim', '3 kg'), CHOICES)).toEqual([])
  })
})
