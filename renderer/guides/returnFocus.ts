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
    if (was?.isConnected === true) return void (was as HTMLElement).focus()
    for (const element of around.filter((one) => one.isConnected)) {
      const target = element.querySelector<HTMLElement>(FOCUSABLE)
      if (target !== null) return target.focus()
    }
  }
}
