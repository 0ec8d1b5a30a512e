import { describe, expect, it } from 'vitest'
import { SHEET_KINDS, type SheetFacts } from '#core'
import type { Inspection } from '../../../src/hanger/inspection'
import type { Limit } from '../../../src/sheet/facts'
import { markOf } from '../../../src/sheet/heaviestFigure'
import { ownVerdict } from '../../../src/advice/ownVerdict'
import { kilograms as inKilograms } from '../../../src/quantity/si'
import { blocksOf, ofKind, textOf } from './blocksOf'
import { factsOf, factsOfDemo, FAILING, OPTIONS, SHEET_DEMOS, UNKNOWN } from './factsOf'

const customer = (facts: SheetFacts, draft = false) => SHEET_KINDS.customer(facts, { ...OPTIONS, draft })
const TESTED = { 'testHang.mass': '30 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm', 'testHang.date': '2026-10-20' } as const
const MADE = { 'make.maker': 'Marit Holm', 'make.contact': 'marit@knots.example', 'make.code': 'A7', 'make.date': '2026-10-18', 'reserve.own': '2.6', 'reserve.reason': 'the shop asks for it' } as const
function limited(facts: SheetFacts): SheetFacts & { readonly limit: Limit } {
  const { limit } = facts
  if (limit === null) throw new Error('this hanger has a limit')
  return { ...facts, limit }
}
const kilograms = (value: string): number => Number(/^([\d.]+) kg/.exec(value)?.[1])
const pounds = (value: string): number => Number(/([\d.]+) lb$/.exec(value)?.[1])

describe('the customer sheet of a hanger that holds', () => {
  const made = factsOf(MADE)
  const sheet = customer(made)

  it('has a front and a back, each with a foot', () => {
    expect(sheet.kind).toBe('customer')
    expect(sheet.pages.map(({ side }) => side)).toEqual(['front', 'back'])
    for (const { foot } of sheet.pages) expect(foot.length).toBeGreaterThan(0)
  })

  it('says on its front: one weight, four labels, five steps, three nevers, four signs', () => {
    expect(ofKind(sheet, 'figure')).toHaveLength(1)
    expect(ofKind(sheet, 'drawing').map(({ labels }) => labels.length)).toEqual([4])
    expect(ofKind(sheet, 'steps').map(({ items }) => items.length)).toEqual([5])
    expect(ofKind(sheet, 'nevers').map(({ items }) => items.length)).toEqual([3])
    expect(ofKind(sheet, 'pictures').map(({ items }) => items.length)).toEqual([4])
    expect(blocksOf({ ...sheet, pages: sheet.pages.slice(1) }).some(({ kind }) => kind === 'figure' || kind === 'steps')).toBe(false)
  })

  it('tells days with their month by its name, and the months of the year to look', () => {
    const text = textOf(sheet)
    expect(text).toContain('Sheet of')
    expect(text).toContain('26 November 2026')
    expect(text).toContain('Replace it by 18 October 2029.')
    expect(text).toContain('every May and November')
    expect(text).not.toMatch(/\d{4}-\d{2}-\d{2}/)
  })

  it('pulls the fixing with half more than hangs, and hangs no more water than the weight told', () => {
    const facts = made
    const all = facts.limit?.needs.heaviest ?? 0
    const [, pull, test] = ofKind(sheet, 'steps')[0]?.items ?? []
    const pulled = Number(/with ([\d.]+) kg/.exec(pull?.text ?? '')?.[1])
    expect(pulled).toBeGreaterThanOrEqual(1.5 * all)
    expect(pulled).toBeLessThan(1.5 * all + 0.11)
    expect(Number(/with ([\d.]+) litres/.exec(test?.text ?? '')?.[1])).toBeLessThanOrEqual(facts.limit?.watered ?? 0)
  })

  it('carries the line that it is no certificate, and the reserve', () => {
    const text = textOf(sheet)
    expect(text).toContain('not a certificate')
    expect(text).toContain('Local building codes and licensed practice come first.')
    expect(text).toContain('Reason given: “the shop asks for it”.')
    expect(textOf(customer(factsOf({})))).toContain('Reserve 2, as usual with furniture beneath.')
  })
})

describe('the weight', () => {
  it.each(SHEET_DEMOS)('%s: is never above what the check finds, in either unit', (name) => {
    const { answer, limit } = factsOfDemo(name)
    const figures = ofKind(customer(factsOfDemo(name)), 'figure')
    expect(figures).toHaveLength(limit === null ? 0 : 1)
    for (const { value } of figures) {
      expect(kilograms(value)).toBeLessThanOrEqual(answer.heaviest ?? 0)
      expect(kilograms(value)).toBeGreaterThan((answer.heaviest ?? 0) - 0.1001)
      expect(pounds(value) * 0.45359237).toBeLessThanOrEqual(answer.heaviest ?? 0)
    }
    expect(['holds', 'just holds']).toContain(limit === null ? 'holds' : ownVerdict(limit.check))
  })

  it('looks calculated or test-hung, by word, mark and meaning', () => {
    const [calculated] = ofKind(customer(factsOf({})), 'figure')
    const tested = customer(factsOf(TESTED))
    const [hung] = ofKind(tested, 'figure')
    expect([calculated?.mark, hung?.mark]).toEqual(['calculated', 'testHung'])
    expect(calculated?.marked).toMatch(/^Calculated/)
    expect(hung?.marked).toBe('Test-hung with 30 kg (66.1 lb) for 26 hours on 20 October 2026.')
    expect(textOf(tested)).toContain('“Test-hung” means')
    expect(textOf(tested)).not.toContain('“Calculated” means')
  })

  it('is not called test-hung where less hung, or where it slipped', () => {
    const { limit, answer } = limited(factsOf(TESTED))
    expect([limit.watered, 30].map((watered) => markOf({ ...limit, watered }, answer.check).mark)).toEqual(['testHung', 'testHung'])
    expect(markOf({ ...limit, watered: 30.5 }, answer.check)).toEqual({ mark: 'calculated', marked: 'Calculated. Its test hang was lighter: 30.0 kg (66.1 lb).' })
    expect(ofKind(customer(factsOf({ ...TESTED, 'testHang.slip': '5 mm' })), 'figure').map(({ mark }) => mark)).not.toContain('testHung')
  })

  it('is not called test-hung once strands were lost or mended after the test, or nobody noted when', () => {
    const { limit, answer } = limited(factsOf(TESTED))
    const markAfter = (what: Inspection['what'], date: string | null): string => {
      const { solved } = limit.check
      const inspections: readonly Inspection[] = [{ row: 0, what, date, leg: 2, strands: 1, note: null }]
      return markOf({ ...limit, check: { ...limit.check, solved: { ...solved, hanger: { ...solved.hanger, inspections } } } }, answer.check).mark
    }
    expect((['2026-10-01', '2026-11-01', null] as const).map((date) => markAfter('strandGone', date))).toEqual(['testHung', 'calculated', 'calculated'])
    expect(markAfter('looked', '2026-11-01')).toBe('testHung')
    expect(markAfter('repaired', '2026-11-01')).toBe('calculated')
  })

  it('of pots one under another is not called test-hung where one of them hung lighter than it may', () => {
    const { limit, answer } = limited(factsOfDemo('two-tiers-at-the-landing-window'))
    expect(markOf(limit, answer.check).marked).toMatch(/^Calculated\. Its test hang of 16 kg .* shared/)
    const { solved } = limit.check
    const tested = (mass: number, where: 'all' | 'first') =>
      markOf({ ...limit, check: { ...limit.check, solved: { ...solved, hanger: { ...solved.hanger, answers: { ...solved.hanger.answers, 'testHang.mass': inKilograms(mass), 'tiers.tested': where } } } } }, answer.check).mark
    // 2.6 of 4.4 kg are the first pot’s.
    const enough = (limit.watered * 4.4) / 2.6
    expect([tested(enough + 0.1, 'all'), tested(enough - 0.1, 'all'), tested(enough + 9, 'first')]).toEqual(['testHung', 'calculated', 'calculated'])
  })

  it('is told of a hanger without a pot, and then alone', () => {
    const facts = factsOf({ 'pot.have': 'no', 'weighed.mass': '', 'weighed.state': '' })
    const sheet = customer(facts)
    expect(ofKind(sheet, 'figure')).toHaveLength(1)
    expect(textOf(sheet)).not.toContain('its own pot')
  })
})

describe('a hanger of which no weight may be told', () => {
  it('that fails gets what must change in place of its sheet: findings and remedies, and no figure', () => {
    const sheet = customer(factsOf(FAILING))
    expect(sheet.kind).toBe('mustChange')
    expect(sheet.notices).toEqual([{ code: 'FAILS' }])
    expect(ofKind(sheet, 'figure')).toEqual([])
    expect(ofKind(sheet, 'steps')).toEqual([])
    expect(textOf(sheet)).toContain('This hanger fails.')
    expect(ofKind(sheet, 'heading').map(({ text }) => text)).toEqual(expect.arrayContaining([expect.stringMatching(/^Legs: fails/), 'What mends a part']))
    expect(textOf(sheet)).not.toMatch(/Heaviest pot/)
  })

  it('of which not enough is known says what would settle it', () => {
    const sheet = customer(factsOf(UNKNOWN))
    expect(sheet.kind).toBe('notKnown')
    expect(sheet.notices).toEqual([{ code: 'NOT_KNOWN' }])
    expect(ofKind(sheet, 'figure')).toEqual([])
    expect(textOf(sheet)).toContain('Weigh 10 m of it')
  })

  it('may be printed as a draft: marked, without a weight, without a number for pull or test', () => {
    for (const [patch, marked] of [[FAILING, /the hanger fails/], [UNKNOWN, /not enough is known/]] as const) {
      const sheet = customer(factsOf(patch), true)
      expect(sheet.kind).toBe('customer')
      expect(sheet.draft).toMatch(marked)
      expect(ofKind(sheet, 'figure')).toEqual([])
      expect(textOf(sheet)).toContain('No weight may be told')
      expect(ofKind(sheet, 'steps')[0]?.items.map(({ text }) => text).join(' ')).not.toMatch(/\d (kg|litres)/)
    }
  })

  it('is no draft unless asked', () => {
    expect(customer(factsOf({})).draft).toBeNull()
    expect(customer(factsOf({}), true).draft).toMatch(/DRAFT/)
  })
})

describe('the place', () => {
  const boxes = (facts: SheetFacts) => ofKind(customer(facts), 'box')

  it('that is not known stops nothing, and is asked for', () => {
    const facts = factsOf({ 'place.substrate': 'unknown' })
    expect(ofKind(customer(facts), 'figure')).toHaveLength(1)
    expect(boxes(facts).map(({ title, mark }) => [title, mark])).toEqual([['Ask before you drill', 'ask']])
    expect(ofKind(customer(facts), 'steps')[0]?.items[0]?.text).toMatch(/^Ask first/)
  })

  it('that fails is told not to be used, and the hanger keeps its weight', () => {
    const facts = factsOf({ 'place.substrate': 'plasterboard' })
    expect(ofKind(customer(facts), 'figure')).toHaveLength(1)
    expect(boxes(facts).map(({ mark }) => mark)).toEqual(['stop'])
    expect(ofKind(customer(facts), 'steps')[0]?.items[0]?.text).toMatch(/^Ask first/)
  })

  it('that bears its own pot only is tried with no more than that', () => {
    const facts = factsOf({ 'weighed.mass': '4.6 kg', 'hook.rated': '7 kgf', 'place.known': 'told' })
    expect(facts.answer.check.verdicts.place).toMatch(/holds/)
    expect(facts.limit?.check.verdicts.place).toBe('fails')
    const own = facts.answer.check.solved.potted.watered.mass.high
    const test = ofKind(customer(facts), 'steps')[0]?.items[2]?.text ?? ''
    expect(boxes(facts).map(({ title }) => title)).toEqual(['Where it hangs'])
    expect(textOf(customer(facts))).toContain('as it was told to us')
    expect(textOf(customer(facts))).toMatch(/There it (just )?holds with its own pot of up to [\d.]+ kg \([\d.]+ lb\), watered\. Hang no heavier one there\./)
    expect(ofKind(customer(facts), 'nevers')[0]?.items[0]).toMatch(/^Never heavier there than [\d.]+ kg/)
    expect(Number(/with ([\d.]+) litre/.exec(test)?.[1])).toBeLessThanOrEqual(own)
  })

  it('that carries too little says how much too little, and asks the customer to enter nothing', () => {
    const [box] = boxes(factsOf({ 'hook.rated': '2 kgf' }))
    const text = box?.blocks.map((block) => ('text' in block ? block.text : '')).join('\n')
    expect(box?.mark).toBe('stop')
    expect(text).toMatch(/^Hook: asked \d{3} % of what it may carry\.$/m)
    expect(text).not.toMatch(/enter|lead hole/i)
  })

  it('that is an untested branch is pulled with what it asks for, told once', () => {
    const facts = factsOf({ 'place.support': 'overBeam', 'place.substrate': 'branch' })
    const asked = limited(facts).limit.check.links.flatMap(({ findings }) => findings).flatMap((f) => (f.code === 'BRANCH_UNTESTED' ? [f.testMass] : []))
    expect(Number(/with ([\d.]+) kg/.exec(ofKind(customer(facts), 'steps')[0]?.items[1]?.text ?? '')?.[1])).toBeGreaterThanOrEqual(Math.max(...asked))
    expect(JSON.stringify(boxes(facts))).toContain('as the second step says')
    expect(JSON.stringify(boxes(facts))).not.toMatch(/\d kg/)
  })
})

describe('several pots', () => {
  it('under one another are tried and weighed each', () => {
    const sheet = customer(factsOfDemo('two-tiers-at-the-landing-window'))
    expect(ofKind(sheet, 'steps')[0]?.items[2]?.text).toMatch(/from the top [\d.]+ litres \([^)]*\), 1\.8 litres \([^)]*\), each less/)
    expect(textOf(sheet)).toContain('All its pots and plants')
  })

  it('on a stick from two hooks have both pulled, and are not told to be lighter than they are', () => {
    const sheet = customer(factsOfDemo('herbs-in-a-row'))
    const [fix, pull] = ofKind(sheet, 'steps')[0]?.items ?? []
    expect([fix?.text, pull?.text]).toEqual([expect.stringContaining('each of the two hooks'), expect.stringContaining('Pull each hook in place')])
    expect(ofKind(sheet, 'nevers')[0]?.items[0]).toBe('Never heavier there than 1.35 kg (2.97 lb), watered.')
    expect(textOf(sheet)).toContain('Each of its two hooks needs this.')
  })
})

describe('maker and contact', () => {
  it('are at the foot where they are given', () => {
    const text = textOf(customer(factsOf(MADE)))
    for (const said of ['Made by', 'Marit Holm', 'marit@knots.example', 'A7', '18 October 2026']) expect(text).toContain(said)
  })

  it('are not spoken of where they are missing, and the maker hears of it', () => {
    const sheet = customer(factsOf({}))
    expect(sheet.notices.map(({ code }) => code)).toEqual(['NO_MAKER', 'NO_CONTACT', 'NO_TAG_CODE', 'NO_MADE_DATE'])
    expect(textOf(sheet)).not.toMatch(/Made by|Reach us|Tag$/m)
  })
})
