import { expect, test } from 'playwright/test'
import { hangerPage } from './hangerPage'

const TIMES = 20

/** Middle and largest of some times, ms, to a tenth. */
const figures = (times: readonly number[]): string => {
  const sorted = times.toSorted((a, b) => a - b)
  return `${(sorted[Math.floor(sorted.length / 2)] ?? NaN).toFixed(1)} (${(sorted.at(-1) ?? NaN).toFixed(1)})`
}

test('a keystroke is reckoned and painted; how long that takes is printed', async ({ page }) => {
  test.slow()
  const hanger = hangerPage(page)
  await hanger.open()
  for (const demo of [/Fern over/, /Glazed pot/, /Herbs in a row/, /Two tiers/]) {
    await hanger.openDemo(demo)
    await expect(hanger.drawing.getByRole('img').first()).toBeVisible()
    const input = hanger.questions.getByRole('textbox', { name: 'Width of the pot at the rim', exact: true })
    const typed = await input.inputValue()
    const { work, painted, seen } = await input.evaluate(async (field: HTMLInputElement, [given, times]: [string, number]) => {
      const after = (): Promise<number> => new Promise((resolve) => {
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel()
          port1.onmessage = () => { resolve(performance.now()) }
          port2.postMessage(null)
        })
      })
      const drawn = () => document.querySelector('section[aria-label="Drawing"] svg')?.innerHTML ?? ''
      const found = { work: [] as number[], painted: [] as number[], seen: new Set<string>() }
      const [number = 0, unit = ''] = [parseFloat(given), given.replace(/^[\d.]+/, '')]
      for (let i = 0; i < times; i++) {
        await after()
        field.value = `${(number * (1 + (i % 5) / 100)).toFixed(2)}${unit}`
        const began = performance.now()
        field.dispatchEvent(new Event('input', { bubbles: true }))
        // Microtasks run out before a new task: what is left is the frame's own.
        await new Promise((resolve) => { setTimeout(resolve) })
        found.work.push(performance.now() - began)
        found.painted.push(await after() - began)
        found.seen.add(drawn())
      }
      return { ...found, seen: found.seen.size }
    }, [typed, TIMES] as [string, number])
    // Each width is drawn otherwise: nothing was timed that did not happen.
    expect(seen).toBeGreaterThanOrEqual(5)
    await page.getByRole('button', { name: 'Undo' }).click()
    console.log(`${demo.source}: script ${figures(work)} ms, on the screen after ${figures(painted)} ms; middle of ${TIMES} (longest)`)
  }
})
