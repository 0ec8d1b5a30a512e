import { expect, test } from 'vitest'
import type { CheckResult, Patch } from '#core'
import { drawingDescription, legPulls, situationNotes } from '../../../../renderer/drawing/sentences'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

const check = (patch: Patch): CheckResult => checkOf({ ...ORDINARY, ...patch })

test('the leg whose loss is worst is the one that is gone, and the others keep their numbers', () => {
  // Round a trough the legs at its long sides and those at its ends are not alike.
  const sides = check({ 'pot.shape': 'trough', 'pot.rim': '14 cm', 'pot.length': '30 cm', 'pot.strandsAt': 'sides', 'make.totalLength': '130 cm' })
  const gone = sides.solved.slings?.legParted.gone ?? NaN
  expect(situationNotes(sides, 'legParted')).toContain(`Leg ${gone + 1} is gone and is not drawn.`)
  expect(legPulls(sides, 'legParted').map((pull) => pull.number)).toEqual([1, 2, 3, 4].filter((leg) => leg !== gone + 1))
  expect(legPulls(sides, 'watered').map((pull) => pull.number)).toEqual([1, 2, 3, 4])
})

test('what the legs hang from is told in the words for the drawing', () => {
  const told = (patch: Patch): string => drawingDescription(check(patch), 'watered')
  expect(told({})).toContain('legs hang from a ring, 12° from')
  expect(told({ 'make.top': 'bunched' })).toContain('from the hook')
  expect(told({ 'make.top': 'stick' })).toContain('from a stick, up to 11° from')
  expect(told({ 'ring.lies': 'level', 'ring.inside': '12 cm' })).toContain('from a level ring')
  expect(told({ 'pot.shape': 'trough', 'pot.length': '40 cm', 'make.totalLength': '150 cm' })).toContain('and 40 cm (15 3/4 in) long')
})
