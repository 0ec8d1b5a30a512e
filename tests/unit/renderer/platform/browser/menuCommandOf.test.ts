import { expect, test } from 'vitest'
import { menuCommandOf } from '../../../../../renderer/platform/browser/menuCommandOf'

const press = (init: KeyboardEventInit, target: Element = document.body, mac = false) => {
  const event = new KeyboardEvent('keydown', { ...init, bubbles: true, cancelable: true })
  target.dispatchEvent(event)
  return menuCommandOf(event, mac)
}

test.each([
  ['o', false, 'open'], ['s', false, 'save'], ['S', true, 'saveAs'], ['p', false, 'print'], ['P', true, 'pdf'],
  ['z', false, 'undo'], ['Z', true, 'redo'], ['y', false, 'redo'], ['k', false, 'catalogue'], ['L', true, 'shelf'], ['l', false, null], ['n', false, null], ['a', false, null],
] as const)('Ctrl and %s, shift %s: %s', (key, shiftKey, command) => {
  expect(press({ key, shiftKey, ctrlKey: true })).toBe(command)
  expect(press({ key, shiftKey, metaKey: true }, document.body, true)).toBe(command)
})

test('other keys with it are somebody else\'s', () => {
  expect(press({ key: 's' })).toBeNull()
  expect(press({ key: 's', ctrlKey: true, altKey: true })).toBeNull()
  expect(press({ key: 's', ctrlKey: true, metaKey: true })).toBeNull()
  expect(press({ key: 's', metaKey: true })).toBeNull()
  expect(press({ key: 's', ctrlKey: true }, document.body, true)).toBeNull()
  expect(press({ key: 'F1' })).toBe('help')
})

test('a text field undoes its own typing, but saves the hanger', () => {
  const field = document.createElement('input')
  document.body.append(field)
  expect(press({ key: 'z', ctrlKey: true }, field)).toBeNull()
  expect(press({ key: 's', ctrlKey: true }, field)).toBe('save')
  field.remove()
})

test('a key somebody has taken is left to them', () => {
  document.body.addEventListener('keydown', (event) => { event.preventDefault() }, { once: true })
  expect(press({ key: 's', ctrlKey: true })).toBeNull()
})
