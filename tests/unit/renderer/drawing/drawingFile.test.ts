import { describe, expect, it } from 'vitest'
import { formatSi, frontView, type CheckResult, type Dimension } from '#core'
import { fileOfDrawing, type DrawingInFile } from '../../../../renderer/drawing/drawingFile'
import { DRAWN } from '../../drawing/drawnHangers'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const textOf = ({ value }: Dimension): string => formatSi(value, 'mm')
const fileOf = (check: CheckResult, other: Partial<DrawingInFile>): string => fileOfDrawing({ check, situation: 'watered', choice: 'together', selected: 'ring', isWide: true, name: 'Fern', textOf, ...other })

function parsed(svg: string): Document {
  const document = new DOMParser().parseFromString(svg, 'image/svg+xml')
  expect(document.querySelector('parsererror')).toBeNull()
  return document
}

/** Ids of all elements, each of which is ended by its own name: a parser takes too long for so many files. */
function idsIn(svg: string): readonly string[] {
  const open: string[] = []
  const ids: string[] = []
  for (const [, end, name = '', attributes = '', empty] of svg.replace(/^<\?xml[^>]*\?>/, '').matchAll(/<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)(\/?)>/g)) {
    if (end === '/') expect(open.pop()).toBe(name)
    else if (empty === '') open.push(name)
    const id = / id="([^"]*)"/.exec(attributes)?.[1]
    if (id !== undefined) ids.push(id)
  }
  expect(open).toEqual([])
  return ids
}

/** Every name that something in the file refers to, and every address in it. */
const references = (svg: string): readonly string[] => [...svg.matchAll(/url\(([^)]*)\)|(?:href|src)\s*=\s*"([^"]*)"/g)].map(([, a, b]) => a ?? b ?? '')

// A hanger of each arrangement; views of all others are the same shapes.
describe.each(DRAWN.filter(([name]) => name.endsWith('.strandwise') || name.startsWith('legs too short')))('%s', (_, check) => {
  it('is a file that needs nothing else', () => {
    const svg = fileOf(check, {})
    const ids = idsIn(svg)
    expect(ids.length).toBeGreaterThan(7)
    // Nothing but whole elements and text: no sign of markup is left over.
    expect(svg.replace(/<\/?[a-zA-Z?][^<>]*>/g, '')).not.toMatch(/[<>]/)
    expect(new Set(ids).size).toBe(ids.length)
    for (const reference of references(svg)) expect(ids).toContain(reference.replace('#', ''))
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|<style|<script|<image|@import|var\(|currentcolor|NaN|Infinity|undefined|null/)
    expect(svg).not.toMatch(/\d\.\d{4}/)
  })
})

describe('a saved drawing', () => {
  const check = checkOf(ORDINARY)

  it('tells what it shows, and in whose face it is written', () => {
    const root = parsed(fileOf(check, { situation: 'legParted' })).documentElement
    expect(root.querySelector('title')?.textContent).toBe('Fern. The hanger to scale, from the front, from the side and from above: One leg gone')
    expect(root.querySelector('desc')?.textContent).toContain('Leg 1 is gone and is not drawn.')
    expect(root.getAttribute('aria-labelledby')).toBe(root.querySelector('title')?.id)
    expect(root.getAttribute('font-family')).toMatch(/sans-serif$/)
  })

  it('is as large in mm as the scale says that is written on it, and fits a sheet of A4', () => {
    const root = parsed(fileOf(check, {})).documentElement
    const [, , width = NaN, height = NaN] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number)
    const size = Number(/Drawn 1 : ([\d.]+)\./.exec(root.textContent)?.[1])
    expect(root.getAttribute('width')).toMatch(/^[\d.]+mm$/)
    expect(Number.parseFloat(root.getAttribute('width') ?? '') * size).toBeCloseTo(width, 1)
    expect(Number.parseFloat(root.getAttribute('height') ?? '') * size).toBeCloseTo(height, 1)
    expect(width / size).toBeLessThan(297)
    expect(height / size).toBeLessThan(210)
  })

  it('holds the number of every dimension, and no more views than are shown', () => {
    const textsOf = (svg: string): readonly (string | null)[] => [...parsed(svg).querySelectorAll('text')].map((text) => text.textContent)
    const front = textsOf(fileOf(check, { choice: 'front', selected: null }))
    for (const dimension of frontView(check, 'watered').dimensions) expect(front).toContain(textOf(dimension))
    expect(front).not.toContain('from above')
    expect(textsOf(fileOf(check, { isWide: false }))).toContain('from above')
    expect(textsOf(fileOf(check, { isWide: false }))).not.toContain('from the side')
  })

  it('stays a file whatever the hanger is called', () => {
    const svg = fileOf(check, { name: 'Ivy <b> & "Fig" \u0000\u0008 ½' })
    expect(parsed(svg).querySelector('title')?.textContent).toContain('Ivy <b> & "Fig"')
    expect(svg).not.toContain('<b>')
  })

  it.each(['dry', 'bump', 'legParted'] as const)('is drawn %s', (situation) => {
    const svg = fileOf(check, { situation, selected: 'gatheringGrip' })
    expect(idsIn(svg)).toContain('words')
    expect(svg.split('<path').length).toBeGreaterThan(20)
  })
})
