import { execFileSync } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { expect, test, type Page } from 'playwright/test'
import { hangerPage } from './hangerPage'

const root = resolve(import.meta.dirname, '../..')

interface Checked {
  readonly geometry: { readonly ringHeight: number, readonly legLength: number, readonly leaveRadius: number, readonly leaveHeight: number, readonly centreOfGravity: Readonly<Record<string, number>> }
  readonly sling: Readonly<Record<string, { readonly T: readonly number[], readonly tilt_deg: number, readonly cg: readonly number[] }>>
}

/** The same hanger as the command line solves it. */
function solved(file: string): Checked {
  const answer = execFileSync(process.execPath, ['electron/launch.mjs', 'cli', 'check', `src/hanger/demos/${file}`, '--json'], { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })
  return JSON.parse(answer) as Checked
}

interface Leg {
  readonly leg: number
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}

/** Ends of the legs in one view, mm, y upwards, by number. */
async function legsIn(page: Page, view: 'front' | 'above'): Promise<readonly Leg[]> {
  const legs = await page.locator(`[data-view='${view}'] line[data-leg]`).evaluateAll((lines) => lines.map((line) => {
    const number = (name: string): number => Number(line.getAttribute(name))
    return { leg: number('data-leg'), from: [number('x1'), -number('y1')] as const, to: [number('x2'), -number('y2')] as const }
  }))
  return legs.sort((a, b) => a.leg - b.leg)
}

// Both answers are solved to far less than this; it is a hundredth of what a pencil line is wide.
const CLOSE = 0.001

test('leg ends read off the drawing are the solved points', async ({ page }) => {
  const { geometry, sling } = solved('fern-over-the-sideboard.strandwise')
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  await expect(page.locator('[data-view=\'front\'] line[data-leg]')).toHaveCount(4)
  const front = await legsIn(page, 'front')
  const above = await legsIn(page, 'above')
  expect(above).toHaveLength(4)
  // The cord stretches: the pot hangs as much lower as its centre of gravity does.
  const lower = (sling['watered']?.cg[2] ?? NaN) - (geometry.centreOfGravity['watered'] ?? NaN)
  expect(lower).toBeLessThan(0)
  expect(sling['watered']?.tilt_deg).toBeCloseTo(0, 6)
  for (const [i, leg] of front.entries()) {
    const seen = above[i]
    if (seen === undefined) throw new Error('a leg is missing from above')
    expect(leg.from[0]).toBeCloseTo(0, 6)
    expect(Math.abs(leg.from[1] - 1000 * geometry.ringHeight)).toBeLessThan(CLOSE)
    // The same leg from above has the same x, and there shows how deep it runs.
    expect(seen.to[0]).toBeCloseTo(leg.to[0], 6)
    expect(Math.abs(Math.hypot(seen.to[0], seen.to[1]) - 1000 * geometry.leaveRadius)).toBeLessThan(CLOSE)
    expect(Math.abs(leg.to[1] - 1000 * (geometry.leaveHeight + lower))).toBeLessThan(CLOSE)
  }
})

test('with one leg gone the rest are drawn as long as they are', async ({ page }) => {
  const { geometry, sling } = solved('fern-over-the-sideboard.strandwise')
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  await hanger.drawing.getByRole('radio', { name: 'one leg gone' }).check()
  await expect(page.locator('[data-view=\'front\'] line[data-leg]')).toHaveCount(3)
  const front = await legsIn(page, 'front')
  const above = await legsIn(page, 'above')
  expect(front.map(({ leg }) => leg)).toEqual([2, 3, 4])
  const tensions = sling['legParted']?.T ?? []
  expect(tensions).toHaveLength(3)
  for (const [i, leg] of front.entries()) {
    const deep = above[i]?.to[1] ?? NaN
    const length = Math.hypot(leg.to[0] - leg.from[0], leg.to[1] - leg.from[1], deep)
    if ((tensions[i] ?? 0) > 0) expect(length).toBeGreaterThan(1000 * geometry.legLength - CLOSE)
    expect(length).toBeLessThan(1000 * geometry.legLength * 1.05)
  }
})

test('the drawing is looked at from each side, closer and whole again, typed on, and saved', async ({ page }) => {
  await page.addInitScript(() => { Reflect.deleteProperty(window, 'showSaveFilePicker') })
  const hanger = hangerPage(page)
  await hanger.open()
  await hanger.openDemo(/Fern over/)
  const views = page.locator('[data-view]:not([data-view="loupe"])')
  const shown = (): Promise<(string | null)[]> => views.evaluateAll((groups) => groups.map((group) => group.getAttribute('data-view')))
  await expect.poll(shown).toEqual(['front', 'above'])
  for (const view of ['side', 'above', 'front']) {
    await hanger.drawing.getByRole('radio', { name: view, exact: true }).check()
    await expect.poll(shown).toEqual([view])
  }
  await hanger.drawing.getByRole('radio', { name: 'together', exact: true }).check()
  await page.setViewportSize({ width: 2400, height: 1200 })
  await expect.poll(shown).toEqual(['front', 'side', 'above'])

  const sheet = hanger.drawing.getByRole('group', { name: /Plus and minus/ })
  const picture = sheet.getByRole('img')
  const seen = async (): Promise<readonly number[]> => (await picture.getAttribute('viewBox') ?? '').split(' ').map(Number)
  const lettersOf = (): Promise<number> => sheet.locator('[data-path="pot.height"]').first().evaluate((number) => parseFloat(getComputedStyle(number).fontSize))
  const [whole, letters] = [await seen(), await lettersOf()]
  await sheet.press('+')
  await sheet.press('+')
  await sheet.press('ArrowDown')
  const [x = 0, y = 0, width = 0] = await seen()
  expect(width).toBeLessThan((whole[2] ?? 0) / 1.9)
  expect(await lettersOf()).toBe(letters)
  // A drag to the right and down brings what lies left and above.
  const box = await sheet.boundingBox() ?? { x: 0, y: 0, width: 0, height: 0 }
  await page.mouse.move(box.x + 300, box.y + 300)
  await page.mouse.down()
  await page.mouse.move(box.x + 340, box.y + 330, { steps: 4 })
  await page.mouse.up()
  expect((await seen())[0]).toBeCloseTo(x - (40 * width) / box.width, 3)
  expect((await seen())[1]).toBeLessThan(y)
  // A number out of sight is brought into it by whoever tabs there.
  await sheet.locator('[data-path="hook.projection"]').first().focus()
  await expect.poll(async () => (await seen())[1]).toBeLessThan(y - 50)
  await page.mouse.dblclick(box.x + 20, box.y + 20)
  await expect.poll(seen).toEqual(whole)

  const rim = sheet.locator('[data-path="pot.rim"]').first()
  await rim.press('Enter')
  await sheet.getByRole('textbox').fill('17 parsnips')
  await sheet.getByRole('textbox').press('Enter')
  await expect(rim).toBeFocused()
  await expect(rim).toHaveText('17 parsnips')
  await expect(rim).toHaveAccessibleDescription(/“?parsnips”? is not a unit/)
  await rim.press('Enter')
  await sheet.getByRole('textbox').fill('18 cm')
  await sheet.getByRole('textbox').press('Enter')
  await expect(rim).toHaveAccessibleDescription('')

  const downloading = page.waitForEvent('download')
  await hanger.drawing.getByRole('button', { name: 'Save drawing…' }).click()
  const download = await downloading
  expect(download.suggestedFilename()).toBe('Fern over the sideboard.svg')
  const svg = await readFile(await download.path(), 'utf8')
  // Read by the browser's own parser, and painted without anything from outside.
  const read = await page.evaluate((text) => {
    const { documentElement: root } = new DOMParser().parseFromString(text, 'image/svg+xml')
    return { name: root.nodeName, wrong: root.getElementsByTagName('parsererror').length, title: root.querySelector('title')?.textContent, width: root.getAttribute('width') }
  }, svg)
  expect(read).toEqual({ name: 'svg', wrong: 0, title: 'Fern over the sideboard. The hanger to scale, from the front, from the side and from above: At rest, just watered', width: expect.stringMatching(/^[\d.]+mm$/) as unknown as string })
  expect(svg).toContain('>18 cm</text>')
})
