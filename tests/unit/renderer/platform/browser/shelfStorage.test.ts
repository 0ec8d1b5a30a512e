import { beforeEach, expect, test } from 'vitest'
import { createShelfStorage } from '../../../../../renderer/platform/browser/shelfStorage'

const KEY = 'strandwise.shelf'
const opened = () => createShelfStorage(() => localStorage)
beforeEach(() => { localStorage.clear() })

test('is kept over a reload', async () => {
  const first = opened()
  expect(await first.loadShelf()).toEqual({ ok: true, text: null })
  expect(await first.saveShelf('one')).toEqual({ ok: true })
  expect(await first.saveShelf('two')).toEqual({ ok: true })
  expect(await opened().loadShelf()).toEqual({ ok: true, text: 'two' })
})

test('is not written over what another window wrote', async () => {
  const [mine, theirs] = [opened(), opened()]
  await mine.saveShelf('mine')
  await theirs.loadShelf()
  await theirs.saveShelf('theirs')
  expect(await mine.saveShelf('mine again')).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await mine.loadShelf()).toEqual({ ok: true, text: 'theirs' })
  expect(await mine.saveShelf('both')).toEqual({ ok: true })
})

test('is put aside whole, and never over another', async () => {
  const shelf = opened()
  expect(await shelf.setAsideShelf()).toEqual({ ok: true, name: null })
  const aside: unknown[] = []
  for (const text of ['first', 'second']) {
    localStorage.setItem(KEY, text)
    aside.push(await shelf.setAsideShelf())
  }
  expect(aside).toEqual([{ ok: true, name: `${KEY}-set-aside-1` }, { ok: true, name: `${KEY}-set-aside-2` }])
  expect([`${KEY}-set-aside-1`, `${KEY}-set-aside-2`, KEY].map((key) => localStorage.getItem(key))).toEqual(['first', 'second', null])
  expect(await shelf.saveShelf('mine')).toEqual({ ok: true })
})

test('a browser that keeps nothing, or no more, says so', async () => {
  const closed = createShelfStorage(() => { throw new DOMException('no', 'SecurityError') })
  for (const outcome of [await closed.loadShelf(), await closed.saveShelf('x'), await closed.setAsideShelf()]) {
    expect(outcome).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  }
  const full = createShelfStorage(() => ({ getItem: () => null, setItem: () => { throw new DOMException('full', 'QuotaExceededError') } }) as unknown as Storage)
  expect(await full.saveShelf('x')).toMatchObject({ ok: false, problem: { code: 'DISK_FULL' } })
  expect(await opened().saveShelf('x'.repeat(1_048_577))).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
  expect(localStorage.getItem(KEY)).toBeNull()
})
