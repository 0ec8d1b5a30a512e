import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { placeOf } from '../../../../../electron/main/files/placeOf'

const home = resolve('/home/ada')

test.each([
  [join(home, 'Hangers', 'fern.strandwise'), join('~', 'Hangers')],
  [join(home, 'fern.strandwise'), '~'],
  [resolve('/media/stick/fern.strandwise'), resolve('/media/stick')],
  [resolve('/home/adam/fern.strandwise'), resolve('/home/adam')],
])('%s lies in %s', (path, place) => {
  expect(placeOf(path, home).replace(/[\\/]$/, '')).toBe(place)
})
