import { expect, test } from 'vitest'
import { potShape } from '../../../src/load/potShape'
import { INCH } from '../../../src/quantity/si'
import { hangerOf } from '../../unit/hanger/hangerOf'

// Volume ranges of nursery container classes, in3: ANSI Z60.1-2004 and Z60.2-2025, table 1 (the same in both from
// #1 up; read in a transcription). A class is a range, and no number of gallons.
// Top width and height, in, as containers of the class are commonly moulded, from memory; base 0.8 of the top.
const CLASSES = [
  { name: '#1', least: 152, most: 251, top: 6.5, height: 6.75 },
  { name: '#2', least: 320, most: 474, top: 8.5, height: 8.5 },
  { name: '#3', least: 628, most: 742, top: 10.5, height: 9.75 },
  { name: '#5', least: 785, most: 1242, top: 12, height: 11.5 },
  { name: '#7', least: 1337, most: 1790, top: 14, height: 12 },
  { name: '#10', least: 2080, most: 2646, top: 16, height: 15 },
] as const

test.each(CLASSES)('a container $name of thin plastic, filled to the rim, holds what its class says: $least to $most in3', ({ least, most, top, height }) => {
  const { room } = potShape(hangerOf({
    'pot.rim': `${top} in`, 'pot.height': `${height} in`, 'pot.base': `${0.8 * top} in`, 'pot.material': 'plastic', 'pot.wall': '1.2 mm', 'pot.fillGap': '0 mm',
  }).answers)
  expect(room.volume / INCH ** 3).toBeGreaterThan(least)
  expect(room.volume / INCH ** 3).toBeLessThan(most)
})
