import { expect, test } from 'vitest'
import { answerDocument } from '../../../src/advice/answer'
import { EMPTY_DOCUMENT, patchDocument, type Patch } from '../../../src/hanger/document'
import { ORDINARY } from '../hanger/ordinaryPatch'
import { without } from '../hanger/without'

const TESTED = { ...without(without(ORDINARY, 'fixing.proof'), 'hook.rated'), 'testHang.mass': '30 kg', 'testHang.time': '30 h', 'testHang.slip': '1 mm' } as const
const codesOf = (patch: Patch): readonly string[] => {
  const outcome = answerDocument(patchDocument(EMPTY_DOCUMENT, { ...TESTED, ...patch }))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.answer.remedies.map((r) => r.code)
}

test.each(['branch', 'rail'])('a %s of which nothing is known is mended by pulling it in place, not by a joist', (substrate) => {
  const codes = codesOf({ 'place.support': 'overBeam', 'place.substrate': substrate })
  expect(codes).toContain('pullInPlace')
  expect(codes).not.toContain('useJoist')
})

test('a hook that stands too far out of a wall is mended by a shorter or thicker one', () => {
  const wall = { 'place.support': 'wallHook', 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor', 'fixing.rated': '200 kgf', 'fixing.ratedFor': 'pullOut', 'hook.wire': '6 mm', 'hook.projection': '90 mm', 'hook.metal': 'steel' } as const
  expect(codesOf(wall)).toEqual(expect.arrayContaining(['shorterHook', 'thickerHook']))
})
