import regular from '@fontsource/alegreya-sans/files/alegreya-sans-latin-400-normal.woff2?inline'
import italic from '@fontsource/alegreya-sans/files/alegreya-sans-latin-400-italic.woff2?inline'
import regularExt from '@fontsource/alegreya-sans/files/alegreya-sans-latin-ext-400-normal.woff2?inline'
import boldExt from '@fontsource/alegreya-sans/files/alegreya-sans-latin-ext-700-normal.woff2?inline'
import bold from '@fontsource/alegreya-sans/files/alegreya-sans-latin-700-normal.woff2?inline'

/** What the files with letters beyond western Europe hold, as their package says. */
const BEYOND = 'U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0304, U+0308, U+0329, U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF'

const face = (style: string, weight: number, address: string, range: string | null): string =>
  `@font-face { font-family: 'Alegreya Sans'; font-style: ${style}; font-weight: ${weight}; font-display: block; src: url('${address}') format('woff2');${range === null ? '' : ` unicode-range: ${range};`} }\n`

/** The face of the app within a sheet's own file, so that it is set alike where the face is not installed. */
export const SHEET_FONTS = [
  face('normal', 400, regular, null), face('italic', 400, italic, null), face('normal', 700, bold, null),
  face('normal', 400, regularExt, BEYOND), face('normal', 700, boldExt, BEYOND),
].join('')
