import { afterEach, expect, test, vi } from 'vitest'
import { copyText } from '../../../../renderer/place/copyText'

afterEach(() => { vi.unstubAllGlobals() })

function box(): HTMLTextAreaElement {
  const area = document.createElement('textarea')
  area.value = 'Before it is hung'
  document.body.append(area)
  return area
}

test('a text is copied where the page may', async () => {
  const writeText = vi.fn(() => Promise.resolve())
  vi.stubGlobal('navigator', { clipboard: { writeText } })
  expect(await copyText('Before it is hung', box())).toBe('copied')
  expect(writeText).toHaveBeenCalledWith('Before it is hung')
})

test.each([
  ['is refused', { clipboard: { writeText: () => Promise.reject(new Error('denied')) } }],
  ['has no clipboard', {}],
])('where the page %s, it is selected in its box', async (_, navigator) => {
  vi.stubGlobal('navigator', navigator)
  const area = box()
  expect(await copyText(area.value, area)).toBe('selected')
  expect(document.activeElement).toBe(area)
  expect([area.selectionStart, area.selectionEnd]).toEqual([0, area.value.length])
})
