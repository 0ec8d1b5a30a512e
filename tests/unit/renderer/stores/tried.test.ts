import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { nextTick } from 'vue'
import type { Remedy } from '#core'
import { useDocument } from '../../../../renderer/stores/document'
import { useTried } from '../../../../renderer/stores/tried'
import { demoDocument } from '../hangers'

const thicker: Remedy = { code: 'thickerCord', patch: { 'cord.diameter': '5 mm', 'cord.linearDensity': '12.8 g/m' }, link: 'leg', linkVerdict: 'holds', verdict: 'holds', utilisation: 0.6 }
const hole: Remedy = { code: 'drillHole', patch: { 'pot.drainage': 'hole' }, link: 'leg', linkVerdict: 'just holds', verdict: 'fails', utilisation: 1.2 }

beforeEach(() => setActivePinia(createPinia()))

function glazed() {
  const source = useDocument()
  source.load(demoDocument('glazed-pot-by-the-reading-chair'))
  return { source, tried: useTried(), before: source.document.typed }
}
const codes = (tried: ReturnType<typeof useTried>) => tried.current.map(({ remedy }) => remedy.code)

describe('a remedy tried on', () => {
  it('is one step, and taking it back puts back exactly what stood there', () => {
    const { source, tried, before } = glazed()
    tried.tryOn(thicker)
    expect(source.document.typed).toEqual({ ...before, ...thicker.patch })
    expect(codes(tried)).toEqual(['thickerCord'])
    const [one] = tried.current
    if (!one) throw new Error('nothing tried')
    tried.takeBack(one)
    expect(source.document.typed).toEqual(before)
    expect(codes(tried)).toEqual([])
  })

  it('leaves alone what was changed elsewhere since', () => {
    const { source, tried, before } = glazed()
    tried.tryOn(hole)
    source.edit('make.legs', '6')
    const [one] = tried.current
    if (!one) throw new Error('nothing tried')
    tried.takeBack(one)
    expect(source.document.typed).toEqual({ ...before, 'make.legs': '6' })
  })

  it('takes back an answer that was not there before', () => {
    const { source, tried } = glazed()
    source.edit('pot.drainage', null)
    tried.tryOn(hole)
    const [one] = tried.current
    if (!one) throw new Error('nothing tried')
    tried.takeBack(one)
    expect(source.document.typed['pot.drainage']).toBeUndefined()
  })

  it('agrees with undo and redo, and with an edit of its fields', () => {
    const { source, tried } = glazed()
    tried.tryOn(thicker)
    source.undo()
    expect(codes(tried)).toEqual([])
    source.redo()
    expect(codes(tried)).toEqual(['thickerCord'])
    source.edit('cord.diameter', '6 mm')
    expect(codes(tried)).toEqual([])
  })

  it('is forgotten with the hanger it was tried on', async () => {
    const { source, tried } = glazed()
    tried.tryOn(hole)
    source.load({ ...source.document, name: 'Another' })
    await nextTick()
    expect(codes(tried)).toEqual([])
  })
})
