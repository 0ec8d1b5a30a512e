import { expect, it } from 'vitest'
import { cordPlan, NO_PLAN_TEXTS, planFacts, planNotes, planRow, type CordPlanOutcome } from '#core'
import { partRow } from '../../../src/words/cordPlan'
import { hangerOf, ORDINARY } from '../hanger/hangerOf'
import { randomPatch } from '../check/randomPatch'

const plans: readonly CordPlanOutcome[] = Array.from({ length: 120 }, (_, i) => cordPlan(hangerOf(randomPatch(i + 900))))
const found = plans.flatMap((plan) => (plan.ok ? [plan] : []))

it('is an ordered range of cord for hangers of all kinds, never less than what is left to be seen of it', () => {
  expect(found.length).toBeGreaterThan(60)
  for (const { kinds, total } of found) {
    for (const { count, cut, strands } of kinds) {
      expect(count).toBeGreaterThan(0)
      expect(Number.isInteger(count)).toBe(true)
      expect(cut.low).toBeLessThanOrEqual(cut.likely)
      expect(cut.likely).toBeLessThanOrEqual(cut.high)
      const made = strands.flat().reduce((sum, { finished }) => sum + (finished ?? 0), 0)
      expect(cut.low).toBeGreaterThanOrEqual(made)
    }
    expect(total.likely).toBeCloseTo(kinds.reduce((sum, { cut, count }) => sum + count * cut.likely, 0), 9)
  }
})

it('is told without holes, or why there is none', () => {
  for (const plan of plans) {
    const texts = plan.ok
      ? [...plan.kinds.map(planRow), ...plan.kinds.flatMap(({ strands }) => strands.flat()).map(partRow)].flatMap(({ head, cells }) => [head, ...cells]).concat(planFacts(plan).flatMap(({ name, text }) => [name, text]), planNotes(plan))
      : [NO_PLAN_TEXTS[plan.reason]]
    for (const text of texts) expect(text).not.toMatch(/^$|undefined|NaN|Infinity|-\d/)
  }
})

it('says that a roll does not last, and that it may not', () => {
  const left = (onRoll: string): string => {
    const plan = cordPlan(hangerOf({ ...ORDINARY, 'cord.onRoll': onRoll }))
    return plan.ok ? planFacts(plan).find(({ name }) => name === 'Left on the roll')?.text ?? '' : ''
  }
  expect(left('20 m')).toMatch(/^none: it lacks/)
  expect(left('37 m')).toMatch(/may run out/)
  expect(left('100 m')).toMatch(/^\d.* to \d/)
})

it('needs more cord for every length that grows', () => {
  const total = (patch: Record<string, string>): number => {
    const plan = cordPlan(hangerOf({ ...ORDINARY, ...patch }))
    return plan.ok ? plan.total.likely : NaN
  }
  const usual = total({})
  for (const more of [{ 'make.totalLength': '115 cm' }, { 'make.legs': '5' }, { 'make.strands': '6' }, { 'cradle.second': '20 cm' }, { 'make.build': 'spiral' }]) expect(total(more), JSON.stringify(more)).toBeGreaterThan(usual)
  for (const less of [{ 'make.knotted': '20 cm' }, { 'make.build': 'plain' }, { 'cradle.kind': 'open' }]) expect(total(less), JSON.stringify(less)).toBeLessThan(usual)
})
