import { createPinia, setActivePinia } from 'pinia'
import { beforeEach, describe, expect, it } from 'vitest'
import { EMPTY_DOCUMENT, parseDocument, DEMOS } from '#core'
import { useDocument } from '../../../../renderer/stores/document'

beforeEach(() => setActivePinia(createPinia()))

describe('document', () => {
  it('keeps what was typed letter for letter, readable or not', () => {
    const source = useDocument()
    source.edit('pot.rim', '17 c')
    expect(source.document.typed['pot.rim']).toBe('17 c')
  })

  it('shares what did not change', () => {
    const source = useDocument()
    source.edit('pot.rim', '17 cm')
    const { extra } = source.document
    source.edit('pot.height', '15 cm')
    expect(source.document.extra).toBe(extra)
  })

  it('takes an edit that changes nothing for no step', () => {
    const source = useDocument()
    source.edit('pot.rim', '17 cm')
    const before = source.document
    source.edit('pot.rim', '17 cm')
    source.rename('')
    expect(source.document).toBe(before)
  })

  it('lays several changes over it as one step, taking back what is null', () => {
    const source = useDocument()
    source.edit('cord.fibre', 'jute')
    source.patch({ 'cord.fibre': null, 'cord.diameter': '5 mm', 'make.legs': '6' })
    expect(source.document.typed).toEqual({ 'cord.diameter': '5 mm', 'make.legs': '6' })
    source.undo()
    expect(source.document.typed).toEqual({ 'cord.fibre': 'jute' })
    source.redo()
    expect(source.document.typed).toEqual({ 'cord.diameter': '5 mm', 'make.legs': '6' })
  })

  it('puts another hanger in place with a history of its own', () => {
    const source = useDocument()
    source.rename('Mine')
    const parsed = parseDocument(DEMOS[0]?.text ?? '')
    if (!parsed.ok) throw new Error('the demo cannot be read')
    source.load(parsed.document)
    source.undo()
    expect(source.document).toBe(parsed.document)
    expect(source.opened).toBe(1)
  })

  it('starts with nothing answered', () => expect(useDocument().document).toBe(EMPTY_DOCUMENT))
})
