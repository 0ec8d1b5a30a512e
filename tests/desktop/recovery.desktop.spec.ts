import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'playwright/test'
import { desktopApp } from './desktopApp'
import { answerSaving } from './dialogs'

const desktop = desktopApp()
const rim = () => desktop.page.getByRole('textbox', { name: 'Width of the pot at the rim' }).first()
const draft = () => join(desktop.memory, 'draft.json')

test('a hanger that was not saved comes back after the app was killed, and not after it was saved and closed', async () => {
  await rim().fill('213 mm')
  await rim().blur()
  await expect.poll(() => existsSync(draft()), 'the draft is written').toBe(true)

  await desktop.crash()
  await expect(rim()).toHaveValue('213 mm')
  await expect(desktop.page.getByText('Strandwise ended before this hanger was saved')).toBeVisible()

  await answerSaving(desktop.app, join(desktop.folder, 'found.strandwise'))
  await desktop.page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect.poll(() => existsSync(draft()), 'the draft is gone').toBe(false)
  await desktop.restart()
  await expect(rim()).toHaveValue('')
})
