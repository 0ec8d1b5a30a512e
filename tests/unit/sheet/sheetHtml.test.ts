import { describe, expect, it } from 'vitest'
import { PAGE_FORMATS, paintSheet, renameDocument, SHEET_KINDS, sheetHtml, type PaintedElement, type Sheet } from '#core'
import { SHEET_STYLE } from '../../../src/sheet/sheetStyle'
import { fullnessOf } from '../../../src/sheet/paint/fullness'
import { factsOf, factsOfDemo, FAILING, OPTIONS, SHEET_DEMOS } from './factsOf'

const named = (name: string): Sheet => SHEET_KINDS.customer({ ...factsOf({}), document: renameDocument(factsOf({}).document, name) }, OPTIONS)
const bodyOf = (html: string): string => html.slice(html.indexOf('<body'))
const elementsOf = (element: PaintedElement): readonly PaintedElement[] => [element, ...element.children.flatMap((child) => (typeof child === 'string' ? [] : elementsOf(child)))]

describe('a sheet as HTML', () => {
  const html = sheetHtml(named('Fern'))

  it('stands alone: language, title, style and face within it, no script, nothing fetched', () => {
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/)
    expect(html).toContain('<title>Fern: how to hang it</title>')
    expect(html).toContain('@page a4')
    expect(html).toContain('@font-face')
    expect(html).not.toMatch(/<script|<link|<img|@import|javascript:|\son\w+=/i)
    expect([...html.matchAll(/url\('?([^')]{0,40})/g)].every(([, address]) => address?.startsWith('data:font/woff2;base64,'))).toBe(true)
    expect(html.replaceAll(/url\([^)]*\)/g, '')).not.toMatch(/https?:/)
  })

  it('closes what it opens', () => {
    const open: string[] = []
    for (const [, close, tag, self] of bodyOf(html).replace('</html>', '').matchAll(/<(\/?)([a-z]\w*)[^>]*?(\/?)>/gi)) {
      if (self === '/') continue
      if (close === '') open.push(tag as string)
      else expect(open.pop()).toBe(tag)
    }
    expect(open).toEqual([])
  })

  it('has headings in order, table headers with their scope, and pictures with a name or none to tell', () => {
    const elements = elementsOf(paintSheet(named('Fern')))
    expect(elements.filter(({ tag }) => tag === 'h1')).toHaveLength(1)
    for (const { attributes } of elements.filter(({ tag }) => tag === 'th')) expect(['col', 'row']).toContain(attributes['scope'])
    for (const { attributes } of elements.filter(({ tag }) => tag === 'svg')) expect(attributes['aria-hidden'] === 'true' || (attributes['aria-label'] ?? '').length > 5).toBe(true)
    for (const { children } of elements.filter(({ tag }) => tag === 'ul' || tag === 'ol' || tag === 'dl')) expect(children.length).toBeGreaterThan(0)
  })

  const NAMES = ['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '</title></style>', '& &amp; &#39;', '’“”«»', 'Żółć 吊り鉢 معلق 🌿', '\u0000\u0007\ud800 half', '\u202e backwards', '${name}', '\\u003cb>']
  it.each(NAMES)('writes the name %j as nothing but text', (name) => {
    const body = bodyOf(sheetHtml(named(name)))
    expect(body).not.toMatch(/<script|<img|onerror=(?!alert)|<b>/)
    expect(body.match(/<[a-z0-9]+/gi)?.length).toBe(bodyOf(html).match(/<[a-z0-9]+/gi)?.length)
    expect(body).not.toMatch(/(?![\t\n])\p{Cc}|\p{Cs}/u)
  })

  it('keeps letters of other scripts as they are', () => {
    expect(sheetHtml(named('Żółć 吊り鉢 معلق 🌿'))).toContain('<h1>Żółć 吊り鉢 معلق 🌿</h1>')
  })

  it.each(SHEET_DEMOS)('%s: no number or text is missing, on no sheet', (name) => {
    for (const kind of ['customer', 'tag'] as const) {
      const body = bodyOf(sheetHtml(SHEET_KINDS[kind](factsOfDemo(name), { ...OPTIONS, draft: true })))
      expect(body).not.toMatch(/NaN|undefined|Infinity|null|\[object/)
    }
  })
})

describe('the painted sheet', () => {
  it('names its format, and marks every page of a draft', () => {
    for (const format of PAGE_FORMATS) {
      const painted = paintSheet(SHEET_KINDS.customer(factsOf(FAILING), { ...OPTIONS, format, draft: true }))
      expect(painted.attributes['class']).toBe(`sheet ${format} customer draft`)
      const pages = elementsOf(painted).filter(({ attributes }) => attributes['class']?.startsWith('page') === true)
      expect(pages).toHaveLength(2)
      for (const page of pages) expect(elementsOf(page).filter(({ attributes }) => attributes['class'] === 'draft-mark')).toHaveLength(1)
    }
  })

  it('shows calculated and test-hung by another class and another mark', () => {
    const figureOf = (patch: Parameters<typeof factsOf>[0]) => elementsOf(paintSheet(SHEET_KINDS.customer(factsOf(patch), OPTIONS))).find(({ attributes }) => attributes['class']?.startsWith('figure') === true)
    const [calculated, hung] = [figureOf({}), figureOf({ 'testHang.mass': '30 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm', 'testHang.date': '2026-10-20' })]
    expect(calculated?.attributes['class']).not.toBe(hung?.attributes['class'])
    const markOf = (figure: PaintedElement | undefined) => elementsOf(figure as PaintedElement).find(({ tag }) => tag === 'path')?.attributes['d']
    expect(markOf(calculated)).not.toBe(markOf(hung))
  })

  it('breaks no amount in two, and sets no letter below 7 points', () => {
    const texts = elementsOf(paintSheet(SHEET_KINDS.customer(factsOfDemo('herbs-in-a-row'), OPTIONS))).filter(({ tag }) => tag === 'td' || tag === 'li' || tag === 'p').flatMap(({ attributes, children }) => (attributes['class'] === 'value' ? [] : children))
    expect(texts.filter((text) => typeof text === 'string' && /\d (kg|lb|cm|in|mm)\b|\d \d+\/\d/.test(text))).toEqual([])
    expect(SHEET_STYLE).not.toMatch(/font-size: 0\.\d+em/)
    for (const [, points] of SHEET_STYLE.matchAll(/font-size: ([\d.]+)pt/g)) expect(Number(points)).toBeGreaterThanOrEqual(7)
  })

  it('keeps a weight of three figures in one line', () => {
    const facts = factsOf({})
    const painted = paintSheet(SHEET_KINDS.customer({ ...facts, limit: facts.limit && { ...facts.limit, watered: 71.55 } }, OPTIONS))
    expect(elementsOf(painted).filter(({ children }) => children[0] === '71.5 kg / 157.7 lb').map(({ attributes }) => attributes['class'])).toEqual(['value long'])
    expect(SHEET_STYLE).toMatch(/\.figure \.value \{[^}]*white-space: nowrap/)
  })

  it('sets a page smaller the more is on it, square letters counting twice', () => {
    const page = (text: string): readonly PaintedElement[] => [{ tag: 'p', attributes: {}, children: [text] }]
    expect(fullnessOf('front', page('a'.repeat(1900)))).toBeNull()
    expect(fullnessOf('front', page('a'.repeat(2100)))).toBe('tight')
    expect(fullnessOf('front', page('吊'.repeat(1300)))).toBe('tightest')
    expect(fullnessOf('back', page('a'.repeat(2100)))).toBeNull()
  })
})
