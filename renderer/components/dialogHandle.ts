/** What is done to a dialog from outside it. */
export interface DialogHandle {
  readonly open: () => Promise<void>
  readonly close: () => void
  /** The heading keeps the place where what had the focus is gone. */
  readonly focusHeading: () => void
  readonly scrollToTop: () => void
}
