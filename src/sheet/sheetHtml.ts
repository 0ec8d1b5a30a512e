import css from './sheet.css?raw'
import { element, type Element } from './element'
import { paintSheet } from './paint/paintSheet'
import { sheetFonts } from './sheetFonts'
import type { Sheet } from './sheet'

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** What no page may hold: control characters but tab and line feed, and halves of pairs. */
const UNWRITABLE = /(?![\t\n])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu
const escaped = (text: string): string => text.replace(UNWRITABLE, '\ufffd').replace(/[&<>"']/g, (sign) => ESCAPES[sign] as string)

const VOID: ReadonlySet<string> = new Set(['meta'])

/** An element as HTML; every text and attribute is escaped. */
export function elementHtml({ tag, attributes, children }: Element): string {
  const open = [tag, ...Object.entries(attributes).map(([name, value]) => `${name}="${escaped(value)}"`)].join(' ')
  if (VOID.has(tag)) return `<${open}>`
  return `<${open}>${children.map((child) => (typeof child === 'string' ? escaped(child) : elementHtml(child))).join('')}</${tag}>`
}

/** The sheet as a file of its own: real text, drawings as lines, its style and face within it; no script, and nothing fetched. */
export const sheetHtml = (sheet: Sheet): string => sheetsHtml(sheet.title, [sheet])

/** Several sheets as one file, one after the other, under a title of their own; written like a single one. */
export function sheetsHtml(title: string, sheets: readonly Sheet[]): string {
  const head = [
    element('meta', { charset: 'utf-8' }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('title', {}, title),
  ].map(elementHtml)
  const body = elementHtml(element('body', { class: 'sheet-file' }, element('main', {}, ...sheets.map(paintSheet))))
  return `<!doctype html>\n<html lang="${escaped(sheets[0]?.language ?? 'en')}">\n<head>\n${head.join('\n')}\n<style>\n${sheetFonts(body + title)}${css}</style>\n</head>\n${body}\n</html>\n`
}
