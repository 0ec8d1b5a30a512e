import type { ElectronApplication } from 'playwright/test'

/** From now on every dialog for saving answers with this path, or is dismissed. */
export const answerSaving = (app: ElectronApplication, path: string | null): Promise<void> =>
  app.evaluate(({ dialog }, filePath) => {
    dialog.showSaveDialog = () => Promise.resolve({ canceled: filePath === null, filePath: filePath ?? '' })
  }, path)

/** From now on every dialog for opening answers with this path. */
export const answerOpening = (app: ElectronApplication, path: string): Promise<void> =>
  app.evaluate(({ dialog }, filePath) => {
    dialog.showOpenDialog = () => Promise.resolve({ canceled: false, filePaths: [filePath] })
  }, path)

/** From now on every question is answered with the button that says this. */
export const answerQuestions = (app: ElectronApplication, button: string): Promise<void> =>
  app.evaluate(({ dialog }, label) => {
    dialog.showMessageBox = ((...args: unknown[]) => {
      const { buttons } = args.at(-1) as { buttons: string[] }
      return Promise.resolve({ response: buttons.indexOf(label), checkboxChecked: false })
    })
  }, button)
