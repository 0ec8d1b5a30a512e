import type { App } from 'vue'

/** Something a browser says of a list that is drawn anew while it is measured; it harms nothing. */
const HARMLESS = /ResizeObserver loop/

/** Hears of every fault that nobody caught, in the window's parts and beside them. */
export function watchFaults(app: App, page: Window, note: (fault: unknown, where: string) => void): void {
  app.config.errorHandler = (error, _part, where) => {
    note(error, where)
    // Developers look for it where they are used to.
    console.error(error)
  }
  page.addEventListener('error', ({ error, message }) => {
    if (!HARMLESS.test(message)) note(error ?? message, 'page')
  })
  page.addEventListener('unhandledrejection', ({ reason }) => note(reason, 'promise'))
}
