import type { WebContents, WebFrameMain } from 'electron'
import { expect, test } from 'vitest'
import { isOwnPage } from '../../../../electron/main/ownPage'

const page = { name: 'page' } as unknown as WebContents
const other = { name: 'other' } as unknown as WebContents
const frame = (origin: string, parent: unknown = null): WebFrameMain => ({ origin, parent }) as unknown as WebFrameMain
const own = frame('strandwise-app://app')

test('the top frame of our own window, at our own origin, is heard', () => {
  expect(isOwnPage({ sender: page, senderFrame: own }, page)).toBe(true)
})

test.each([
  ['another window', { sender: other, senderFrame: own }],
  ['a page it was led to', { sender: page, senderFrame: frame('https://example.org') }],
  ['a host that only begins alike', { sender: page, senderFrame: frame('strandwise-app://app.example.org') }],
  ['a page without a place', { sender: page, senderFrame: frame('null') }],
  ['a frame in the page', { sender: page, senderFrame: frame('strandwise-app://app', own) }],
  ['a frame that is gone', { sender: page, senderFrame: null }],
] as const)('%s is not', (_who, asker) => {
  expect(isOwnPage(asker, page)).toBe(false)
})

test('nobody is heard while there is no window', () => {
  expect(isOwnPage({ sender: page, senderFrame: own }, undefined)).toBe(false)
})
