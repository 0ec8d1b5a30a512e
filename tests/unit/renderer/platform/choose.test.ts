import { afterEach, expect, test, vi } from 'vitest'

afterEach(() => {
  vi.resetModules()
  vi.unstubAllGlobals()
})

test('with the shell\'s bridge, the desktop', async () => {
  const recent = vi.fn(async () => [])
  vi.stubGlobal('strandwise', { recent })
  const { platform } = await import('../../../../renderer/platform/choose')
  await platform.recent()
  expect(recent).toHaveBeenCalledOnce()
})

test('without it, the browser', async () => {
  const { platform } = await import('../../../../renderer/platform/choose')
  localStorage.setItem('strandwise.recent', '[{"token": "1", "name": "fern.strandwise", "text": "{}"}]')
  expect(await platform.recent()).toEqual([{ token: '1', name: 'fern.strandwise', place: null }])
})
