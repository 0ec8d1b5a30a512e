import type { Page } from 'playwright/test'

/**
 * Makes every text on the page two fifths longer, as another language would; figures stay as they are.
 * Whatever the page writes anew afterwards is in English again.
 */
export async function lengthenTexts(page: Page): Promise<void> {
  await page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const nodes: Text[] = []
    while (walker.nextNode()) nodes.push(walker.currentNode as Text)
    for (const node of nodes) {
      const words = node.data.trim().split(/\s+/).filter((word) => /\p{L}{3}/u.test(word))
      if (words.length === 0 || node.parentElement?.closest('script, style, svg') || node.data.endsWith('\u2060')) continue
      const more = Math.ceil(node.data.trim().length * 0.4)
      const all = words.join(' ')
      node.data = `${node.data.trimEnd()} ${all.repeat(Math.ceil(more / all.length)).slice(0, more)}\u2060`
    }
  })
}

/**
 * Texts that do not show whole: wider than the page, or than the box that cuts them, which nobody can scroll.
 *
 * @param within selector of the part of the page that is looked at
 */
export const cutOff = (page: Page, within: string): Promise<string[]> =>
  page.evaluate((selector) => {
    const found: string[] = []
    const root = document.querySelector(selector) ?? document.body
    const hidden = (element: Element): boolean => element.closest('.visually-hidden, [hidden], svg') !== null || !element.checkVisibility({ visibilityProperty: true })
    const isTiny = ({ clipPath, position }: CSSStyleDeclaration): boolean => position === 'absolute' && clipPath !== 'none'
    for (const element of root.querySelectorAll<HTMLElement>('*')) {
      const own = [...element.childNodes].filter((node): node is Text => node instanceof Text && node.data.trim() !== '')
      if (own.length === 0 || hidden(element)) continue
      const range = document.createRange()
      for (const node of own) {
        range.selectNodeContents(node)
        const text = range.getBoundingClientRect()
        if (text.width === 0) continue
        for (let box: HTMLElement | null = element; box !== null; box = box.parentElement) {
          const style = getComputedStyle(box)
          if (isTiny(style)) break
          const { left, right, top, bottom } = box.getBoundingClientRect()
          const cutsAcross = style.overflowX === 'hidden' || style.overflowX === 'clip' || box === document.body
          const cutsDown = style.overflowY === 'hidden' || style.overflowY === 'clip'
          // A strip in one line is meant to be scrolled along.
          if (box.matches('nav') && getComputedStyle(element).whiteSpace === 'nowrap') break
          const scrolls = style.overflowY === 'auto' || style.overflowY === 'scroll'
          if ((cutsAcross || scrolls) && (text.right > right + 1 || text.left < left - 1)) { found.push(`${box.tagName.toLowerCase()}.${box.className} cuts “${node.data.trim().slice(0, 40)}” across`); break }
          if (cutsDown && (text.bottom > bottom + 1 || text.top < top - 1)) { found.push(`${box.tagName.toLowerCase()}.${box.className} cuts “${node.data.trim().slice(0, 40)}” below`); break }
          if (scrolls) break
        }
      }
    }
    return found
  }, within)
