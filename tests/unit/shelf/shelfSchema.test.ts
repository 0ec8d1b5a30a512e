import { describe, expect, test } from 'vitest'
import * as z from 'zod'
import { writeShelf } from '#core'
import { shelfFileSchema } from '../../../src/shelf/shelfSchema'
import { ENTRIES, ROLL } from './entries'

// The published schema, read by a reader that is not the one it describes.
const schema = z.fromJSONSchema(JSON.parse(JSON.stringify(shelfFileSchema())) as Parameters<typeof z.fromJSONSchema>[0])
const file = (entries: readonly unknown[]) => ({ format: 'strandwise-shelf', version: 1, entries })

describe('the published schema of the shelf file', () => {
  test('takes what is written', () => {
    expect(schema.safeParse(JSON.parse(writeShelf({ entries: ENTRIES, extra: { owner: 'Ada' } }))).error).toBeUndefined()
  })

  test.each([
    ['no list', { format: 'strandwise-shelf', version: 1, entries: {} }],
    ['another format', { ...file([]), format: 'strandwise-hanger' }],
    ['another version', { ...file([]), version: 2 }],
    ['an unknown kind', file([{ kind: 'rope', name: 'x' }])],
    ['no name', file([{ kind: 'cord', cord: { diameter: '3 mm' } }])],
    ['a name that is too long', file([{ kind: 'cord', name: ROLL.name.repeat(20) }])],
    ['a value that is no text', file([{ kind: 'cord', name: 'x', cord: { diameter: 3 } }])],
    ['a word that is no choice', file([{ kind: 'cord', name: 'x', cord: { fibre: 'silk' } }])],
  ])('refuses %s', (_, json) => {
    expect(schema.safeParse(json).success).toBe(false)
  })
})
