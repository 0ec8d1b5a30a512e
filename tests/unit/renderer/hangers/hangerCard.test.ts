import { describe, expect, it } from 'vitest'
import { editField, EMPTY_DOCUMENT, renameDocument, writeDocument, type HangerDocument, USUAL_HABITS } from '#core'
import { findHangers } from '../../../../renderer/hangers/findHangers'
import { hangerCard, heaviestOf, unreadCard, type HangerCard } from '../../../../renderer/hangers/hangerCard'
import type { HangerReply } from '../../../../renderer/hangers/messages'
import { serveHangers } from '../../../../renderer/hangers/serveHangers'
import { demoDocument } from '../hangers'

const tagged = (document: HangerDocument): HangerDocument => editField(editField(document, 'make.code', ' A7 '), 'cord.lot', 'grey roll')
const flat = demoDocument('order-for-a-rented-flat')

describe('the card of a hanger file', () => {
  it('tells both verdicts in words, what it is found by, and shows it', () => {
    const card = hangerCard(writeDocument(tagged(editField(flat, 'make.date', '2026-10-18'))))
    expect(card).toMatchObject({ name: flat.name, code: 'A7', lot: 'grey roll', date: '2026-10-18', problem: null })
    expect(card.verdict).toMatch(/^.*hanger.*\. .*place.*\.$/)
    expect(card.drawing?.shapes.some(({ link }) => link === 'leg')).toBe(true)
  })

  it('has a drawing fit for a stamp: no lettering, no hatching, no strand laid out beside it', () => {
    const { drawing } = hangerCard(writeDocument(flat))
    expect(drawing?.shapes.filter((shape) => shape.kind === 'label' || shape.kind === 'cord' || (shape.kind === 'area' && !['open', 'paper'].includes(shape.texture)))).toEqual([])
    expect(JSON.stringify(drawing).length).toBeLessThan(12_000)
    // Nothing stands beside it: as wide as its widest part, pot or plant, and far higher.
    const { left, right, bottom, top } = drawing?.bounds ?? { left: 0, right: 0, bottom: 0, top: 0 }
    expect((left + right) / 2 / (right - left)).toBeCloseTo(0, 1)
    expect((top - bottom) / (right - left)).toBeGreaterThan(3)
  })

  it('of an answer that cannot be read says so, and still tells whose it is', () => {
    const card = hangerCard(writeDocument(renameDocument(tagged(editField(flat, 'pot.rim', '5 parsnips')), 'Odd')))
    expect(card).toMatchObject({ name: 'Odd', code: 'A7', verdict: null, drawing: null })
    expect(card.problem).toContain('5 parsnips')
  })

  it.each(['', '{', '[]', '{"format": "strandwise-hanger", "version": 99}'])('of no hanger file says why: %s', (text) => {
    expect(hangerCard(text)).toMatchObject({ name: '', verdict: null, drawing: null, problem: expect.stringMatching(/\.$/) as string })
    expect(heaviestOf(text)).toBeNull()
  })

  it('knows no heaviest pot where the build was not said, or there is no hanger', () => {
    expect(heaviestOf(writeDocument(EMPTY_DOCUMENT))).toBeNull()
    expect(heaviestOf(writeDocument(editField(flat, 'make.have', 'no')))).toBeNull()
  })
})

it('the worker answers each question once, by its number', () => {
  const replies: HangerReply[] = []
  const take = serveHangers((reply) => replies.push(reply))
  take({ kind: 'hangerHeaviest', revision: 4, text: '{', habits: USUAL_HABITS })
  take({ kind: 'hangerCard', revision: 7, text: writeDocument(flat), habits: USUAL_HABITS })
  expect(replies.map(({ kind, revision }) => [kind, revision])).toEqual([['hangerHeaviest', 4], ['hangerCard', 7]])
})

describe('the search', () => {
  const files = ['one.strandwise', 'two.strandwise', 'three.strandwise'].map((name) => ({ token: name, name, size: 1, modified: 1 }))
  const cards: (HangerCard | null)[] = [{ ...unreadCard(''), name: 'Café fern', code: 'A7' }, { ...unreadCard(''), name: 'Fern', lot: 'B12 grey' }, null]
  const namesFor = (query: string) => findHangers(files, query, (file) => cards[files.findIndex(({ name }) => name === file.name)] ?? null).map(({ name }) => name.split('.')[0])

  it.each([
    ['', ['one', 'two', 'three']], ['  ', ['one', 'two', 'three']], ['FERN', ['one', 'two']], ['cafe', ['one']], ['a7', ['one']], ['A-7', ['one']], ['grey fern', ['two']], ['thr', ['three']], ['moss', []],
  ])('“%s”', (query, names) => { expect(namesFor(query)).toEqual(names) })
})
