import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import { createInbox, hangerFilesIn } from '../../../../electron/main/inbox'

test('files wait for the page, in order, and go straight to it while it is there', () => {
  const taken: string[] = []
  const inbox = createInbox((path) => { taken.push(path) })
  inbox.give('fern')
  inbox.give('ivy')
  expect(taken).toEqual([])
  inbox.open()
  inbox.give('moss')
  inbox.close()
  inbox.give('palm')
  expect(taken).toEqual(['fern', 'ivy', 'moss'])
  inbox.open()
  inbox.open()
  expect(taken).toEqual(['fern', 'ivy', 'moss', 'palm'])
})

test('of a command line, what has the ending counts, from where it was said', () => {
  const args = ['electron', '.', '--file=x.strandwise', '-x.strandwise', 'fern.strandwise', '../IVY.Strandwise', 'moss.json', 'strandwise', '']
  expect(hangerFilesIn(args, '/pots/new')).toEqual([resolve('/pots/new/fern.strandwise'), resolve('/pots/IVY.Strandwise')])
})
