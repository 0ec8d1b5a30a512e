import { expect, test, vi } from 'vitest'
import type { StrandwiseBridge } from '../../../../electron/contract'
import { desktopPlatform } from '../../../../renderer/platform/desktop'

function bridged() {
  const bridge = {
    saveHanger: vi.fn(),
    setUnsaved: vi.fn(async () => undefined),
    takeOpened: vi.fn(async () => undefined),
    closeAfterSave: vi.fn(async () => undefined),
    onOpened: vi.fn<(listener: unknown) => () => string>(() => () => 'stopped'),
    onSaveBeforeClose: vi.fn<(listener: () => void) => () => string>(() => () => 'stopped'),
  }
  return { bridge, platform: desktopPlatform(bridge as unknown as StrandwiseBridge) }
}

test('questions go to the bridge as they are', async () => {
  const { bridge, platform } = bridged()
  bridge.saveHanger.mockResolvedValue({ ok: true })
  expect(await platform.saveHanger('seven', '{}', { overwrite: true })).toEqual({ ok: true })
  expect(bridge.saveHanger).toHaveBeenCalledWith('seven', '{}', { overwrite: true })
  platform.setUnsaved(true)
  expect(bridge.setUnsaved).toHaveBeenCalledWith(true)
})

test('a dropped file is read in the page, and nobody is told where it lies', async () => {
  const { platform } = bridged()
  const dropped = (text: string) => ({ files: [new File([text], 'fern.strandwise')] }) as unknown as DataTransfer
  expect(await platform.openDropped(dropped('{}'))).toEqual({ ok: true, hanger: { token: null, name: 'fern.strandwise', text: '{}' } })
  expect(await platform.openDropped(dropped('x'.repeat(1_048_577)))).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
})

test('files that wait are asked for only once somebody listens', () => {
  const { bridge, platform } = bridged()
  const listener = vi.fn()
  expect(bridge.takeOpened).not.toHaveBeenCalled()
  expect(platform.onOpened(listener)()).toBe('stopped')
  expect(bridge.onOpened).toHaveBeenCalledWith(listener)
  expect(bridge.onOpened.mock.invocationCallOrder[0]).toBeLessThan(bridge.takeOpened.mock.invocationCallOrder[0] ?? 0)
})

test.each([[true, 1], [false, 0]])('saving before the window closes: saved %s, so closed %i times', async (saved, closed) => {
  const { bridge, platform } = bridged()
  const save = vi.fn(async () => saved)
  platform.onSaveBeforeClose(save)
  const [heard] = bridge.onSaveBeforeClose.mock.calls[0] ?? []
  heard?.()
  await vi.waitFor(() => { expect(save).toHaveBeenCalledOnce() })
  await save.mock.results[0]?.value
  await Promise.resolve()
  expect(bridge.closeAfterSave).toHaveBeenCalledTimes(closed)
})
