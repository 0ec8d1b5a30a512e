/** What can have the focus. */
const FOCUSABLE = 'button:not(:disabled), input:not(:disabled), select:not(:disabled), summary, [tabindex]'

/**
 * Remembers where the focus is. The answer brings it back there, or where that is gone meanwhile (what was found is
 * settled, and its button with it) to the first thing nearby that can have it.
 */
export function rememberFocus(): () => void {
  const was = document.activeElement
  const around: Element[] = []
  for (let element = was; element !== null; element = element.parentElement) around.push(element)
  return () => {
    const near = around.find((element) => element.isConnected)
    const target = near === was ? was : near?.querySelector(FOCUSABLE)
    if (target instanceof HTMLElement) target.focus()
  }
}
