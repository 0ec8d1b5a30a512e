import { writeFileSync } from 'node:fs'
import type { BrowserWindow } from 'electron'
import { expect, test } from 'vitest'
import { rememberedPlace, rememberPlace } from '../../../../electron/main/windowPlace'
import { temporaryFolder } from './temporaryFolder'

const folder = temporaryFolder()
const left = { x: 0, y: 0, width: 1600, height: 900 }
const right = { x: 1600, y: -200, width: 1920, height: 1080 }
const usual = rememberedPlace('/no/such/file', [left])

function remembered(state: unknown, screens = [left, right]) {
  writeFileSync(folder.file('window.json'), typeof state === 'string' ? state : JSON.stringify(state))
  return rememberedPlace(folder.file('window.json'), screens)
}

test('a window opens where it was closed', () => {
  const bounds = { x: 1700, y: -100, width: 900, height: 700 }
  rememberPlace(folder.file('window.json'), { getNormalBounds: () => bounds, isMaximized: () => true } as BrowserWindow)
  expect(rememberedPlace(folder.file('window.json'), [left, right])).toEqual({ bounds, maximized: true })
})

test('not where no screen is any more', () => {
  const place = { bounds: { x: 3000, y: 400, width: 900, height: 700 }, maximized: false }
  expect(remembered(place)).toEqual(place)
  expect(remembered(place, [left])).toEqual(usual)
  expect(remembered({ ...place, bounds: { ...place.bounds, x: 1550 } }, [left])).toEqual(usual)
})

test('never too small to use', () => {
  expect(remembered({ bounds: { x: 10, y: 20, width: 110, height: 100 } })).toEqual({ bounds: { x: 10, y: 20, width: 640, height: 480 }, maximized: false })
})

test.each(['', 'null', '[]', '{"bounds": null}', '{"bounds": {"x": 0, "y": 0, "width": 1e99, "height": "9"}}', '{"bounds": {"x": 0}}'])('as usual after a memory that reads %j', (text) => {
  expect(remembered(text)).toEqual(usual)
})
