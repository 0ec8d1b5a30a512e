import { mount } from '@vue/test-utils'
import { beforeEach, describe, expect, it } from 'vitest'
import { editField, EMPTY_DOCUMENT, findingText, governingOf, isSettling, percentText, settlingFields, type FieldPath, type Finding, type Patch } from '#core'
import LinkCard from '../../../../renderer/components/LinkCard.vue'
import VerdictBand from '../../../../renderer/components/VerdictBand.vue'
import LoadGauge from '../../../../renderer/drawing/LoadGauge.vue'
import { useDocument } from '../../../../renderer/stores/document'
import { useResult } from '../../../../renderer/stores/result'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { settled, startPage } from '../page'

beforeEach(startPage)

/** The ordinary hanger, its cord known by its diameter only. */
const BY_DIAMETER: Patch = { ...Object.fromEntries(Object.entries(ORDINARY).filter(([path]) => !path.startsWith('cord.') || path === 'cord.fibre')), 'cord.diameter': '3.2 mm' }

const provided = { global: { stubs: { GuideOffers: true, LegPanels: true } } }

describe('a part of which not enough is known', () => {
  it('says on its card what would settle it before any number', () => {
    const check = checkOf(BY_DIAMETER)
    const worst = governingOf(check.links.filter(({ link }) => link === 'leg'))
    if (worst?.verdict !== 'not enough known' || worst.utilisation === null) throw new Error('a cord of 3.2 mm known by its diameter is not enough known')
    const text = mount(LinkCard, { props: { check, part: 'leg', stale: false }, ...provided }).text()
    const settle = worst.findings.find(isSettling)
    if (settle === undefined) throw new Error('it can be settled')
    expect(text).toContain(findingText(settle))
    expect(text.indexOf(findingText(settle))).toBeLessThan(text.indexOf(percentText(worst.utilisation)))
    expect(text.split(findingText(settle))).toHaveLength(2)
  })

  it('says so beside the verdict too, without a share', async () => {
    const source = useDocument()
    source.load(Object.entries(BY_DIAMETER).reduce((document, [path, text]) => editField(document, path as FieldPath, text), EMPTY_DOCUMENT))
    const band = mount(VerdictBand)
    await settled()
    const governing = useResult().check?.governing
    expect(governing?.verdict).toBe('not enough known')
    expect(band.get('.reason').text()).toMatch(/^What would settle it, at /)
    expect(band.text()).not.toContain(percentText(governing?.utilisation ?? NaN))
  })

  it('is told on the gauge with a doubt, and one that is known without', () => {
    const words = (doubtful: boolean): string => mount(LoadGauge, { props: { share: 2.3, holdsTo: 0.65, fails: false, doubtful } }).text()
    expect(words(true)).toBe('230 %?')
    expect(words(false)).toBe('230 %')
  })

  it('whose verdict is certain keeps its share on top', () => {
    const check = checkOf(ORDINARY)
    const page = mount(LinkCard, { props: { check, part: 'hook', stale: false }, ...provided })
    expect(page.get('.verdict').text()).toMatch(/holds, at \d+ %/)
    expect(page.text()).not.toContain('What would settle it')
  })
})

describe('what a finding asks for', () => {
  it('are the answers that settle it, each once', () => {
    const findings: readonly Finding[] = [{ code: 'CORD_BY_DIAMETER', linearDensityKnown: false }, { code: 'ANSWER_NEEDED', path: 'cord.fibre', assumed: 'unknown' }, { code: 'SEAT_LOCKED' }]
    expect(findings.map(isSettling)).toEqual([true, true, false])
    expect(settlingFields(findings)).toEqual(['cord.linearDensity', 'cord.fibre'])
  })

  it('a refusal is not settled by knowing more', () => {
    expect(isSettling({ code: 'JUTE_NEVER_DRY', lost: 5e6, holeKnown: true })).toBe(false)
    expect(isSettling({ code: 'JUTE_NEVER_DRY', lost: 5e6, holeKnown: false })).toBe(true)
  })
})
