import { element, type Element } from '../element'
import type { Page, Sheet } from '../sheet'
import { fullnessOf } from './fullness'
import { paintBlocks } from './paintBlock'
import { withUnbroken } from './unbroken'

/** `fits`: the page is to stay one page, and is set smaller where its words are many. */
function paintPage({ side, blocks, foot }: Page, draft: string | null, fits: boolean): Element {
  const [body, footer] = [paintBlocks(blocks).map(withUnbroken), paintBlocks(foot).map(withUnbroken)]
  const fullness = fits ? fullnessOf(side, [...body, ...footer]) : null
  return element('section', { class: `page ${side}${fullness === null ? '' : ` ${fullness}`}` },
    ...(draft === null ? [] : [element('div', { class: 'draft-mark' }, element('p', {}, draft))]),
    element('div', { class: 'body' }, ...body),
    ...(footer.length === 0 ? [] : [element('footer', {}, ...footer)]))
}

/** The whole sheet as one element: what preview, print, PDF and HTML are made of. Its style sheet is sheet.css. */
export const paintSheet = ({ kind, language, format, title, draft, pages }: Sheet): Element => element(
  'article', { class: `sheet ${format} ${kind}${draft === null ? '' : ' draft'}`, lang: language, 'aria-label': title },
  ...pages.map((page) => paintPage(page, draft, kind === 'customer' || kind === 'mustChange')))
