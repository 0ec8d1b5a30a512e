import { expect, test } from 'vitest'
import { diagramsOf, forceText, lengthText } from '#core'
import { bendingRows } from '../../../../renderer/strength/bendingRows'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const WORDS = { held: 'held', notKnown: 'not known' }
const stick = diagramsOf(checkOf({ ...ORDINARY, 'make.top': 'stick', 'stick.wood': 'americanBeech', 'stick.diameter': '21 mm', 'stick.length': '430 mm' }).solved, 'watered').find(({ link }) => link === 'stick')

test('a bar’s table has every pull, every hold and the place bent hardest, in their order', () => {
  if (stick === undefined) throw new Error('the stick bends')
  const rows = bendingRows(stick, WORDS)
  expect(rows.filter(([, pull]) => pull?.includes('held'))).toHaveLength(stick.held.length)
  for (const { at, force } of stick.pulls) expect(rows.find(([along]) => along === lengthText(at))?.[1]).toContain(forceText(force))
  expect(rows.map(([, , bent]) => bent)).toContain('100 %')
  expect(new Set(rows.map(([along]) => along)).size).toBe(rows.length)
})

test('what sags by no known stiffness is not told', () => {
  if (stick === undefined) throw new Error('the stick bends')
  expect(bendingRows({ ...stick, sag: null }, WORDS).every((row) => row[3] === 'not known')).toBe(true)
})
