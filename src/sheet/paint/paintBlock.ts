import type { Block, FigureMark } from '../block'
import { element, type Element } from '../element'
import { paintDrawing, paintSmall, paintWide } from './paintPicture'

type Painters = { readonly [K in Block['kind']]: (block: Extract<Block, { kind: K }>) => Element }

/** Letters from which a heading is set smaller, so that the longest name still leaves a page room. */
const LONG = 44
const VERY_LONG = 90
const lengthClass = (text: string): Element['attributes'] => (text.length > VERY_LONG ? { class: 'very-long' } : text.length > LONG ? { class: 'long' } : {})

/** Letters from which the one number is: both units below a hundred still stand large. */
const LONG_VALUE = 17

const items = (texts: readonly string[]): readonly Element[] => texts.map((text) => element('li', {}, text))

/** A sum with its line, and a weight that hangs: the marks need no colour. */
const MARKS: Readonly<Record<FigureMark, string>> = {
  calculated: 'M2 5H14M2 11H14',
  testHung: 'M8 0V5M4 5H12L15 15H1Z',
}
const markOf = (mark: FigureMark): Element =>
  element('svg', { class: 'mark', viewBox: '0 0 16 16', 'aria-hidden': 'true' }, element('path', { class: mark === 'testHung' ? 'solid' : 'ink', d: MARKS[mark], 'stroke-width': '2' }))

const PAINTERS: Painters = {
  heading: ({ level, text }) => element(`h${level}`, lengthClass(text), text),
  paragraph: ({ weight, text }) => element('p', weight === 'plain' ? {} : { class: weight }, text),
  figure: ({ label, value, mark, marked, note }) => element('div', { class: `figure ${mark}` },
    element('h2', {}, label),
    element('p', { class: value.length > LONG_VALUE ? 'value long' : 'value' }, value),
    element('p', { class: 'marked' }, markOf(mark), marked),
    ...(note === null ? [] : [element('p', { class: 'note' }, note)])),
  steps: ({ items: steps }) => element('ol', { class: 'steps' }, ...steps.map(({ title, text }) => element('li', {}, element('strong', {}, title), ` ${text}`))),
  list: ({ items: texts }) => element('ul', {}, ...items(texts)),
  nevers: ({ items: texts }) => element('ul', { class: 'nevers' }, ...items(texts)),
  table: ({ caption, columns, rows }) => element('table', {},
    element('caption', {}, caption),
    element('thead', {}, element('tr', {}, ...columns.map((name) => element('th', { scope: 'col' }, name)))),
    element('tbody', {}, ...rows.map(({ head, cells }) => element('tr', {}, element('th', { scope: 'row' }, head), ...cells.map((cell) => element('td', {}, cell)))))),
  facts: ({ items: facts }) => element('dl', {}, ...facts.flatMap(({ name, text }) => [element('div', {}, element('dt', {}, name), element('dd', {}, text))])),
  drawing: ({ picture, said, labels }) => element('figure', { class: 'drawing' }, paintDrawing(picture, said, labels)),
  pictures: ({ items: pictures }) => element('div', { class: 'pictures' }, ...pictures.map(({ picture, caption }) => element('figure', {}, paintSmall(picture), element('figcaption', {}, caption)))),
  diagram: ({ picture, caption }) => element('figure', { class: 'diagram' }, paintWide(picture), element('figcaption', {}, caption)),
  box: ({ mark, title, blocks }) => element('section', { class: `box ${mark}` }, element('h2', {}, title), ...paintBlocks(blocks)),
  columns: ({ columns }) => element('div', { class: 'columns' }, ...columns.map(({ width, blocks }) => element('div', { class: `column ${width}` }, ...paintBlocks(blocks)))),
  cutOut: ({ blocks }) => element('section', { class: 'cut-out' }, ...paintBlocks(blocks)),
}

/** Blocks as elements, one each. */
export const paintBlocks = (blocks: readonly Block[]): readonly Element[] => blocks.map((block) => (PAINTERS[block.kind] as (b: Block) => Element)(block))
