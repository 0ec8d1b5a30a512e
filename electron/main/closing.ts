/** What the user wants done with changes that are not saved. */
export type ClosingAnswer = 'save' | 'discard' | 'cancel'

interface ClosingWindow {
  on(event: 'close', listener: (event: { preventDefault(): void }) => void): unknown
}

export interface ClosingActions {
  readonly ask: () => Promise<ClosingAnswer>
  /** Asks the page to save; it answers by `closeAfterSave`, or not at all. */
  readonly requestSave: () => void
  readonly closeWindow: () => void
  readonly quit: () => void
}

/** Stands between the window and its closing while something would be lost. */
export interface Closing {
  readonly setUnsaved: (unsaved: boolean) => void
  /** The whole app is to quit, not this window alone. */
  readonly setQuitting: () => void
  readonly closeAfterSave: () => void
}

/** To be called once for each window, before it can be closed. */
export function guardClosing(window: ClosingWindow, actions: ClosingActions): Closing {
  let unsaved = false
  let quitting = false
  let leaving = false
  let asking = false
  let resume = actions.closeWindow

  function leave(): void {
    leaving = true
    resume()
  }

  async function ask(): Promise<void> {
    asking = true
    const answer = await actions.ask().finally(() => { asking = false })
    if (answer === 'save') actions.requestSave()
    else if (answer === 'discard') leave()
  }

  window.on('close', (event) => {
    if (!unsaved || leaving) return
    event.preventDefault()
    // A quit that was put off is resumed after saving, but must not outlive the question.
    resume = quitting ? actions.quit : actions.closeWindow
    quitting = false
    if (!asking) void ask()
  })

  return {
    setUnsaved: (now) => { unsaved = now },
    setQuitting: () => { quitting = true },
    closeAfterSave: leave,
  }
}
