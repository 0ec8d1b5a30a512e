import { isSheetKind, SHEET_KINDS, type SheetKind } from '../sheet/sheetKinds'
import type { PageFormat } from '../sheet/sheet'

export interface SheetRequest {
  /** One; of a chart several, or folders. */
  readonly files: readonly [string, ...string[]]
  readonly kind: SheetKind | 'chart'
  readonly format: PageFormat
  readonly draft: boolean
  /** Of a chart: the file whose pot is asked about; null for usual pots. */
  readonly pot: string | null
}
export type SheetArguments = { readonly ok: true; readonly request: SheetRequest } | { readonly ok: false; readonly why: string }

/** Sizes as they are written on the command line. */
const SIZES: Readonly<Record<string, PageFormat>> = { a4: 'a4', letter: 'letter', a5: 'a5', 'half-letter': 'halfLetter' }
const KINDS = [...Object.keys(SHEET_KINDS), 'chart']

const listed = (words: readonly string[]): string => (words.length === 1 ? words[0] ?? '' : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`)
const fault = (why: string): SheetArguments => ({ ok: false, why })

/** Reads the arguments of `sheet`: one file (of a chart several, or folders), `--kind`, `--size` (A4 where it is not said), `--pot` and `--draft`, in any order. */
export function sheetArguments(args: readonly string[]): SheetArguments {
  const files: string[] = []
  const said = new Map<string, string>()
  let draft = false
  for (let i = 0; i < args.length; i++) {
    const word = args[i] as string
    if (word === '--draft') draft = true
    else if (word === '--kind' || word === '--size' || word === '--pot') {
      const value = args[i + 1]
      if (value === undefined || value.startsWith('--')) return fault(word === '--pot' ? '--pot needs the hanger file whose pot is asked about.' : `${word} needs a word: ${listed(word === '--kind' ? KINDS : Object.keys(SIZES))}.`)
      said.set(word, value)
      i++
    } else if (word.startsWith('-')) return fault(`sheet does not know the option ${word}; it knows --kind, --size, --pot and --draft.`)
    else files.push(word)
  }
  const [file, ...rest] = files
  const kind = said.get('--kind')
  if (file === undefined || (rest.length > 0 && kind !== 'chart')) return fault(kind === 'chart' ? 'sheet needs a folder or hanger files.' : 'sheet needs exactly one hanger file.')
  if (kind === undefined) return fault(`sheet needs --kind: ${listed(KINDS)}.`)
  if (kind !== 'chart' && !isSheetKind(kind)) return fault(`sheet does not know the kind ${kind}; it knows ${listed(KINDS)}.`)
  const pot = said.get('--pot') ?? null
  if (pot !== null && kind !== 'chart') return fault('--pot is for --kind chart only.')
  const size = said.get('--size') ?? 'a4'
  const format = Object.hasOwn(SIZES, size) ? SIZES[size] : undefined
  return format === undefined ? fault(`sheet does not know the size ${size}; it knows ${listed(Object.keys(SIZES))}.`) : { ok: true, request: { files: [file, ...rest], kind, format, draft, pot } }
}
