/** What a sheet lacks, for the maker to hear; nothing of it is printed. */
export type SheetNotice =
  | { readonly code: 'FAILS' }
  | { readonly code: 'NOT_KNOWN' }
  | { readonly code: 'NO_MAKER' }
  | { readonly code: 'NO_CONTACT' }
  | { readonly code: 'NO_TAG_CODE' }
  | { readonly code: 'NO_MADE_DATE' }

const NOTICE_TEXTS: Readonly<Record<SheetNotice['code'], string>> = {
  FAILS: 'The hanger fails: this sheet says what must change, and tells no weight.',
  NOT_KNOWN: 'Not enough is known of the hanger: this sheet says what would settle it, and tells no weight.',
  NO_MAKER: 'The sheet does not say who made the hanger: enter your name.',
  NO_CONTACT: 'The sheet does not say how the maker is reached: enter a telephone number, address or page.',
  NO_TAG_CODE: 'The sheet has no tag code, so the hanger will not be found again by it.',
  NO_MADE_DATE: 'The sheet does not say when the hanger was made, so it has no day by which to replace it.',
}

/** The sentence for the maker. */
export const sheetNoticeText = ({ code }: SheetNotice): string => NOTICE_TEXTS[code]
