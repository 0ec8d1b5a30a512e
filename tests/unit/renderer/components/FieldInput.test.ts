import { mount } from '@vue/test-utils'
import { createPinia, setActivePinia } from 'pinia'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { nextTick } from 'vue'
import type { FieldPath } from '#core'
import FieldInput from '../../../../renderer/components/FieldInput.vue'
import { useDocument } from '../../../../renderer/stores/document'
import { demoDocument } from '../hangers'

class NoWorker extends EventTarget {
  onmessage = null
  onerror = null
  postMessage = (): void => undefined
}

beforeEach(() => {
  setActivePinia(createPinia())
  vi.stubGlobal('Worker', NoWorker)
  vi.stubGlobal('requestAnimationFrame', (run: FrameRequestCallback) => {
    run(0)
    return 1
  })
})
afterEach(() => { vi.unstubAllGlobals() })

function show(path: FieldPath) {
  const source = useDocument()
  const field = mount(FieldInput, { props: { path } })
  const notes = (): string => field.get('[id$="-notes"]').text()
  return { source, field, notes }
}

describe('an input of a quantity', () => {
  it('shows what is typed as typed, and in pencil what is assumed with its reason', async () => {
    const { source, field, notes } = show('make.legs')
    expect(field.get('input').attributes('placeholder')).toBe('4')
    expect(notes()).toContain('Assumed: four legs (common practice).')
    await field.get('input').setValue('6')
    expect(source.document.typed['make.legs']).toBe('6')
    expect(notes()).not.toContain('Assumed')
  })

  it('is described by its notes, which tell what is wrong while it is', async () => {
    const { field, notes } = show('pot.rim')
    await field.get('input').setValue('17')
    await nextTick()
    const input = field.get('input')
    expect(input.attributes('aria-invalid')).toBe('true')
    expect(input.attributes('aria-describedby')).toBe(field.get('[id$="-notes"]').attributes('id'))
    expect(notes()).toContain('the unit is missing')
    expect(input.element.value).toBe('17')
  })

  it('is stepped by the arrow keys, from what is assumed if nothing is typed', async () => {
    const { source, field } = show('hook.wire')
    await field.get('input').trigger('keydown', { key: 'ArrowUp' })
    expect(source.document.typed['hook.wire']).toBe('5 mm')
    await field.get('input').trigger('keydown', { key: 'ArrowDown' })
    expect(source.document.typed['hook.wire']).toBe('4 mm')
  })

  it('is taken back by “don’t know”, which is offered only where there is something to take back', async () => {
    const { source, field } = show('pot.rim')
    expect(field.find('button.back').exists()).toBe(false)
    await field.get('input').setValue('17 cm')
    await field.get('button.back').trigger('click')
    expect(source.document.typed['pot.rim']).toBeUndefined()
    expect(field.get('input').element.value).toBe('')
  })
})

describe('an input of a choice', () => {
  const checked = (field: ReturnType<typeof show>['field']): string | undefined =>
    field.findAll('input').find((radio) => radio.element.checked)?.element.value

  it('offers few choices side by side, with one that means no answer', async () => {
    const { source, field } = show('pot.drainage')
    expect(checked(field)).toBe('')
    await field.get('input[value="hole"]').setValue(true)
    expect(source.document.typed['pot.drainage']).toBe('hole')
    await field.get('input[value=""]').setValue(true)
    expect(source.document.typed['pot.drainage']).toBeUndefined()
  })

  it('shows the four usual builds by a picture each, no two alike, hidden from readers aloud', () => {
    const { field } = show('make.build')
    const pictured = field.findAll('label').filter((label) => label.find('svg[aria-hidden="true"]').exists())
    expect(pictured.map((label) => label.text())).toEqual(['plain strands', 'square-knot sinnet', 'alternating square knots', 'half-knot spiral'])
    expect(new Set(pictured.map((label) => label.get('svg').element.innerHTML.replace(/<!--.*?-->/g, ''))).size).toBe(4)
    expect(field.get('label.none').find('svg').exists()).toBe(false)
    expect(show('pot.drainage').field.find('svg').exists()).toBe(false)
  })

  it('offers many in a list', async () => {
    const { source, field } = show('place.beneath')
    await field.get('select').setValue('furniture')
    expect(source.document.typed['place.beneath']).toBe('furniture')
  })

  it('follows the document: a file opened, a step taken back', async () => {
    const { source, field } = show('pot.drainage')
    source.load(demoDocument('fern-over-the-sideboard'))
    await nextTick()
    expect(checked(field)).toBe('hole')
    source.edit('pot.drainage', 'none')
    source.undo()
    await nextTick()
    expect(checked(field)).toBe('hole')
  })

  it('shows “unknown” of a file as no answer', async () => {
    const { source, field } = show('pot.drainage')
    source.edit('pot.drainage', 'unknown')
    await nextTick()
    expect(checked(field)).toBe('')
  })

  it('says what is wrong with a word that is none of the choices', async () => {
    const { source, field, notes } = show('pot.drainage')
    source.edit('pot.drainage', 'sieve')
    await nextTick()
    expect(notes()).toContain('Can water run out? Given “sieve”')
    expect(checked(field)).toBeUndefined()
  })
})
