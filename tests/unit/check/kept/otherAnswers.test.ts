import { expect, test } from 'vitest'
import { isRelevant, type FieldPath, type Patch } from '#core'
import { hangerOf, ORDINARY } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'
import { BRACKET, WALL_HOOK } from '../links/places'
import { ON_STICK } from '../links/stickOf'
import { keepAnew, sectionsOf } from './keptText'
import { changedByAnswers } from './lines'
import kept from './otherAnswers.txt?raw'

// What one other answer changes, each in turn: kept as checks.test.ts keeps whole checks.

const ordinary = hangerOf(ORDINARY)
const about = (...subjects: readonly string[]) => (path: FieldPath): boolean => subjects.some((subject) => path.startsWith(`${subject}.`))
/** What is not asked of an ordinary hanger, and these subjects. */
const newOr = (...subjects: readonly string[]) => (path: FieldPath): boolean => !isRelevant(path, ordinary.answers) || about(...subjects)(path)

const TURNED: readonly (readonly [string, Patch, (path: FieldPath) => boolean])[] = [
  ['an ordinary hanger', ORDINARY, () => true],
  ['on a stick', ON_STICK, newOr('make')],
  ['a panel', PANEL, newOr('cradle')],
  ['on a bracket', { ...ORDINARY, ...BRACKET }, newOr('fixing')],
  ['on a hook in a wall', { ...ORDINARY, ...WALL_HOOK }, about('place', 'fixing', 'hook')],
  ['three tiers', { ...ORDINARY, 'make.arrangement': 'tiers', 'tiers.count': '3', 'tiers.how': 'wrapped', 'second.mass': '3 kg', 'third.rim': '120 mm' }, newOr('gathering')],
  ['outdoors, within a child’s reach', { ...ORDINARY, 'cord.fibre': 'polyester', 'place.exposure': 'outdoors', 'place.reach': 'child' }, newOr('plant', 'place')],
]

keepAnew('otherAnswers.txt', () => TURNED.map(([name, patch, asks]) => [name, changedByAnswers(hangerOf(patch), asks)]))

const sections = sectionsOf(kept)

test.each(TURNED)('as it was: %s', (name, patch, asks) => {
  expect(changedByAnswers(hangerOf(patch), asks)).toEqual(sections.get(name))
})

test('nothing is kept that is not asked', () => {
  expect([...sections.keys()]).toEqual(TURNED.map(([name]) => name))
})
