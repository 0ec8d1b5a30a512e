import type { Mark, Pen } from './marks'

/** Pens of a file: ink on white paper, whatever the page looks like. */
export const FILE_INK: Readonly<Record<Exclude<Pen, 'own'>, string>> = {
  paper: '#ffffff',
  soft: '#574f42',
  pencil: '#676056',
  fine: '#c3b79f',
  accent: '#1b4f7a',
}

/** The ink of what is drawn. */
export const INK = '#2a241b'

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Signs that no XML may hold. */
const FORBIDDEN = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu

/** A text as it may stand in markup. */
export const escaped = (text: string): string => text.replaceAll(FORBIDDEN, ' ').replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign)

// To the thousandth of a millimetre.
const short = (value: string | number): string => String(value).replaceAll(/-?\d+\.\d{4,}(e-?\d+)?|-?\d+(\.\d+)?e-?\d+/g, (number) => String(Math.round(Number(number) * 1000) / 1000))

/** Attributes in markup; those with no value are left out. */
export const attributes = (values: Readonly<Record<string, string | number | null>>): string =>
  Object.entries(values).flatMap(([name, value]) => (value === null ? [] : [` ${name}="${escaped(short(value))}"`])).join('')

/** Marks as markup; `own`: the colour of the thing itself; `hatch`: what names of fillings begin with. */
export function marksMarkup(marks: readonly Mark[], own: string, hatch: string): string {
  const colour = (pen: Pen): string => (pen === 'own' ? own : FILE_INK[pen])
  return marks.map(({ tag, at, stroke, fill, text }) => {
    const filled = fill === null ? 'none' : fill === 'own' || fill in FILE_INK ? colour(fill as Pen) : `url(#${hatch}-${fill})`
    const shown = Object.fromEntries(Object.entries(at).filter(([name]) => !name.startsWith('data-')))
    return `<${tag}${attributes({ ...shown, fill: filled, stroke: stroke === null ? null : colour(stroke) })}${text === null ? '/>' : `>${escaped(text)}</${tag}>`}`
  }).join('')
}
