import { expect, test } from 'vitest'
import { isOwnAddress, START_ADDRESS } from '../../../../electron/main/origin'

test.each([START_ADDRESS, 'strandwise-app://app/', 'strandwise-app://app/assets/fern.js?3#leaf'])('%s is our own', (address) => {
  expect(isOwnAddress(address)).toBe(true)
})

test.each([
  'strandwise-app://app.example.org/index.html',
  'strandwise-app://application/',
  'strandwise-app://app:8080/',
  'strandwise-app://app@example.org/',
  'strandwise-app://example.org/app',
  'strandwise-application://app/',
  'https://app/',
  'strandwise-app:app/',
  'file:///index.html',
  'about:blank',
  'no address',
  '',
])('%s is not', (address) => {
  expect(isOwnAddress(address)).toBe(false)
})
