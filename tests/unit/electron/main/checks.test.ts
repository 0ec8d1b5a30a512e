import { expect, test } from 'vitest'
import { EXPORT_EXTENSIONS, PAPERS } from '../../../../electron/contract'
import { isExportExtension, isPaper, isSaveOptions } from '../../../../electron/main/checks'

test('endings are those of the contract, and no others', () => {
  expect(EXPORT_EXTENSIONS.every(isExportExtension)).toBe(true)
  expect(['exe', 'SVG', '', 'svg/../../x', 0, null, undefined].filter(isExportExtension)).toEqual([])
})

test('paper is that of the contract, and no other', () => {
  expect(PAPERS.every(isPaper)).toBe(true)
  expect(['A4', 'a3', '', null, { width: 1 }, 4].filter(isPaper)).toEqual([])
})

test('options are what the contract says, no less and no more', () => {
  expect([{ overwrite: true }, { overwrite: false }].every(isSaveOptions)).toBe(true)
  const wrong = [{}, { overwrite: 'yes' }, { overwrite: true, path: '/etc' }, { Overwrite: true }, null, [], true, 'overwrite', undefined]
  expect(wrong.filter(isSaveOptions)).toEqual([])
})
