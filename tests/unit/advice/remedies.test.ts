import { describe, expect, test } from 'vitest'
import { answerDocument } from '../../../src/advice/answer'
import { checkPatched } from '../../../src/advice/evaluate'
import { heaviestPot, isOwn, potOfMass, weighedPatch } from '../../../src/advice/heaviestPot'
import { findRemedies } from '../../../src/advice/remedies'
import { smallestCord } from '../../../src/advice/smallestCord'
import { CATALOGUE_CORDS } from '../../../src/catalogue/cords'
import { governingOf } from '../../../src/check/checkHanger'
import { LINKS } from '../../../src/check/linkResult'
import { OWN_LINKS, ownHolds } from '../../../src/check/ownHolds'
import { isWorse } from '../../../src/check/verdict'
import { DEMOS } from '../../../src/hanger/demos'
import { EMPTY_DOCUMENT, patchDocument, type HangerDocument } from '../../../src/hanger/document'
import { parseDocument } from '../../../src/hanger/parse'
import { ORDINARY } from '../hanger/ordinaryPatch'
import { without } from '../hanger/without'

function demo(name: string): HangerDocument {
  const parsed = parseDocument(DEMOS.find((d) => d.file.startsWith(name))?.text ?? '')
  if (!parsed.ok) throw new Error(name)
  return parsed.document
}

function answerOf(document: HangerDocument) {
  const outcome = answerDocument(document)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.answer
}

describe('remedies', () => {
  const document = demo('glazed')
  const { check, remedies } = answerOf(document)

  test('there are at least three kinds, each found by checking again', () => {
    expect(new Set(remedies.map((r) => r.code)).size).toBeGreaterThanOrEqual(3)
    for (const remedy of remedies) {
      const after = checkPatched(document, remedy.patch)
      expect(after?.verdict).toBe(remedy.verdict)
      expect(after?.governing?.utilisation ?? null).toBe(remedy.utilisation)
    }
  })

  test('each improves the link it mends and leaves no other with a worse verdict', () => {
    for (const remedy of remedies) {
      const after = checkPatched(document, remedy.patch)
      for (const link of LINKS) {
        const before = governingOf(check.links.filter((l) => l.link === link))
        const now = governingOf(after?.links.filter((l) => l.link === link) ?? [])
        if (before === null || now === null) continue
        if (link === remedy.link) expect(isWorse(before.verdict, now.verdict) || (now.utilisation ?? 0) < (before.utilisation ?? Infinity), remedy.code).toBe(true)
        else expect(isWorse(now.verdict, before.verdict), `${remedy.code} on ${link}`).toBe(false)
      }
    }
  })

  test('those for the governing link come first', () => {
    expect(remedies[0]?.link).toBe(check.governing?.link)
  })

  test('the heavy glazed pot over a seat can be mended step by step', () => {
    let at = document
    const steps: string[] = []
    for (let i = 0; i < 16; i++) {
      const answer = answerOf(at)
      if (!isWorse(answer.check.verdict, 'just holds')) break
      const mends = answer.remedies.filter((r) => !isWorse(r.linkVerdict, 'just holds'))
      const next = mends[0] ?? answer.remedies[0]
      if (!next) break
      steps.push(next.code)
      at = patchDocument(at, next.patch)
    }
    expect(answerOf(at).check.verdict, steps.join(' > ')).toMatch(/^(holds|just holds)$/)
  })

  test('out of the wind and out of reach are offered where they mend, not elsewhere', () => {
    const thin = { ...ORDINARY, 'hook.kind': 'latched', 'hook.wire': '4 mm', 'hook.projection': '35 mm', 'weighed.mass': '2 kg', 'weighed.state': 'flooded' }
    const codes = (patch: object) => answerOf(patchDocument(EMPTY_DOCUMENT, { ...thin, ...patch })).remedies.map((r) => r.code)
    expect(codes({ 'place.reach': 'child' })).toContain('outOfReach')
    expect(codes({ 'place.exposure': 'outdoors', 'place.wind': 'exposed', 'cord.fibre': 'polyester', 'cord.make': 'braided' })).toContain('outOfWind')
    expect(codes({}).filter((code) => code === 'outOfReach' || code === 'outOfWind')).toEqual([])
  })

  test('a hanger already made is offered only what can still be changed', () => {
    const made = patchDocument(document, { 'make.stage': 'made' })
    const codes = answerOf(made).remedies.map((r) => r.code)
    expect(codes.length).toBeGreaterThan(0)
    expect(codes.filter((c) => ['thickerCord', 'moreStrands', 'plainLegs', 'moreLegs', 'longerHanger', 'netCradle'].includes(c))).toEqual([])
  })

  test('nothing is proposed that has already been done', () => {
    for (const remedy of remedies) expect(Object.entries(remedy.patch).some(([path, text]) => document.typed[path as 'pot.rim'] !== text)).toBe(true)
    const mended = patchDocument(document, { 'hook.kind': 'closed' })
    expect(findRemedies(mended, answerOf(mended).check).map((r) => r.code)).not.toContain('closedEye')
  })
})

describe('the heaviest pot', () => {
  const document = patchDocument(EMPTY_DOCUMENT, ORDINARY)
  const heaviest = heaviestPot(document)

  test('holds, and a little more does not', () => {
    const holds = (mass: number) => checkPatched(document, weighedPatch(mass))?.links.every((l) => l.side === 'place' || !isWorse(l.verdict, 'just holds'))
    expect(heaviest).not.toBeNull()
    expect(holds(heaviest?.watered ?? 0)).toBe(true)
    expect(holds((heaviest?.watered ?? 0) + 0.05)).toBe(false)
  })

  test('is asked of all parts of the hanger, and of no part of the place', () => {
    const hangers = [...DEMOS.map(({ file }) => demo(file)), patchDocument(document, { 'ring.lies': 'level' })]
    const all = hangers.flatMap((hanger) => [2, 30].map((mass) => checkPatched(potOfMass(hanger)(mass), {})))
    const own = new Set(all.flatMap((check) => check?.links.filter(isOwn).map(({ link }) => link) ?? []))
    expect(LINKS.filter((link) => own.has(link))).toEqual(OWN_LINKS)
    for (const check of all) expect(check && ownHolds(check.solved)).toBe(check?.links.every((l) => !isOwn(l) || !isWorse(l.verdict, 'just holds')))
  })

  test('is heavier on stronger cord and lighter over people', () => {
    const at = (patch: object) => heaviestPot(patchDocument(document, patch))?.watered ?? 0
    expect(at({ 'cord.diameter': '4 mm', 'cord.linearDensity': '8.5 g/m', 'gathering.wraps': '20' })).toBeGreaterThan(heaviest?.watered ?? 0)
    expect(at({ 'place.beneath': 'people' })).toBeLessThan(heaviest?.watered ?? 0)
  })

  test('outdoors is told too: with its wind it holds, and a little more does not', () => {
    const outdoors = patchDocument(document, { 'cord.fibre': 'polyester', 'cord.make': 'braided', 'place.exposure': 'outdoors', 'place.life': '1 year', 'gathering.wraps': '30' })
    const most = heaviestPot(outdoors)
    const holds = (mass: number) => checkPatched(outdoors, weighedPatch(mass))?.links.every((l) => l.side === 'place' || l.link === 'load' || !isWorse(l.verdict, 'just holds'))
    expect(most?.check.solved.wholeCases).toContain('gust')
    expect([holds(most?.watered ?? 0), holds((most?.watered ?? 0) + 0.05)]).toEqual([true, false])
  })

  test('is a net one: what stood on the scale beside the last weighing does not matter', () => {
    expect(heaviestPot(patchDocument(document, { 'weighed.tare': '1.3 kg' }))?.watered).toBe(heaviest?.watered)
  })

  test('leaves room for the cover pot and saucer that hang with it', () => {
    const covered = heaviestPot(patchDocument(document, { 'saucer.mass': '300 g', 'saucer.width': '22 cm', 'saucer.depth': '2 cm' }))?.watered ?? 0
    expect(covered).toBeLessThan((heaviest?.watered ?? 0) - 0.3)
  })

  test('does not depend on the place', () => {
    expect(heaviestPot(patchDocument(document, { 'place.substrate': 'unknown', 'hook.rated': '6 N' }))?.watered).toBe(heaviest?.watered)
  })
})

describe('the smallest cord', () => {
  const document = patchDocument(EMPTY_DOCUMENT, { 'make.have': 'no', 'pot.rim': '19 cm', 'pot.material': 'terracotta', 'pot.drainage': 'hole', 'place.beneath': 'furniture' })

  test('holds where the next thinner one of the catalogue does not', () => {
    const found = smallestCord(document)
    expect(found).not.toBeNull()
    const thinner = CATALOGUE_CORDS.filter((c) => c.diameter < (found?.cord.diameter ?? 0)).at(-1)
    const cordLinks = (patch: object) => checkPatched(document, patch)?.links.filter((l) => ['leg', 'gatheringTurn', 'wrapHoop'].includes(l.link)).some((l) => isWorse(l.verdict, 'just holds'))
    expect(cordLinks(found?.patch ?? {})).toBe(false)
    expect(cordLinks({ ...found?.patch, 'cord.diameter': `${(thinner?.diameter ?? 0) * 1000} mm` })).toBe(true)
  })

  test('is thicker for a heavier pot', () => {
    const heavier = smallestCord(patchDocument(document, { 'pot.rim': '28 cm' }))
    expect(heavier?.cord.diameter).toBeGreaterThan(smallestCord(document)?.cord.diameter ?? 1)
  })
})

describe('remedies for strands', () => {
  const patched = (patch: Record<string, string>): HangerDocument => patchDocument(EMPTY_DOCUMENT, { ...ORDINARY, ...patch })
  const codes = (patch: Record<string, string>) => findRemediesOf(patched(patch)).map((r) => r.code)
  const findRemediesOf = (document: HangerDocument) => {
    const { check } = answerOf(document)
    return findRemedies(document, check)
  }
  // 9 kg on plain legs of thick strands, cut through by the pot's edge.
  const SHARP = { 'pot.edge': 'sharp', 'make.build': 'plain', 'cord.diameter': '6 mm', 'cord.linearDensity': '15 g/m', 'ring.wire': '8 mm', 'weighed.mass': '9 kg', 'make.stage': 'made' }

  test('a sharp edge that decides is padded, made or planned', () => {
    expect(codes(SHARP)).toContain('padEdge')
    expect(codes({ ...SHARP, 'pot.edge': 'rounded' })).not.toContain('padEdge')
  })

  test('a join of which nothing is known is left out, while it is planned', () => {
    expect(codes({ 'make.joined': 'glued', 'make.stage': 'planned' })).toContain('wholeStrands')
    expect(codes({ 'make.joined': 'glued', 'make.stage': 'made' })).not.toContain('wholeStrands')
  })

  test('more strands bring their share of told filler cords', () => {
    const remedy = findRemediesOf(patched({ 'weighed.mass': '20 kg', 'make.strands': '4', 'make.fillers': '3' })).find((r) => r.code === 'moreStrands')
    expect(Number(remedy?.patch['make.fillers'])).toBe(Math.floor((3 * Number(remedy?.patch['make.strands'])) / 4))
  })

  test('thicker cord of which a piece was weighed weighs more', () => {
    const document = patchDocument(EMPTY_DOCUMENT, { ...without(ORDINARY, 'cord.linearDensity'), 'weighed.mass': '12 kg', 'cord.weighedMass': '48 g', 'cord.weighedLength': '10 m' })
    const remedy = findRemediesOf(document).find((r) => r.code === 'thickerCord')
    const ratio = Number.parseFloat(remedy?.patch['cord.diameter'] ?? '') / 3
    expect(Number.parseFloat(remedy?.patch['cord.weighedMass'] ?? '') / 48).toBeCloseTo(ratio ** 2, 3)
  })
})

describe('a stick too thin, on too short a cord, under an S-hook', () => {
  const planned: HangerDocument = patchDocument(EMPTY_DOCUMENT, {
    ...ORDINARY, 'make.top': 'stick', 'stick.wood': 'americanBeech', 'stick.diameter': '10 mm', 'stick.grain': 'straight', 'stick.length': '40 cm', 'stick.span': '36 cm', 'stick.bunch': '10 cm',
    'stick.topCord': '38 cm', 'stick.topStrands': '2', 'connector.kind': 'sHook', 'connector.joint': 'open', 'place.beneath': 'people',
  })
  const of = (document: HangerDocument) => answerOf(document).remedies

  test('is offered a thicker dowel, a longer or stronger top cord, and a rated carabiner', () => {
    const codes = of(planned).map((r) => `${r.link}: ${r.code}`)
    expect(codes).toEqual(expect.arrayContaining(['stick: thickerStick', 'topCord: moreTopStrands', 'connector: ratedConnector']))
    expect(codes.some((code) => code.endsWith('longerTopCord'))).toBe(true)
  })

  test('once made keeps its dowel: its knots are on it', () => {
    expect(of(patchDocument(planned, { 'make.stage': 'made' })).map((r) => r.code)).not.toContain('thickerStick')
  })

  test('the carabiner holds with the rating that is asked for', () => {
    expect(of(planned).find((r) => r.code === 'ratedConnector')).toMatchObject({ linkVerdict: expect.stringMatching(/holds$/) as string, patch: { 'connector.kind': 'carabiner' } })
  })
})
