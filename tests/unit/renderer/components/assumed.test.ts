import { flushPromises, mount } from '@vue/test-utils'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { editField, EMPTY_DOCUMENT, FIELD_WORDS, partOf, USUAL_HABITS, writeBy, type FieldPath } from '#core'
import AssumedList from '../../../../renderer/components/AssumedList.vue'
import { assumedGroups } from '../../../../renderer/components/assumedGroups'
import { canConfirm, confirmedText } from '../../../../renderer/components/assumption'
import { useDocument } from '../../../../renderer/stores/document'
import { useHistory } from '../../../../renderer/stores/history'
import { useResult } from '../../../../renderer/stores/result'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { settled, startPage } from '../page'

const blank = checkOf({})
afterEach(() => { writeBy(USUAL_HABITS) })

describe('what is assumed, by part', () => {
  it('has each thing once, nothing else, and the part that decides first', () => {
    for (const check of [blank, checkOf(ORDINARY), checkOf({ ...ORDINARY, 'make.top': 'stick', 'cord.rated': '80 N' })]) {
      const groups = assumedGroups(check, 'rest')
      const paths = groups.flatMap(({ assumed }) => assumed.map(({ path }) => path))
      expect(paths.slice().sort()).toEqual(check.assumed.map(({ path }) => path).sort())
      const first = groups.find(({ decides }) => decides)
      if (first !== undefined) expect(groups[0]).toBe(first)
      if (first?.part) expect(partOf(first.part).link).toBe(check.governing?.link)
    }
  })

  it('begins a part with what must be answered', () => {
    const asked = blank.links.flatMap(({ findings }) => findings).flatMap((finding) => (finding.code === 'ANSWER_NEEDED' ? [finding.path] : []))
    expect(asked.length).toBeGreaterThan(1)
    for (const { assumed } of assumedGroups(blank, 'rest')) {
      const isAsked = assumed.map(({ path }) => asked.includes(path))
      expect(isAsked.slice(0, isAsked.filter(Boolean).length).every(Boolean)).toBe(true)
    }
  })
})

describe('what can be confirmed', () => {
  it('is what somebody can look at or know: neither “don’t know” nor a test nobody made', () => {
    expect(canConfirm({ path: 'ring.wire', text: '4 mm' })).toBe(true)
    expect(canConfirm({ path: 'cord.fibre', text: 'unknown' })).toBe(false)
    expect(canConfirm({ path: 'testHang.time', text: '60 min' })).toBe(false)
  })

  it('is written as it was shown', () => {
    expect(confirmedText({ path: 'ring.wire', text: '4 mm' })).toBe('4 mm')
    writeBy({ ...USUAL_HABITS, units: 'imperial' })
    expect(confirmedText({ path: 'ring.wire', text: '4 mm' })).toBe('5/32 in')
    expect(confirmedText({ path: 'make.build', text: 'sinnet' })).toBe('sinnet')
  })
})

describe('the list', () => {
  beforeEach(startPage)

  const start = async () => {
    const source = useDocument()
    source.load(Object.entries({ 'pot.rim': '230 mm', 'make.legs': '4' }).reduce((document, [path, text]) => editField(document, path as FieldPath, text), EMPTY_DOCUMENT))
    await settled()
    const { check } = useResult()
    if (check === null) throw new Error('a hanger with one answer is checked')
    const page = mount(AssumedList, { props: { check }, attachTo: document.body })
    await (page.vm as unknown as { open: () => Promise<void> }).open()
    return { source, page, check }
  }

  it('confirms in one press, as one step that undo takes back', async () => {
    const { source, page } = await start()
    const before = source.document
    const row = page.get('tr[data-path="ring.wire"]')
    await row.get('button').trigger('click')
    expect(source.document.typed['ring.wire']).toBe('4 mm')
    await settled()
    const { check } = useResult()
    expect(check?.assumed.some(({ path }) => path === 'ring.wire')).toBe(false)
    expect(check?.solved.hanger.given.has('ring.wire')).toBe(true)
    if (check) await page.setProps({ check })
    expect(page.find('tr[data-path="ring.wire"]').exists()).toBe(false)
    expect(page.get('[role=status]').text()).toContain(`${FIELD_WORDS['ring.wire'].label}: 4 mm, as your own answer.`)
    await flushPromises()
    expect(document.activeElement?.closest('tr')?.dataset['path']).toBeDefined()
    await page.findAll('button').find((button) => button.text() === 'Take it back')?.trigger('click')
    expect(source.document).toBe(before)
    expect(useHistory().canRedo).toBe(true)
    page.unmount()
  })

  it('takes nothing back that was changed since', async () => {
    const { source, page } = await start()
    await page.get('tr[data-path="ring.wire"] button').trigger('click')
    source.edit('pot.rim', '240 mm')
    await settled()
    expect(page.findAll('button').some((button) => button.text() === 'Take it back')).toBe(false)
    page.unmount()
  })

  it('goes to the field of what is to be changed, out of its fold', async () => {
    const { page } = await start()
    const form = document.createElement('div')
    form.innerHTML = '<details><summary>All other</summary><div data-field="ring.wire"><input id="wire"></div></details>'
    document.body.append(form)
    await page.get('tr[data-path="ring.wire"] button:last-child').trigger('click')
    await settled()
    expect(document.activeElement?.id).toBe('wire')
    expect(form.querySelector('details')?.open).toBe(true)
    form.remove()
    page.unmount()
  })

  it('offers no yes to what nobody can confirm', async () => {
    const { page, check } = await start()
    for (const { path, text } of check.assumed) {
      const words = page.get(`tr[data-path="${path}"]`).findAll('button').map((button) => button.text())
      expect(words).toEqual(canConfirm({ path, text }) ? ['Yes, that is so', 'Change it'] : ['Answer it'])
    }
    page.unmount()
  })
})
