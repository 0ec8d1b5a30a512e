import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { checkHanger, EMPTY_DOCUMENT, governingOf, linkName, resolveDocument, type FieldPath, type HangerDocument, type LinkCode } from '#core'
import FieldInput from '../../../../renderer/components/FieldInput.vue'
import GuideButton from '../../../../renderer/guides/GuideButton.vue'
import GuideDialog from '../../../../renderer/guides/GuideDialog.vue'
import { useGuides } from '../../../../renderer/guides/guidesStore'
import { STEP_GUIDES, STEPS, type StepGuide } from '../../../../renderer/guides/stepGuides'
import type { Platform } from '../../../../renderer/platform/platform'
import { PLATFORM } from '../../../../renderer/stores/file'
import { useDocument } from '../../../../renderer/stores/document'
import { demoDocument } from '../hangers'
import { settled, startPage } from '../page'
import { QUIET_PLATFORM } from '../stores/quietPlatform'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)
beforeEach(startPage)
afterEach(() => { vi.unstubAllGlobals() })

const platform: Platform = { ...QUIET_PLATFORM, print: async () => ({ ok: false, problem: { code: 'NO_PRINTER', detail: '' } }) }

/** A page with the fields given, a button to each guide and the dialog of guides. */
function show(paths: readonly FieldPath[], demo = true) {
  const source = useDocument()
  if (demo) source.load(demoDocument('fern-over-the-sideboard'))
  const page = mount({
    components: { FieldInput, GuideButton, GuideDialog },
    setup: () => ({ paths, guides: STEP_GUIDES }),
    template: '<div class="page"><div class="asked"><FieldInput v-for="path in paths" :key="path" :path /></div><GuideButton v-for="guide in guides" :key="guide" :guide :data-guide="guide" /><GuideDialog /></div>',
  }, { attachTo: document.body, global: { provide: { [PLATFORM as symbol]: platform } } })
  const dialog = page.get('dialog')
  async function press(selector: string): Promise<void> {
    const button = page.get<HTMLElement>(selector)
    button.element.focus()
    await button.trigger('click')
    await settled()
    await settled()
  }
  const follow = (guide: StepGuide): Promise<void> => press(`[data-guide="${guide}"]`)
  const openStep = (): string => dialog.get('section:not([hidden]) h3').text()
  async function write(label: string, text: string): Promise<void> {
    const found = dialog.findAll('label').find((one) => one.text() === label)
    await dialog.get(`[id="${found?.attributes('for') ?? ''}"]`).setValue(text)
    await settled()
  }
  const close = async (): Promise<void> => {
    dialog.element.close()
    await settled()
  }
  return { source, page, dialog, press, follow, openStep, write, close }
}

const verdictOf = (document: HangerDocument, link: LinkCode): string => {
  const outcome = resolveDocument(document)
  if (!outcome.ok) throw new Error('unreadable')
  return governingOf(checkHanger(outcome.hanger).links.filter((one) => one.link === link))?.verdict ?? ''
}

describe('“Measure it” at a field', () => {
  it('opens the drawing with that field ready to type, takes it into the file, and gives the focus back', async () => {
    const { source, page, dialog, press, close } = show(['pot.rim', 'pot.drainage'])
    expect(page.findAll('.asked .measure')).toHaveLength(1)
    await press('.asked .measure')
    const input = dialog.get('.one input')
    expect(dialog.element.open).toBe(true)
    expect(document.activeElement).toBe(input.element)
    await input.setValue('23.5 cm')
    expect(source.document.typed['pot.rim']).toBe('23.5 cm')
    source.undo()
    await settled()
    expect(input.element).toHaveProperty('value', demoDocument('fern-over-the-sideboard').typed['pot.rim'])
    await close()
    expect(document.activeElement).toBe(page.get('.asked .measure').element)
  })

  it('keeps what cannot be read, and says there what is wrong', async () => {
    const { source, dialog, press } = show(['pot.height'])
    await press('.asked .measure')
    await dialog.get('.one input').setValue('as high as wide')
    await settled()
    expect(source.document.typed['pot.height']).toBe('as high as wide')
    expect(dialog.get('.one .problem').text()).toMatch(/^Height of the pot: given “as high as wide”/)
  })

  it('lays the tape at the field that is typed in, and offers no guide within a guide', async () => {
    const { dialog, press } = show(['pot.rim'])
    await press('.asked .measure')
    const chosen = (): readonly string[] => dialog.findAll('.number-spot.chosen').map((spot) => spot.text())
    expect(chosen()).toEqual(['1'])
    await dialog.findAll('.one')[1]?.get('input').trigger('focusin')
    expect(chosen()).toEqual(['2'])
    expect(dialog.find('.measure button.measure').exists()).toBe(false)
  })
})

describe('a guide in steps', () => {
  it('goes on and back by its buttons, by the arrow keys but not those of a field, and to any step by the list', async () => {
    const { dialog, follow, openStep } = show([], false)
    await follow('testHang')
    expect(document.activeElement).toBe(dialog.get('section:not([hidden]) h3').element)
    expect(openStep()).toMatch(/^1\. /)
    expect(dialog.get('.deeds button:disabled').text()).toBe('Back')
    await dialog.get('.steps .next').trigger('click')
    await settled()
    expect(openStep()).toMatch(/^2\. /)
    expect(document.activeElement).toBe(dialog.get('section:not([hidden]) h3').element)
    await dialog.get('.steps').trigger('keydown', { key: 'ArrowRight' })
    await dialog.get('.steps').trigger('keydown', { key: 'ArrowLeft', altKey: true })
    expect(openStep()).toMatch(/^3\. /)
    await dialog.findAll('nav button')[3]?.trigger('click')
    expect(dialog.get('nav button[aria-current="step"]').text()).toBe(openStep())
    await dialog.get('section:not([hidden]) input').trigger('keydown', { key: 'ArrowRight' })
    expect(openStep()).toMatch(/^4\. /)
  })

  it('goes on where it was left, of this hanger only, and begins anew once it was read to its end', async () => {
    const { source, dialog, follow, openStep, close } = show([], false)
    await follow('pullInPlace')
    await dialog.get('.steps .next').trigger('click')
    await close()
    await follow('weighing')
    expect(openStep()).toMatch(/^1\. /)
    await close()
    await follow('pullInPlace')
    expect(openStep()).toMatch(/^2\. /)
    await close()
    source.load(EMPTY_DOCUMENT)
    expect(useGuides().stepOf('pullInPlace')).toBe('need')
    useGuides().goTo('pullInPlace', 'changed')
    await follow('pullInPlace')
    await dialog.get('.steps .next').trigger('click')
    await settled()
    expect(dialog.element.open).toBe(false)
    expect(useGuides().stepOf('pullInPlace')).toBe('need')
  })

  it('opens at the writing where something of it is written down already', () => {
    const { source } = show([], false)
    source.edit('testHang.mass', '14 kg')
    source.editPullTest(0, 'load', '18 kg')
    expect(STEP_GUIDES.map((guide) => STEPS.indexOf(useGuides().stepOf(guide)))).toEqual([0, 3, 3, 0])
  })

  it.each([
    ['weighing', 'Weighed, pot and plant together', 'weighed.mass', '9.4 kg'],
    ['testHang', 'Mass of a test hang', 'testHang.mass', '21 kg'],
    ['pullInPlace', 'Pulled in place with', 'fixing.proof', '33 lb'],
  ] as const)('%s writes down its result, undo takes it back, and what cannot be read stays', async (guide, label, path, text) => {
    const { source, dialog, follow, write } = show([])
    useGuides().goTo(guide, 'writing')
    await follow(guide)
    const before = source.document.typed[path]
    await write(label, text)
    expect(source.document.typed[path]).toBe(text)
    source.undo()
    expect(source.document.typed[path]).toBe(before)
    await write(label, 'plenty')
    expect(source.document.typed[path]).toBe('plenty')
    expect(dialog.get('section:not([hidden]) .problem').text()).toContain('“plenty”')
    useGuides().goTo(guide, 'changed')
    await settled()
    expect(dialog.get('section:not([hidden]) [role=status]').text()).toMatch(/^One answer cannot be read/)
  })

  it('writes pull tests in the log, once on the page', async () => {
    const { source, dialog, follow } = show([])
    useGuides().goTo('pullTest', 'writing')
    await follow('pullTest')
    await dialog.get('[data-row="0"] .load input').setValue('19 kg')
    expect(source.document.pullTests.map(({ typed }) => typed)).toEqual([{ load: '19 kg' }])
    expect(document.querySelectorAll('#pull-tests')).toHaveLength(0)
    expect(dialog.find('.log .guide-button').exists()).toBe(false)
    source.undo()
    expect(source.document.pullTests).toEqual([])
  })

  it('says what a test hang changes, as the check itself says it without and with it', async () => {
    const { source, dialog, follow } = show([])
    source.patch({ 'testHang.mass': null, 'testHang.time': null, 'testHang.slip': null, 'testHang.date': null })
    useGuides().goTo('testHang', 'changed')
    await follow('testHang')
    expect(dialog.get('section:not([hidden]) [role=status]').text()).toBe('Nothing is written down yet, so nothing has changed.')
    const bare = source.document
    for (const [path, text] of Object.entries({ 'testHang.mass': '60 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm' })) source.edit(path as FieldPath, text)
    await settled()
    const row = dialog.findAll('section:not([hidden]) tbody tr').map((one) => one.findAll('th, td').map((cell) => cell.text())).find(([name]) => name === 'Grip of the gathering knot')
    const [without, withIt] = [verdictOf(bare, 'gatheringGrip'), verdictOf(source.document, 'gatheringGrip')]
    expect(without).not.toBe(withIt)
    expect(row?.[1]?.startsWith(without)).toBe(true)
    expect(row?.[2]?.startsWith(withIt)).toBe(true)
    expect(dialog.get('section:not([hidden]) .changes ul').text()).toContain('The test hang with 60 kg')
  })

  it('says of too short a test hang why it does not count', async () => {
    const { source, dialog, follow } = show([])
    source.patch({ 'testHang.mass': '60 kg', 'testHang.time': '2 h', 'testHang.slip': '1 mm' })
    useGuides().goTo('testHang', 'changed')
    await follow('testHang')
    expect(dialog.get('section:not([hidden]) .changes').text()).toContain('The test hang lasted 2 hours; it counts from')
  })

  it('says of a weighing what hangs without it and with it, and what decides', async () => {
    const { source, dialog, follow } = show([])
    useGuides().goTo('weighing', 'changed')
    await follow('weighing')
    const rows = () => new Map(dialog.findAll('section:not([hidden]) tbody tr').map((row) => [row.get('th').text(), row.findAll('td').map((cell) => cell.text())]))
    const [without, lighter] = rows().get('All that hangs, just watered') ?? []
    source.edit('weighed.mass', '9.5 kg')
    await settled()
    const [still, heavier] = rows().get('All that hangs, just watered') ?? []
    expect(still).toBe(without)
    expect(parseFloat(heavier ?? '')).toBeGreaterThan(parseFloat(lighter ?? '') + 5)
    const governing = resolveDocument(source.document)
    if (!governing.ok) throw new Error('unreadable')
    const { link, tier } = checkHanger(governing.hanger).governing ?? { link: 'load', tier: 1 }
    expect([...rows().keys()]).toContain(linkName(link, tier))
  })

  it('without a pot says where the heaviest one stands, for nothing hangs to compare', async () => {
    const { source, dialog, follow } = show([])
    source.edit('pot.have', 'no')
    useGuides().goTo('testHang', 'changed')
    await follow('testHang')
    expect(dialog.get('section:not([hidden]) [role=status]').text()).toMatch(/^There is no pot yet/)
    expect(dialog.find('section:not([hidden]) table').exists()).toBe(false)
  })

  it('says within itself that there is no printer, and not again when it is opened anew', async () => {
    const { dialog, follow, press, close } = show([])
    await follow('weighing')
    await dialog.findAll('header button').find((button) => button.text() === 'Print…')?.trigger('click')
    await settled()
    expect(dialog.get('[role=alert]').text()).toContain('no printer was found')
    await close()
    await press('[data-guide=weighing]')
    expect(dialog.find('[role=alert]').exists()).toBe(false)
  })
})
