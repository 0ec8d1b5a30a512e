import { isSheetKind, PAGE_FORMATS, usualFormat, type PageFormat, type SheetKind } from '#core'

/** How sheets were asked for last, and by whom hangers were made. */
export interface KeptSheets {
  readonly kind: SheetKind
  readonly format: PageFormat
  /** Empty where nothing was entered yet. */
  readonly maker: string
  readonly contact: string
}

const KEY = 'strandwise.sheets'
/** Longest text that is taken back from outside, characters. */
const MOST = 200

const regionOf = (locale: string): string => {
  try {
    return new Intl.Locale(locale).maximize().region ?? ''
  } catch {
    return '' // no tag of a language
  }
}

/** What was kept, read like any text from outside: whatever is no choice is as usual where the locale is spoken. `storageOf` may throw. */
export function keptSheets(storageOf: () => Pick<Storage, 'getItem'>, locale: string): KeptSheets {
  const usual: KeptSheets = { kind: 'customer', format: usualFormat(regionOf(locale)), maker: '', contact: '' }
  let kept: unknown
  try {
    kept = JSON.parse(storageOf().getItem(KEY) ?? 'null')
  } catch {
    return usual // nothing is kept here for anyone, or it is no text of ours
  }
  if (typeof kept !== 'object' || kept === null) return usual
  const { kind, format, maker, contact } = kept as Readonly<Record<string, unknown>>
  const text = (value: unknown): string => (typeof value === 'string' && value.length <= MOST ? value : '')
  return {
    kind: typeof kind === 'string' && isSheetKind(kind) ? kind : usual.kind,
    format: PAGE_FORMATS.find((one) => one === format) ?? usual.format,
    maker: text(maker),
    contact: text(contact),
  }
}

/** Keeps it for the next start; where nothing can be kept it holds until the window closes. */
export function keepSheets(storageOf: () => Pick<Storage, 'setItem'>, kept: KeptSheets): void {
  try {
    storageOf().setItem(KEY, JSON.stringify(kept))
  } catch {
    // It holds all the same.
  }
}
