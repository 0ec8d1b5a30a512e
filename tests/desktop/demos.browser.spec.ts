import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

const DEMOS = [
  { title: /^Fern over/, name: /^Fern over the sideboard$/, verdict: 'The hanger holds. The place holds.' },
  { title: /^Glazed pot/, name: /^Glazed pot by the reading chair$/, verdict: 'The hanger fails. The place fails.' },
  { title: /^Order for/, name: /^Order for a rented flat$/, verdict: 'The hanger just holds. Not enough is known of the place.' },
  { title: /^Class sample/, name: /^Class sample/, verdict: 'The hanger just holds. The place holds.' },
  { title: /^Ivy on/, name: /^Ivy on a bracket/, verdict: 'The hanger just holds. The place holds.' },
  { title: /^Herbs in a row/, name: /^Three pots of herbs/, verdict: 'The hanger holds. The place holds.' },
  { title: /^Spider plant/, name: /^Spider plant/, verdict: 'The hanger just holds. The place just holds.' },
  { title: /^Two tiers/, name: /^Two tiers/, verdict: 'The hanger holds. The place holds.' },
]

/** One of each arrangement. */
const DRAWN = [/^Fern over/, /^Herbs in a row/, /^Spider plant/, /^Two tiers/].map(String)

test('each demo comes to its verdict, and one of each arrangement is drawn in every situation', async ({ page }) => {
  const hanger = hangerPage(page)
  await hanger.open()
  for (const { title, name, verdict } of DEMOS) {
    await hanger.openDemo(title)
    await expect(page.getByRole('textbox', { name: 'Name of the hanger' })).toHaveValue(name)
    await expect(hanger.sentences).toHaveText(verdict)
    const drawing = hanger.drawing.getByRole('img').first()
    await expect(drawing).toBeVisible()
    if (!DRAWN.includes(String(title))) continue
    const pictures = new Set<string>()
    const situations = await hanger.drawing.getByRole('group', { name: 'Situation' }).getByRole('radio').all()
    expect(situations.length).toBeGreaterThan(4)
    for (const situation of situations) {
      await situation.check()
      await expect(drawing).toBeVisible()
      pictures.add(await drawing.innerHTML())
    }
    expect(pictures.size, title.source).toBeGreaterThan(1)
  }
})
