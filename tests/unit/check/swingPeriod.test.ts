import { expect, test } from 'vitest'
import { swingPeriod } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const periodOf = (length: string): number => swingPeriod(checkOf({ ...ORDINARY, 'make.totalLength': length }).solved) ?? NaN

test('the period of a bump is that of its length: longer with the root of its depth, a little longer from 30 degrees', () => {
  const { solved } = checkOf({ ...ORDINARY, 'make.totalLength': '110 cm' })
  const { path, top } = solved.geometry
  if (!path.ok || top === null) throw new Error('no path')
  const depth = top + path.top - solved.potted.watered.centre
  const small = 2 * Math.PI * Math.sqrt(depth / 9.80665)
  expect(periodOf('110 cm')).toBeGreaterThan(small * 1.017)
  expect(periodOf('110 cm')).toBeLessThan(small * 1.06)
  expect(periodOf('170 cm')).toBeGreaterThan(periodOf('110 cm') * 1.15)
})

test('nothing swings where the legs do not reach round the pot', () => {
  expect(swingPeriod(checkOf({ ...ORDINARY, 'make.totalLength': '50 cm' }).solved)).toBeNull()
})
