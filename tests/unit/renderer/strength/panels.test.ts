import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { forceText, legSectionTable, numberText, PART_NAMES, RUNG_GAP_TEXTS, strengthLadder, type Patch } from '#core'
import SectionTable from '../../../../renderer/strength/SectionTable.vue'
import StrengthLadder from '../../../../renderer/strength/StrengthLadder.vue'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)

/** The ordinary hanger, but its cord known only by what is given. */
const ladderOf = (patch: Patch) => {
  const others = Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !['cord.rated', 'cord.diameter', 'cord.linearDensity'].includes(path)))
  const check = checkOf({ ...others, ...patch })
  return { core: strengthLadder(check.solved.hanger), page: mount(StrengthLadder, { props: { check, stale: false } }) }
}

describe('the strength ladder', () => {
  it('shows every way to know the cord, best first, with its pull or what would open it', () => {
    const { core, page } = ladderOf({ 'cord.diameter': '4 mm', 'cord.linearDensity': '8.3 g/m' })
    const items = page.findAll('li').map((item) => item.text())
    expect(items).toHaveLength(core.rungs.length)
    core.rungs.forEach(({ strength, gap }, i) => {
      expect(items[i]).toContain(strength === null ? 'not known' : forceText(strength.value))
      if (gap !== null) expect(items[i]).toContain(RUNG_GAP_TEXTS[gap])
    })
    expect(items.filter((item) => item.includes('not known')).length).toBeGreaterThan(1)
  })

  it('marks in words the one that counts', () => {
    const counting = (patch: Patch): readonly string[] => ladderOf(patch).page.findAll('li').filter((item) => item.text().includes('This one counts.')).map((item) => item.get('.name').text())
    expect(counting({ 'cord.diameter': '4 mm', 'cord.linearDensity': '8.3 g/m' })).toEqual(['grams per metre'])
    expect(counting({ 'cord.diameter': '4 mm', 'cord.linearDensity': '8.3 g/m', 'cord.rated': '310 N' })).toEqual(['breaking force stated by its maker'])
  })

  it('says of a weighed piece how heavy it is a metre, and that what it may break at is a range', () => {
    const { core, page } = ladderOf({ 'cord.diameter': '4 mm', 'cord.weighedMass': '83 g', 'cord.weighedLength': '10 m' })
    const { weighing } = core
    if (weighing === null) throw new Error('not weighed')
    const text = page.get('.weighing').text()
    expect(text).toContain('8.3 g/m (8300 tex)')
    expect(text).toContain(`from ${forceText(weighing.low)} to ${forceText(weighing.high)}: this is a range, not a promise`)
    expect(ladderOf({ 'cord.diameter': '4 mm' }).page.find('.weighing').exists()).toBe(false)
  })
})

describe('the table of sections', () => {
  it('lists what carries where and marks the weakest in words', () => {
    const check = checkOf({ ...ORDINARY, 'make.build': 'sinnet', 'make.strands': '6' })
    const page = mount(SectionTable, { props: { check, stale: false } })
    const sections = legSectionTable(check.solved.hanger)
    const rows = page.findAll('tbody tr').map((row) => row.findAll('th, td').map((cell) => cell.text()))
    expect(rows.map(([, strands]) => Number(strands))).toEqual(sections.map(({ strands }) => strands))
    expect(rows.map((row) => row[3])).toEqual(sections.map(({ effective }) => (effective === null ? 'not known' : numberText(effective))))
    const weakest = sections.find((section) => section.weakest)
    expect(rows.filter(([name]) => name?.includes('(weakest)')).map(([name]) => name)).toEqual([`${weakest === undefined ? '' : PART_NAMES[weakest.part]} (weakest)`])
  })
})
