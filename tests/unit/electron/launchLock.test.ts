import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { isLeftBehind, withLock } from '../../../electron/launch/lock.mjs'

let base: string
let lock: string
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'lock-'))
  lock = join(base, 'out/.lock')
})
afterEach(() => rmSync(base, { recursive: true }))

const leave = (owner: number | null, secondsAgo: number): void => {
  mkdirSync(lock, { recursive: true })
  if (owner !== null) writeFileSync(join(lock, 'owner'), String(owner))
  const time = Date.now() / 1000 - secondsAgo
  utimesSync(lock, time, time)
}
const deadProcess = (): number => spawnSync(process.execPath, ['-e', '']).pid

describe('the lock', () => {
  it('lets one work at a time and goes away', async () => {
    const order: string[] = []
    const work = (name: string) => async (): Promise<string> => {
      order.push(`${name} begins`)
      await pause(30)
      order.push(`${name} ends`)
      return name
    }
    const waited = vi.fn()
    const both = await Promise.all([withLock(lock, waited, work('first')), withLock(lock, waited, work('second'))])
    expect(both).toEqual(['first', 'second'])
    expect(order).toEqual(['first begins', 'first ends', 'second begins', 'second ends'])
    expect(waited).toHaveBeenCalledTimes(1)
    expect(existsSync(lock)).toBe(false)
  })

  it('goes away when the work fails', async () => {
    await expect(withLock(lock, vi.fn(), () => Promise.reject(new Error('no disk')))).rejects.toThrow('no disk')
    expect(existsSync(lock)).toBe(false)
  })

  it('is taken over from a process that has died', async () => {
    leave(deadProcess(), 1)
    const waited = vi.fn()
    expect(await withLock(lock, waited, () => Promise.resolve('done'))).toBe('done')
    expect(waited).not.toHaveBeenCalled()
  })

  it.each<[string, () => void, boolean]>([
    ['of a running process', () => leave(process.pid, 60), false],
    ['of a process that has died', () => leave(deadProcess(), 1), true],
    ['whose owner is just being written', () => leave(null, 1), false],
    ['that never got an owner', () => leave(null, 30), true],
    ['older than any installation takes', () => leave(process.pid, 3600), true],
  ])('%s', (_what, prepare, leftBehind) => {
    prepare()
    expect(isLeftBehind(lock)).toBe(leftBehind)
  })
})
