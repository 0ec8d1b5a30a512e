import { beforeAll, expect, test, vi } from 'vitest'
import { EVENTS, REQUESTS } from '../../../../electron/contract'

const electron = vi.hoisted(() => ({
  contextBridge: { exposeInMainWorld: vi.fn() },
  ipcRenderer: { invoke: vi.fn(), on: vi.fn(), off: vi.fn() },
}))
vi.mock('electron', () => electron)

let bridge: Readonly<Record<string, (...args: unknown[]) => unknown>>
beforeAll(async () => {
  await import('../../../../electron/preload')
  const [name, exposed] = electron.contextBridge.exposeInMainWorld.mock.calls[0] as [string, typeof bridge]
  expect(name).toBe('strandwise')
  bridge = exposed
})

test('each method is there, and none besides', () => {
  expect(Object.keys(bridge).sort()).toEqual(Object.keys({ ...REQUESTS, ...EVENTS }).sort())
})

test.each(Object.entries(REQUESTS))('%s asks on its own channel, with all its arguments', async (name, channel) => {
  const args = ['first', 'second', 'third'].slice(0, bridge[name]?.length)
  electron.ipcRenderer.invoke.mockResolvedValueOnce('answer')
  expect(await bridge[name]?.(...args)).toBe('answer')
  expect(electron.ipcRenderer.invoke).toHaveBeenLastCalledWith(channel, ...args)
})

test.each(Object.entries(EVENTS))('%s hears its own channel until it is stopped, and never the event itself', (name, channel) => {
  const listener = vi.fn()
  const stop = bridge[name]?.(listener) as () => void
  const [heard, receive] = electron.ipcRenderer.on.mock.lastCall as [string, (...args: unknown[]) => void]
  expect(heard).toBe(channel)
  receive({ sender: 'ipcRenderer' }, 'told')
  expect(listener.mock.calls).toEqual([['told']])
  stop()
  expect(electron.ipcRenderer.off).toHaveBeenLastCalledWith(channel, receive)
})
