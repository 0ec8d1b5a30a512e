import { describe, expect, it } from 'vitest'
import { agree, findNpm } from '../../../electron/launch/packages.mjs'

const wanted = {
  '': { version: '0.1.0' },
  'node_modules/vue': { version: '3.5.45', integrity: 'sha512-a' },
  'node_modules/fsevents': { version: '2.3.3', integrity: 'sha512-b', optional: true },
}
const vue = { version: '3.5.45', integrity: 'sha512-a' }

describe('whether the installed packages agree with the lock file', () => {
  it('does without optional ones', () => {
    expect(agree(wanted, { 'node_modules/vue': vue })).toBe(true)
  })

  it.each([
    ['a package is missing', {}],
    ['a version differs', { 'node_modules/vue': { ...vue, version: '3.5.44' } }],
    ['a content differs', { 'node_modules/vue': { ...vue, integrity: 'sha512-c' } }],
    ['an optional one differs', { 'node_modules/vue': vue, 'node_modules/fsevents': { version: '2.3.2', integrity: 'sha512-d' } }],
  ])('not when %s', (_what, installed) => {
    expect(agree(wanted, installed)).toBe(false)
  })
})

it('finds the script of npm without the help of npm', () => {
  expect(findNpm()).toMatch(/npm-cli\.js$/)
})
