import { withMark } from '#core'

/** A piece of a formula: text to print, and a subscript after it ('' where there is none). */
export interface FormulaPart {
  readonly text: string
  readonly sub: string
  /** Whether it names a line of the sum, to be set in italics. */
  readonly symbol: boolean
}

const TOKEN = /([A-Za-z][A-Za-z\d]*)(?:_(\w+))?(\()?|\d+(?:\.\d+)?(?:e-?\d+)?|[^A-Za-z\d]+/g
const GREEK: Readonly<Record<string, string>> = { alpha: 'α', beta: 'β', gamma: 'γ', eta: 'η', mu: 'μ', phi: 'φ', pi: 'π' }

/** With decimal commas a semicolon parts what a function takes. */
const marked = (text: string): string => withMark(withMark('.') === ',' ? text.replaceAll(',', ';') : text)

/** Splits a formula such as 'm_cord * c_cord' for setting in type: × for *, subscripts, Greek letters. */
export function formulaParts(formula: string): readonly FormulaPart[] {
  return [...formula.matchAll(TOKEN)].map(([whole, name, sub, bracket]): FormulaPart => {
    if (name === undefined) return { text: marked(whole).replaceAll('*', '×').replaceAll('-', '−'), sub: '', symbol: false }
    if (bracket !== undefined) return { text: whole, sub: '', symbol: false }
    return { text: GREEK[name] ?? name, sub: sub ?? '', symbol: true }
  })
}
