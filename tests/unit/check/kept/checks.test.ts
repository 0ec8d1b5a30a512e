import { expect, test } from 'vitest'
import { checkHanger, type Hanger } from '#core'
import { MANY_HANGERS } from '../manyHangers'
import kept from './checks.txt?raw'
import { keepAnew, sectionsOf } from './keptText'
import { keptLines } from './lines'

// What checks said when they were last looked at. That it is right is for the other tests to show; this one shows that no change of
// the code changes an answer unmeant. Read the difference of the text before it is kept anew.

const linesOf = (hanger: Hanger): readonly string[] => [...keptLines(checkHanger(hanger))].map(([key, line]) => `${key} | ${line}`)

keepAnew('checks.txt', () => MANY_HANGERS.map(([name, hanger]) => [name, linesOf(hanger)]))

const sections = sectionsOf(kept)

test.each(MANY_HANGERS)('as it was: %s', (name, hanger) => {
  expect(linesOf(hanger)).toEqual(sections.get(name))
})

test('nothing is kept that is not asked', () => {
  expect([...sections.keys()]).toEqual(MANY_HANGERS.map(([name]) => name))
})
