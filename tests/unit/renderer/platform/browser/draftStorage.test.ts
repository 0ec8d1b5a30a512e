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

test('what was taken is there again should the page that took it end at once', async () => {
  const { page, close } = browser()
  await page('a').keepDraft('fern')
  close('a')
  await page('b').takeDraft()
  close('b')
  expect(await page('c').takeDraft()).toBe('fern')
})

test('where room is short it is told, and the draft before stays', async () => {
  const { page, close } = browser()
  expect(await page('a').keepDraft('fern')).toEqual({ ok: true })
  const full = { setItem: () => { throw new DOMException('full', 'QuotaExceededError') } } as unknown as Storage
  expect(await createDraftStorage(() => full, null, 'a').keepDraft('fern and ivy')).toMatchObject({ ok: false, problem: { code: 'DISK_FULL' } })
  close('a')
  expect(await page('b').takeDraft()).toBe('fern')
})

test('a browser that keeps nothing is done without, and says so', async () => {
  const none = createDraftStorage(() => { throw new DOMException('no', 'SecurityError') }, null, 'a')
  expect(await none.keepDraft('fern')).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  expect(await none.takeDraft()).toBeNull()
})
