import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { listenToHands } from '../../../../renderer/drawing/hands'

let sheet: HTMLElement
let number: HTMLElement
let stop: () => void
let isWhole = false
let canMove = true
const did: string[] = []
const chosen = vi.fn()

const said = (name: string, ...values: readonly number[]): void => { did.push([name, ...values.map((value) => Math.round(value * 100) / 100)].join(' ')) }

beforeEach(() => {
  sheet = document.createElement('div')
  number = document.createElement('button')
  sheet.append(number, document.createElement('span'))
  document.body.append(sheet)
  sheet.setPointerCapture = () => undefined
  isWhole = false
  canMove = true
  did.length = 0
  chosen.mockReset()
  sheet.addEventListener('click', chosen)
  stop = listenToHands(sheet, {
    isWhole: () => isWhole,
    magnify: (factor, x, y) => { said('magnify', factor, x, y) },
    move: (dx, dy) => { said('move', dx, dy); return canMove },
    fit: () => { said('fit') },
    key: (name) => { said(`key ${name}`); return name === '+' },
  })
})
afterEach(() => {
  stop()
  sheet.remove()
})

/** Whether the page was kept from doing its own. */
function send(event: Event, target: Element): boolean {
  target.dispatchEvent(event)
  return event.defaultPrevented
}
// The keys held with a wheel, which this document leaves out.
const wheel = (init: WheelEventInit): boolean => send(Object.assign(new WheelEvent('wheel', { bubbles: true, cancelable: true, ...init }), { ctrlKey: init.ctrlKey ?? false, shiftKey: init.shiftKey ?? false, clientX: init.clientX, clientY: init.clientY }), sheet)
const pointer = (type: string, x: number, y: number, pointerId: number, target: Element): boolean => send(new PointerEvent(type, { bubbles: true, cancelable: true, button: 0, pointerId, clientX: x, clientY: y }), target)
const span = (): Element => sheet.lastElementChild as Element

test('the wheel magnifies with Ctrl, moves what is magnified, and is left to the page otherwise', () => {
  expect(wheel({ deltaY: -100, ctrlKey: true, clientX: 30, clientY: 40 })).toBe(true)
  expect(wheel({ deltaX: 5, deltaY: 20 })).toBe(true)
  // Lines of a wheel that counts in lines; Shift turns it sideways, where the browser has not done so.
  expect(wheel({ deltaY: 2, deltaMode: 1, shiftKey: true })).toBe(true)
  expect(wheel({ deltaX: 40, shiftKey: true })).toBe(true)
  expect(did).toEqual(['magnify 1.28 30 40', 'move 5 20', 'move 32 0', 'move 40 0'])
  canMove = false
  expect(wheel({ deltaY: 20 })).toBe(false)
  isWhole = true
  expect(wheel({ deltaY: 20 })).toBe(false)
  expect(did).toHaveLength(5)
})

test('a drag moves, and the click that ends it chooses nothing; a click that trembles does', () => {
  pointer('pointerdown', 100, 100, 1, span())
  pointer('pointermove', 102, 101, 1, span())
  pointer('pointerup', 102, 101, 1, span())
  span().dispatchEvent(new MouseEvent('click', { bubbles: true }))
  expect(did).toEqual([])
  expect(chosen).toHaveBeenCalledTimes(1)
  pointer('pointerdown', 100, 100, 1, span())
  pointer('pointermove', 108, 103, 1, span())
  pointer('pointermove', 118, 103, 1, span())
  pointer('pointerup', 118, 103, 1, span())
  span().dispatchEvent(new MouseEvent('click', { bubbles: true }))
  expect(did).toEqual(['move -8 -3', 'move -10 0'])
  expect(chosen).toHaveBeenCalledTimes(1)
  // The next click is one again.
  pointer('pointerdown', 10, 10, 1, span())
  pointer('pointerup', 10, 10, 1, span())
  span().dispatchEvent(new MouseEvent('click', { bubbles: true }))
  expect(chosen).toHaveBeenCalledTimes(2)
})

test('while all is seen there is nothing to drag, but two fingers pinch', () => {
  isWhole = true
  pointer('pointerdown', 100, 100, 1, span())
  pointer('pointermove', 160, 100, 1, span())
  expect(did).toEqual([])
  pointer('pointerdown', 260, 100, 2, span())
  pointer('pointermove', 310, 100, 2, span())
  expect(did).toEqual(['move -25 0', 'magnify 1.5 235 100'])
})

test('a double click shows all of it, and keys are for the sheet alone', () => {
  send(new MouseEvent('dblclick', { bubbles: true }), span())
  send(new MouseEvent('dblclick', { bubbles: true }), number)
  expect(did).toEqual(['fit'])
  const key = (name: string, target: Element, init: KeyboardEventInit): boolean => send(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true, ...init }), target)
  expect(key('+', sheet, {})).toBe(true)
  expect(key('x', sheet, {})).toBe(false)
  expect(key('+', number, {})).toBe(false)
  expect(key('+', sheet, { ctrlKey: true })).toBe(false)
  expect(did).toEqual(['fit', 'key +', 'key x'])
})

test('nothing is heard once it is over', () => {
  stop()
  expect(wheel({ deltaY: -100, ctrlKey: true })).toBe(false)
  expect(did).toEqual([])
})
