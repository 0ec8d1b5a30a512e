import { expect, test } from 'vitest'
import { createDraftStorage, type OpenPages } from '../../../../../renderer/platform/browser/draftStorage'

/** Pages that hold their names until they are closed. */
function browser() {
  const open = new Set<string>()
  localStorage.clear()
  const pages: OpenPages = { hold: (name) => { open.add(name) }, held: async () => open }
  return { page: (name: string) => createDraftStorage(() => localStorage, pages, name), close: (name: string) => { open.delete(name) } }
}

test('a page takes what one that is gone has left, once', async () => {
  const { page, close } = browser()
  const first = page('a')
  await first.keepDraft('fern')
  close('a')
  expect(await page('b').takeDraft()).toBe('fern')
  expect(await page('c').takeDraft()).toBeNull()
})

test('a page never takes what another works on', async () => {
  const { page } = browser()
  await page('a').keepDraft('fern')
  expect(await page('b').takeDraft()).toBeNull()
})

test('what was saved leaves nothing', async () => {
  const { page, close } = browser()
  const first = page('a')
  await first.keepDraft('fern')
  await first.keepDraft(null)
  close('a')
  expect(await page('b').takeDraft()).toBeNull()
})

test('a browser that keeps nothing is done without', async () => {
  const none = createDraftStorage(() => { throw new DOMException('no', 'SecurityError') }, null, 'a')
  await none.keepDraft('fern')
  expect(await none.takeDraft()).toBeNull()
})
