// What a maker does with the app for an hour, drawn by a seed: `whole(low, high)` gives whole numbers.

const DEMOS = [/^Fern over/, /^Glazed pot/, /^Order for/, /^Class sample/, /^Ivy on/, /^(Three pots of herbs|Herbs in a row)/, /^Spider plant/, /^Two tiers/]
const DIALOGS = ['Catalogue', 'Shelf', 'What the place needs', 'Sheets', 'Help']
const TRIED_OUT = ['Choose sizes', 'Maps', 'Compare two hangers', 'Chance']
const OFTEN = ['text', 'text', 'text', 'text', 'text', 'text', 'text', 'choice', 'choice', 'radio', 'radio', 'undo', 'undo', 'part', 'part', 'situation', 'remedy', 'remedy', 'demo', 'dialog', 'tryOut', 'ofField', 'save']

export function makerOn(page, whole) {
  const oneOf = (things) => things[whole(0, things.length - 1)]
  const form = page.getByRole('form', { name: 'Questions' })
  const press = (name) => page.getByRole('button', { name }).first().click()

  /** Opens it, giving up what is not saved, and waits until it is there. */
  async function openDemo(which) {
    await page.getByRole('button', { name: 'Demos' }).click()
    await page.getByRole('button', { name: which }).click()
    const giveUp = page.getByRole('button', { name: 'Don’t save' })
    const name = page.getByRole('textbox', { name: 'Name of the hanger' })
    for (let tries = 0; tries < 50; tries++) {
      if (await giveUp.count() > 0) await giveUp.click()
      if (which.test(await name.inputValue())) return
      await page.waitForTimeout(50)
    }
    throw new Error('The demo did not open.')
  }

  async function openAndClose(open) {
    await open()
    const dialog = page.locator('dialog[open]')
    await dialog.waitFor()
    await page.waitForTimeout(whole(0, 400))
    await page.keyboard.press('Escape')
    await dialog.waitFor({ state: 'detached' }).catch(() => page.keyboard.press('Escape'))
  }

  const deeds = {
    async text() {
      const fields = await form.locator('input[type=text]:visible').all()
      const field = oneOf(fields)
      const was = await field.inputValue() || await field.getAttribute('placeholder') || '3 mm'
      const given = oneOf([was.replace(/\d+(\.\d+)?/, (number) => String(Math.max(1, Math.round(Number(number) * whole(60, 140) / 100)))), was, '', 'half', '12 in', '40 cm', '6 kg'])
      await field.fill(given)
    },
    async choice() {
      const lists = await form.getByRole('combobox').all()
      if (lists.length === 0) return
      const list = oneOf(lists)
      await list.selectOption({ index: whole(0, await list.locator('option').count() - 1) })
    },
    async radio() {
      const radios = await form.locator('input[type=radio]:visible').all()
      if (radios.length > 0) await oneOf(radios).check()
    },
    async undo() { for (let i = whole(1, 6); i > 0; i--) await page.keyboard.press(oneOf(['Control+z', 'Control+z', 'Control+Shift+z'])) },
    async part() { await oneOf(await page.getByRole('navigation', { name: /Parts that carry/ }).getByRole('button').all()).click() },
    async situation() { await oneOf(await page.getByRole('group', { name: 'Situation' }).getByRole('radio').all()).check() },
    // A remedy is offered until the next advice comes, and may be gone when it is pressed.
    async remedy() {
      const tries = page.getByRole('region', { name: 'What would mend it' }).getByRole('button', { name: /^(Try it|Take it back)/ })
      if (await tries.count() > 0) await tries.first().click({ timeout: 1000 }).catch(() => {})
    },
    demo: () => openDemo(oneOf(DEMOS)),
    dialog: () => openAndClose(() => press(oneOf(DIALOGS))),
    tryOut: () => openAndClose(async () => {
      await press('Try out')
      await page.getByRole('button', { name: oneOf(TRIED_OUT), exact: true }).click()
    }),
    /** The guide of a measure, the pull tests, the log of cord weighed by the piece. */
    async ofField() {
      const ways = await form.locator('button:visible').filter({ hasText: /^Measure it/ }).all()
      if (ways.length > 0) await openAndClose(() => oneOf(ways).click())
    },
    async save() { await page.keyboard.press('Control+s') },
  }

  return { deeds, next: () => oneOf(OFTEN), openDemo, first: DEMOS[0] }
}
