import { execFileSync } from 'node:child_process'
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
