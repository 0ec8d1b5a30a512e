import { expect, test } from 'vitest'
import { createApp } from 'vue'
import { reportText } from '../../../../renderer/faults/report'
import { watchFaults } from '../../../../renderer/faults/watchFaults'

const STACK = 'TypeError: x is not a function\n    at render (strandwise-app://app/assets/index-Dx1.js:12:7)\n    at C:\\Users\\Mira\\Strandwise\\out\\main.js:3:1\n    at /home/mira/strandwise/out/main.js:9:2'

test('tells the version, the engine and where it broke, by the last part of each place only', () => {
  const report = reportText([{ message: 'x is not a function', stack: STACK, where: 'render function' }], 'Chromium 140', [])
  expect(report).toMatch(/^Strandwise \d+\.\d+\.\d+\nChromium 140\n\nrender function: x is not a function\n/)
  expect(report).toContain('at render (index-Dx1.js:12:7)')
  expect(report).toContain('main.js:3:1')
  expect(report).not.toMatch(/mira|Users|home/i)
})

test('nothing of what was typed is in it', () => {
  const report = reportText([{ message: 'cannot read “Fern for Mrs Ostrowska” at 3 mm', stack: '', where: 'page' }], 'Chromium 140', ['Fern for Mrs Ostrowska', '3 mm', ''])
  expect(report).toContain('page: cannot read “…” at …')
})

test('hears of faults in parts, beside them and in promises, and leaves out what harms nothing', () => {
  const heard: string[] = []
  const page = new EventTarget() as Window
  const app = createApp({})
  watchFaults(app, page, (fault, where) => heard.push(`${where}: ${fault instanceof Error ? fault.message : String(fault)}`))
  page.dispatchEvent(Object.assign(new Event('error'), { error: new Error('a'), message: 'a' }))
  page.dispatchEvent(Object.assign(new Event('error'), { error: null, message: 'ResizeObserver loop completed with undelivered notifications.' }))
  page.dispatchEvent(Object.assign(new Event('unhandledrejection'), { reason: 'b' }))
  expect(heard).toEqual(['page: a', 'promise: b'])
  expect(app.config.errorHandler).toBeTypeOf('function')
})
