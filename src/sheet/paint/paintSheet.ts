import { element, type Element } from '../element'
import type { Page, Sheet } from '../sheet'
import { paintBlocks } from './paintBlock'

const paintPage = ({ side, blocks, foot }: Page, draft: string | null): Element => element('section', { class: `page ${side}` },
  ...(draft === null ? [] : [element('div', { class: 'draft-mark' }, element('p', {}, draft))]),
  element('div', { class: 'body' }, ...paintBlocks(blocks)),
  ...(foot.length === 0 ? [] : [element('footer', {}, ...paintBlocks(foot))]))

/** The whole sheet as one element: what preview, print, PDF and HTML are made of. Its style sheet is sheet.css. */
export const paintSheet = ({ kind, language, format, title, draft, pages }: Sheet): Element => element(
  'article', { class: `sheet ${format} ${kind}${draft === null ? '' : ' draft'}`, lang: language, 'aria-label': title },
  ...pages.map((page) => paintPage(page, draft)))
