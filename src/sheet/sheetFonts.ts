import cyrillicBold from '@fontsource/alegreya-sans/files/alegreya-sans-cyrillic-700-normal.woff2?inline'
import cyrillic from '@fontsource/alegreya-sans/files/alegreya-sans-cyrillic-400-normal.woff2?inline'
import greekBold from '@fontsource/alegreya-sans/files/alegreya-sans-greek-700-normal.woff2?inline'
import greek from '@fontsource/alegreya-sans/files/alegreya-sans-greek-400-normal.woff2?inline'
import regular from '@fontsource/alegreya-sans/files/alegreya-sans-latin-400-normal.woff2?inline'
import italic from '@fontsource/alegreya-sans/files/alegreya-sans-latin-400-italic.woff2?inline'
import bold from '@fontsource/alegreya-sans/files/alegreya-sans-latin-700-normal.woff2?inline'
import beyond from '@fontsource/alegreya-sans/files/alegreya-sans-latin-ext-400-normal.woff2?inline'
import beyondBold from '@fontsource/alegreya-sans/files/alegreya-sans-latin-ext-700-normal.woff2?inline'

interface Letters {
  /** What the files hold, as their package says. */
  readonly range: string
  readonly faces: readonly (readonly [weight: number, address: string])[]
}

/** Letters beyond western Europe; a file goes along only where they occur. */
const FURTHER: readonly Letters[] = [
  { range: 'U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0304, U+0308, U+0329, U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF', faces: [[400, beyond], [700, beyondBold]] },
  { range: 'U+0370-0377, U+037A-037F, U+0384-038A, U+038C, U+038E-03A1, U+03A3-03FF', faces: [[400, greek], [700, greekBold]] },
  { range: 'U+0301, U+0400-045F, U+0490-0491, U+04B0-04B1, U+2116', faces: [[400, cyrillic], [700, cyrillicBold]] },
]

const face = (style: string, weight: number, address: string, range: string | null): string =>
  `@font-face { font-family: 'Alegreya Sans'; font-style: ${style}; font-weight: ${weight}; font-display: block; src: url('${address}') format('woff2');${range === null ? '' : ` unicode-range: ${range};`} }\n`

const USUAL = [face('normal', 400, regular, null), face('italic', 400, italic, null), face('normal', 700, bold, null)].join('')

/** Whether a text holds a letter of a range as style sheets write it. */
function occursIn(text: string, range: string): boolean {
  const parts = range.split(', ').map((part) => part.slice(2).split('-').map((end) => Number.parseInt(end, 16)))
  return [...text].some((letter) => parts.some(([from = 0, to = from]) => (letter.codePointAt(0) ?? 0) >= from && (letter.codePointAt(0) ?? 0) <= to))
}

/** The face of the app within a sheet's own file, as far as its text needs it, so that it is set alike where the face is not installed. */
export const sheetFonts = (text: string): string =>
  [USUAL, ...FURTHER.flatMap(({ range, faces }) => (occursIn(text, range) ? faces.map(([weight, address]) => face('normal', weight, address, range)) : []))].join('')
