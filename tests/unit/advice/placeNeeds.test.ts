import { describe, expect, test } from 'vitest'
import { beneathChoices } from '../../../src/advice/beneathChoices'
import { placeCandidates } from '../../../src/advice/placeCandidates'
import type { FixingFound } from '../../../src/advice/findFixing'
import { loadedFor, type Loaded } from '../../../src/advice/loadedHanger'
import { packetRating } from '../../../src/advice/packetRating'
import { answerPlaceNeeds, needOf, withFixing, type PlaceNeeds } from '../../../src/advice/placeNeeds'
import { placeResults, withPlace } from '../../../src/advice/placeResults'
import { PLACE_FORMS, USUAL_PLACES, type PlaceForm, type UsualPlace } from '../../../src/advice/usualPlaces'
import { HOLDS_LIMIT, RESERVE_ON_ALLOWABLE } from '../../../src/catalogue/reserves'
import { checkHanger, governingOf } from '../../../src/check/checkHanger'
import { LOAD_PATH } from '../../../src/check/loadPath'
import { solve } from '../../../src/check/solve'
import { isWorse } from '../../../src/check/verdict'
import { DEMOS } from '../../../src/hanger/demos'
import { EMPTY_DOCUMENT, patchDocument, type HangerDocument, type Patch } from '../../../src/hanger/document'
import { parseDocument } from '../../../src/hanger/parse'
import { resolveDocument } from '../../../src/hanger/resolve'
import { STANDARD_GRAVITY } from '../../../src/quantity/si'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const ordinary = documentOf(ORDINARY)
const heavier = (mass: number, more: Patch): HangerDocument => documentOf({ ...ORDINARY, 'weighed.mass': `${mass} kg`, ...more })

function needsOf(document: HangerDocument): PlaceNeeds {
  const outcome = answerPlaceNeeds(document)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome))
  return outcome.needs
}
function loadedOf(document: HangerDocument): Loaded {
  const outcome = loadedFor(document)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome))
  return outcome.loaded
}
function hangerOf(document: HangerDocument) {
  const resolved = resolveDocument(document)
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems))
  return resolved.hanger
}
const foundIn = ({ needs }: PlaceNeeds): readonly (readonly [UsualPlace, FixingFound])[] =>
  needs.flatMap(({ place, fixings }) => fixings.flatMap((fixing) => (fixing.found ? [[place, fixing] as const] : [])))

// Every second demo: each of them is asked of every place.
const DEMO_DOCUMENTS = DEMOS.filter((_, i) => i % 2 === 0).map(({ file, text }): readonly [string, HangerDocument] => {
  const parsed = parseDocument(text)
  if (!parsed.ok) throw new Error(file)
  return [file, parsed.document]
})
const OTHERS: readonly (readonly [string, HangerDocument])[] = [
  ['over people', heavier(6, { 'place.beneath': 'people' })],
  ['on a wall hook, 9 kg', heavier(9, { 'place.support': 'wallHook' })],
  ['on a swing arm of 35 cm', heavier(4, { 'place.support': 'swingArm', 'bracket.reach': '35 cm' })],
  ['outdoors', heavier(5, { 'place.exposure': 'outdoors', 'cord.fibre': 'polyester' })],
  ['told by the customer', heavier(5, { 'place.known': 'told' })],
  ['where others hang too', heavier(5, { 'rail.others': '3 kg' })],
]

describe.each([['the ordinary one', ordinary] as const, ...DEMO_DOCUMENTS, ...OTHERS])('what the place of %s needs', (_, document) => {
  const needs = needsOf(document)
  const loaded = loadedOf(document)

  test('every usual wall and ceiling has its answer: fixings tried, or a refusal', () => {
    expect(needs.needs.map(({ place }) => place)).toEqual(USUAL_PLACES)
    for (const { place, fixings, refused } of needs.needs) expect(fixings.length > 0, place).toBe(refused === null)
  })

  test('every fixing told holds or just holds once it is put into the document and all is checked anew', () => {
    for (const [place, fixing] of foundIn(needs)) {
      const check = checkHanger(hangerOf(withFixing(loaded.document, fixing)))
      const decides = governingOf(check.links.filter((l) => ['fixing', 'bracket', 'pin', 'hook', 'hookShank'].includes(l.link)))
      expect(decides?.verdict, `${place} ${fixing.form}`).toBe(fixing.verdict)
      expect(decides?.utilisation, `${place} ${fixing.form}`).toBe(fixing.utilisation)
      expect(isWorse(fixing.verdict, 'just holds'), `${place} ${fixing.form}`).toBe(false)
    }
  })

  test('what comes before it in its list, a size smaller, does not', () => {
    for (const [place, { form, changes }] of foundIn(needs)) {
      const { rating } = needOf(loaded, place)
      const packet = { fixing: `${Math.max(1, Math.ceil((rating?.fixing ?? 0) / STANDARD_GRAVITY - 1e-9))} kgf`, holder: `${Math.max(1, Math.ceil((rating?.holder ?? 0) / STANDARD_GRAVITY - 1e-9))} kgf` }
      const candidates = placeCandidates(place, form, loaded.solved.hanger, packet)
      const at = candidates.findIndex((c) => JSON.stringify({ ...c.changes, 'fixing.proof': null }) === JSON.stringify({ ...changes, 'fixing.proof': null }))
      expect(at, `${place} ${form}`).toBeGreaterThanOrEqual(0)
      for (const smaller of candidates.slice(Math.max(0, at - 3), at)) {
        const results = placeResults(loaded.document, loaded.solved, smaller.changes) ?? []
        const decides = governingOf(results)
        const tooShort = results.some((l) => l.findings.some(({ code }) => code === 'PENETRATION_TOO_SHORT'))
        expect(tooShort || decides === null || isWorse(decides.verdict, 'just holds'), `${place} ${form} ${smaller.size} ${smaller.length ?? ''}`).toBe(true)
      }
    }
  })

  test('where none of a form will do, none of its list does', () => {
    for (const { place, fixings } of needs.needs) {
      for (const fixing of fixings) {
        if (fixing.found) continue
        for (const { changes, size } of placeCandidates(place, fixing.form, loaded.solved.hanger, { fixing: '5000 kgf', holder: '5000 kgf' })) {
          const decides = governingOf(placeResults(loaded.document, loaded.solved, changes) ?? [])
          expect(decides === null || isWorse(decides.verdict, 'just holds'), `${place} ${fixing.form} ${size}`).toBe(true)
        }
      }
    }
  })

  test('what is solved once is what would be solved for every place', () => {
    for (const [place, { changes, form }] of foundIn(needs)) {
      const whole = solve(hangerOf(withPlace(loaded.document, changes)))
      const anew = (['fixing', 'bracket', 'pin', 'hook', 'hookShank'] as const).flatMap((link) => LOAD_PATH[link](whole))
      const reused = placeResults(loaded.document, loaded.solved, changes) ?? []
      expect(reused.map(({ id, utilisation, demand }) => ({ id, utilisation, demand })), `${place} ${form}`).toEqual(anew.map(({ id, utilisation, demand }) => ({ id, utilisation, demand })))
    }
  })
})

describe('the packet rating to look for', () => {
  test('overhead: what is asked over what a rated part may be asked, used to the share that still holds', () => {
    // By hand: set down hard, twice the weight, against twice the rating for a moment; bumped, the pull of the swing and the side pull together.
    const loaded = loadedOf(ordinary)
    const { loads } = loaded.solved
    const { bump, flooded } = loads
    const atRest = Math.max(loads.watered.weight, flooded.weight)
    const byHand = Math.max(atRest, loads.setDown.weight / 2, loads.drop.weight / 3, (bump.weight + (bump.weight / bump.factor) * Math.sin(Math.PI / 6) * Math.cos(Math.PI / 6)) / 2)
    expect(packetRating(loaded, 'concreteCeiling')?.fixing).toBeCloseTo((byHand * RESERVE_ON_ALLOWABLE.furniture.value) / HOLDS_LIMIT.rated.value, 6)
  })

  test('with it exactly, the fixing is used to just that share, and the smaller rating no longer holds', () => {
    for (const place of ['concreteCeiling', 'concreteWall', 'boardWall', 'joistOverhead'] as const) {
      const loaded = loadedOf(heavier(7, { 'place.beneath': 'people' }))
      const rating = packetRating(loaded, place)
      if (rating === null) throw new Error(place)
      const used = (share: number): number => {
        const exactly = { fixing: `${rating.fixing * share} N`, holder: '5000 kgf' }
        const form: PlaceForm = place === 'boardWall' ? 'ratedToggle' : place === 'concreteWall' ? 'metalAnchor' : 'anchorEye'
        const results = placeResults(loaded.document, loaded.solved, placeCandidates(place, form, loaded.solved.hanger, exactly)[0]?.changes ?? {}) ?? []
        return Math.max(...results.filter((l) => l.link === 'fixing').map((l) => l.utilisation ?? 0))
      }
      expect(used(1), place).toBeCloseTo(HOLDS_LIMIT.rated.value, 9)
      expect(used(0.9), place).toBeGreaterThan(HOLDS_LIMIT.rated.value)
    }
  })

  test('is larger over people, by no more than the reserve on ratings, and never asked of board overhead', () => {
    const over = (beneath: string) => packetRating(loadedOf(heavier(6, { 'place.beneath': beneath, 'place.reach': 'nobody' })), 'joistOverhead')?.fixing ?? NaN
    // Over furniture the drop may decide, which is an accident and has no reserve.
    const ratio = over('people') / over('furniture')
    expect(ratio).toBeGreaterThan(1.1)
    expect(ratio).toBeLessThanOrEqual(RESERVE_ON_ALLOWABLE.people.value / RESERVE_ON_ALLOWABLE.furniture.value)
    expect(packetRating(loadedOf(ordinary), 'boardCeiling')).toBeNull()
  })
})

describe('a heavier pot', () => {
  const masses = [1, 2.5, 4, 6, 9, 13, 19]
  const rows = masses.map((mass) => needsOf(heavier(mass, {})))

  /** Where a fixing stands in its form's list; one that is not found stands beyond its end. */
  function rankOf(mass: number, needs: PlaceNeeds, place: UsualPlace, form: PlaceForm): number {
    const fixing = needs.needs.find((n) => n.place === place)?.fixings.find((f) => f.form === form)
    if (fixing === undefined || !fixing.found) return Infinity
    const { hanger } = loadedOf(heavier(mass, {})).solved
    return placeCandidates(place, form, hanger, { fixing: '1 kgf', holder: '1 kgf' }).findIndex((c) => c.size === fixing.size && c.length === fixing.length && c.count === fixing.count && c.changes['fixing.penetration'] === fixing.changes['fixing.penetration'])
  }

  test('never needs less: no smaller fixing, no smaller rating', () => {
    for (let i = 1; i < masses.length; i += 1) {
      const [lighter, now] = [rows[i - 1], rows[i]]
      if (lighter === undefined || now === undefined) throw new Error('no row')
      for (const need of now.needs) {
        const before = lighter.needs.find((n) => n.place === need.place)
        expect(need.rating?.fixing ?? 0, need.place).toBeGreaterThanOrEqual(before?.rating?.fixing ?? 0)
        for (const { form } of need.fixings) expect(rankOf(masses[i] ?? NaN, now, need.place, form), `${need.place} ${form} at ${masses[i] ?? ''} kg`).toBeGreaterThanOrEqual(rankOf(masses[i - 1] ?? NaN, lighter, need.place, form))
      }
    }
  })

  test('and at some weight every fixing sold by its size is too small', () => {
    const tried = needsOf(heavier(90, { 'place.beneath': 'people' }))
    const sized: readonly PlaceForm[] = ['screwEye', 'screwHook', 'plug', 'toggle']
    expect(tried.needs.flatMap((n) => n.fixings).filter((f) => sized.includes(f.form) && f.found)).toEqual([])
  })
})

describe('typed outcomes', () => {
  test('without a pot it is reckoned with the heaviest pot the hanger may carry', () => {
    const needs = needsOf(documentOf({ ...ORDINARY, 'pot.have': 'no' }))
    expect(needs.pot).toBe('heaviest')
    expect(needs.watered).toBeGreaterThan(3)
  })

  test('without pot and build nothing is known of the weight', () => {
    expect(answerPlaceNeeds(documentOf({ 'pot.have': 'no' }))).toEqual({ ok: false, reason: 'noWeight' })
  })

  test('what cannot be read gives its problems', () => {
    expect(answerPlaceNeeds(documentOf({ 'pot.rim': '17 pots' }))).toMatchObject({ ok: false, reason: 'unread' })
  })

  test('board overhead alone is refused; a branch is proposed with the pull that it asks for', () => {
    const { needs } = needsOf(ordinary)
    expect(needs.find((n) => n.place === 'boardCeiling')).toMatchObject({ refused: 'plasterboardCeiling', fixings: [], rating: null })
    const branch = needs.find((n) => n.place === 'branch')?.fixings[0]
    expect(branch).toMatchObject({ found: true, changes: { 'place.support': 'overBeam', 'fixing.proof': expect.stringMatching(/^\d+ kg$/) as string } })
  })

  test('an open hook is never proposed over people', () => {
    for (const beneath of ['people', 'public']) {
      for (const [, { changes }] of foundIn(needsOf(heavier(3, { 'place.beneath': beneath })))) expect(changes['hook.kind']).not.toBe('open')
    }
    expect(foundIn(needsOf(heavier(3, { 'place.beneath': 'nothing' }))).some(([, { changes }]) => changes['hook.kind'] === 'open')).toBe(true)
  })

  test('for an ordinary hanger something is found everywhere but in board overhead', () => {
    const { needs } = needsOf(ordinary)
    expect(needs.filter(({ fixings }) => !fixings.some(({ found }) => found)).map(({ place }) => place)).toEqual(['boardCeiling'])
  })

  test('every form of fixing is tried somewhere', () => {
    const tried = new Set([ordinary, heavier(6, { 'place.support': 'wallHook' })].flatMap((d) => needsOf(d).needs.flatMap((n) => n.fixings.map((f) => f.form))))
    expect([...tried].toSorted()).toEqual([...PLACE_FORMS].toSorted())
  })

  test('a fixing that stood in the document is not mistaken for the one proposed', () => {
    const rated = patchDocument(ordinary, { 'fixing.rated': '900 kgf', 'fixing.count': '4', 'fixing.grain': 'end' })
    expect(needsOf(rated).needs).toEqual(needsOf(ordinary).needs)
  })
})

describe('what is beneath', () => {
  const choices = beneathChoices(loadedOf(ordinary))
  test('five answers, mildest first, none milder than the one before', () => {
    expect(choices.map(({ beneath }) => beneath)).toEqual(['nothing', 'furniture', 'wayThrough', 'people', 'public'])
    for (let i = 1; i < choices.length; i += 1) {
      expect(choices[i]?.reserve).toBeGreaterThanOrEqual(choices[i - 1]?.reserve ?? 0)
      expect(choices[i]?.rating).toBeGreaterThanOrEqual(choices[i - 1]?.rating ?? 0)
    }
  })
  test('an open hook will do just where the check lets one', () => {
    for (const { beneath, openHook } of choices) {
      const check = checkHanger(hangerOf(documentOf({ ...ORDINARY, 'hook.kind': 'open', 'place.beneath': beneath })))
      expect(check.links.some((l) => l.findings.some(({ code }) => code === 'HOOK_OPEN_OVER_PEOPLE')), beneath).toBe(!openHook)
    }
  })
  test('the second tie is among the cautions just where the check shows it', () => {
    for (const { beneath, cautions, redundant } of choices) {
      const check = checkHanger(hangerOf(patchDocument(EMPTY_DOCUMENT, { ...ORDINARY, 'place.beneath': beneath })))
      expect(cautions.includes('secondTie'), beneath).toBe(check.cautions.includes('secondTie'))
      expect(redundant).toBe(check.cautions.includes('secondTie'))
      for (const caution of cautions) expect(check.cautions, beneath).toContain(caution)
    }
  })
})
