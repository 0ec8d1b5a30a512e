import { SHEET_STYLE } from '#core'

/** Class of what sheets are shown in; their style holds within it only. */
export const SHEETS_CLASS = 'on-paper'

/** Rules that stand for the whole page, so that none may stand within a scope: the paper of each size. */
const PAGE_RULES = /@page [^{}]*\{[^{}]*\}/g
/** The window brings its own face. */
const FACES = /@font-face\s*\{[^{}]*\}/g

/** The style of sheets, made to touch nothing else on the page. */
export function scopedStyle(style: string): string {
  const pages = style.match(PAGE_RULES) ?? []
  return `${pages.join('\n')}\n@scope (.${SHEETS_CLASS}) {\n${style.replace(PAGE_RULES, '').replace(FACES, '')}\n}`
}

let isWorn = false

/** Gives the page the style of sheets, once. */
export function wearSheetStyle(): void {
  if (isWorn) return
  isWorn = true
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(scopedStyle(SHEET_STYLE))
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
}
