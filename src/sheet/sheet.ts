import type { SheetNotice } from '../words/sheetNotices'
import type { Block } from './block'

/** Sizes a sheet may have: A4 and Letter, and half of each for the parcel. */
export const PAGE_FORMATS = ['a4', 'letter', 'a5', 'halfLetter'] as const
export type PageFormat = (typeof PAGE_FORMATS)[number]

/** One side of paper; what does not fit on it runs on to another. */
export interface Page {
  readonly side: 'front' | 'back'
  readonly blocks: readonly Block[]
  /** Small, at the foot. */
  readonly foot: readonly Block[]
}

/** A sheet to be shown, printed or written: plain data, every word of it made. */
export interface Sheet {
  readonly kind: 'customer' | 'mustChange' | 'notKnown' | 'tag' | 'workshop' | 'record' | 'chart'
  readonly title: string
  readonly language: string
  readonly format: PageFormat
  /** What marks every page as a draft; null on one that may be given away. */
  readonly draft: string | null
  readonly pages: readonly Page[]
  /** For the maker, not printed: what the sheet lacks. */
  readonly notices: readonly SheetNotice[]
}
