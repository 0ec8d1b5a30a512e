import { describe, expect, it } from 'vitest'
import { checkHanger, editField, heaviestPot, patchDocument, resolveDocument, type HangerDocument } from '#core'
import { bestFirst, potOf, potTaken, tellsPot, type PotTaken } from '../../../src/advice/hangersForPot'
import { potsThatFit, withoutPot } from '../../../src/advice/potsThatFit'
import { sizeChart, takes, type ChartProgress, type SizeChart } from '../../../src/advice/sizeChart'
import { potTakenText } from '../../../src/words/sizeChart'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const strong = { ...documentOf(ORDINARY), name: 'Strong' }
/** Of the same cord by its diameter only, of which no weight may be told. */
const unknown = editField(editField(strong, 'cord.linearDensity', null), 'cord.diameter', null)
const RIMS = [0.14, 0.2, 0.4]

function run(hangers: readonly HangerDocument[]): { readonly steps: readonly ChartProgress[]; readonly chart: SizeChart } {
  const steps: ChartProgress[] = []
  const running = sizeChart(hangers.map((document, i) => ({ file: `${i}`, document })), { rims: RIMS, materials: ['terracotta', 'plastic'] })
  let step = running.next()
  for (; step.done !== true; step = running.next()) steps.push(step.value)
  return { steps, chart: step.value }
}
const { steps, chart } = run([strong, unknown])

describe('a size chart', () => {
  it('tells each cell as the check of that hanger with that pot does', () => {
    const bare = withoutPot(strong)
    if (bare === null) throw new Error('unread')
    const read = resolveDocument(patchDocument(bare, { 'pot.have': 'yes', 'pot.rim': '20 cm', 'pot.material': 'terracotta' }))
    if (!read.ok) throw new Error('unread')
    const check = checkHanger(read.hanger)
    const cell = chart.rows[0]?.cells.find(({ rim, material }) => rim === 0.2 && material === 'terracotta')
    expect(cell).toMatchObject({ verdict: check.verdicts.hanger, watered: check.solved.potted.watered.mass.high })
    expect(takes(cell!)).toBe(true)
  })

  it('agrees with the pots that fit on the customer sheet', () => {
    const { watered } = heaviestPot(strong) ?? { watered: 0 }
    expect(chart.rows[0]?.heaviest).toBe(watered)
    const { runs } = potsThatFit(strong, watered, 'plastic')
    const fits = (rim: number): boolean => runs.some(({ from, to }) => rim >= from && rim <= to)
    expect(chart.rows[0]?.cells.filter(({ material }) => material === 'plastic').map((cell) => [cell.rim, takes(cell)])).toEqual(RIMS.map((rim) => [rim, fits(rim)]))
  })

  it('tells no weight of a hanger that its own pot is too heavy for, and tries other pots all the same', () => {
    const overloaded = run([editField(strong, 'weighed.mass', '70 kg')]).chart.rows[0]
    expect(overloaded).toMatchObject({ isTold: false })
    expect(overloaded?.cells.some(takes)).toBe(true)
    expect(chart.rows.map(({ isTold }) => isTold)).toEqual([true, false])
  })

  it('promises nothing of a hanger of which no weight may be told', () => {
    expect(chart.rows[1]?.heaviest).toBeNull()
    expect(chart.rows[1]?.cells.some(takes)).toBe(false)
  })

  it('can be stopped after each material, and hands out each row once', () => {
    expect(steps.map(({ done, row }) => [done, row?.file ?? null])).toEqual([[3, null], [6, '0'], [9, null], [12, '1']])
    expect(steps.every(({ of }) => of === 12)).toBe(true)
    expect(steps.flatMap(({ row }) => row ?? [])).toEqual(chart.rows)
  })
})

describe('which hangers take a pot', () => {
  const pot = documentOf({ 'pot.rim': '18 cm', 'pot.height': '16 cm', 'pot.base': '12 cm', 'weighed.mass': '3.2 kg', 'weighed.state': 'watered', 'make.legs': '3', 'cord.fibre': 'jute' })
  const ask = (hangers: readonly HangerDocument[], asked: HangerDocument): readonly PotTaken[] => bestFirst(hangers.map((document, i) => potTaken({ file: `${i}`, document }, asked)))

  it('takes the pot alone from the file it is told in', () => {
    expect(potOf(pot)).toEqual({ 'pot.have': 'yes', 'pot.rim': '18 cm', 'pot.height': '16 cm', 'pot.base': '12 cm', 'weighed.mass': '3.2 kg', 'weighed.state': 'watered' })
  })

  it('can be asked of a pot by its rim or weight only, and of none that is not there', () => {
    expect([documentOf({ 'pot.rim': '18 cm' }), documentOf({ 'weighed.mass': '3 kg' }), documentOf({ 'pot.material': 'plastic' }), documentOf({ 'pot.rim': '18 cm', 'pot.have': 'no' })].map(tellsPot)).toEqual([true, true, false, false])
  })

  it('names those that take it first', () => {
    expect(ask([unknown, strong], pot).map(({ file, takes: does }) => [file, does])).toEqual([['1', true], ['0', false]])
  })

  it('weighs the same in every hanger, whatever mix or plant another pot had there', () => {
    const bySize = documentOf({ 'pot.rim': '18 cm', 'pot.height': '16 cm', 'pot.base': '12 cm' })
    const others = [strong, patchDocument(strong, { 'mix.kind': 'cactus', 'layer.depth': '4 cm', 'plant.kind': 'succulent', 'pot.drainage': 'none' })]
    expect(new Set(ask(others, bySize).map(({ watered }) => watered)).size).toBe(1)
  })

  it('does not exceed what a hanger is sold for', () => {
    const heavy = editField(pot, 'weighed.mass', '60 kg')
    expect(ask([strong], heavy)[0]).toMatchObject({ takes: false, overLimit: true })
    const [overloaded] = ask([editField(strong, 'weighed.mass', '70 kg')], heavy)
    expect(overloaded).toMatchObject({ takes: false, overLimit: true, isTold: false })
    // Its weight is not told in words either.
    expect(overloaded && potTakenText(overloaded)).toMatch(/^Too heavy for this hanger\. The pot weighs/)
  })
})
