/** What is done to a dialog from outside it. */
export interface DialogHandle {
  readonly open: () => Promise<void>
  readonly close: () => void
  /** While it is open the rest of the page counts as not there, a tagged PDF included; not so during the deed. */
  readonly letGo: (deed: () => Promise<void>) => Promise<void>
  /** The heading keeps the place where what had the focus is gone. */
  readonly focusHeading: () => void
  readonly scrollToTop: () => void
}
