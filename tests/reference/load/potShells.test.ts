import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { pottedMass } from '../../../src/load/pottedMass'
import { potShape } from '../../../src/load/potShape'
import { INCH } from '../../../src/quantity/si'
import { hangerOf } from '../../unit/hanger/hangerOf'

// Empty pots of a table worked out for trade sizes (no refereed table of pot masses was found): base 0.62
// and height 0.9 of the rim. It gives each wall, but neither the thickness of the base nor the rim.
const SIZES = [4, 6, 8, 10, 12] as const
const TABLE = {
  terracotta: { wall: [6.5, 8, 9.5, 11, 13], mass: [0.39, 1.03, 2.17, 3.95, 6.73] },
  stoneware: { wall: [7, 7, 7, 7, 7], mass: [0.48, 1.06, 1.89, 3.0, 4.4] },
  concrete: { wall: [15, 15, 15, 15, 15], mass: [0.88, 2.05, 3.8, 6.1, 8.9] },
  plastic: { wall: [1, 1, 1, 1, 1], mass: [0.028, 0.06, 0.104, 0.163, 0.235] },
} as const
type Material = keyof typeof TABLE

const rows = (material: Material): { size: number; wall: number; mass: number }[] =>
  SIZES.map((size, i) => ({ size, wall: TABLE[material].wall[i] ?? NaN, mass: TABLE[material].mass[i] ?? NaN }))

function patchOf(material: Material, size: number, wall: number | null): Patch {
  const rim = size * INCH
  return {
    'pot.material': material, 'pot.rim': `${rim} m`, 'pot.height': `${0.9 * rim} m`, 'pot.base': `${0.62 * rim} m`,
    ...(wall === null ? {} : { 'pot.wall': `${wall} mm` }),
  }
}

const potOf = (patch: Patch, state: 'dry' | 'watered') => {
  const found = pottedMass(hangerOf(patch).answers)[state].components.find((c) => c.part === 'pot')
  if (!found) throw new Error('no pot')
  return found.mass
}

describe('empty pots of known wall', () => {
  // Solid of revolution in 4000 slices: a disc below the floor, above it a ring as wide as the wall.
  function bySlices(rim: number, wall: number): number {
    const [height, base] = [0.9 * rim, 0.62 * rim]
    const slices = 4000
    let volume = 0
    for (let i = 0; i < slices; i++) {
      const z = ((i + 0.5) * height) / slices
      const outer = (base + (rim - base) * (z / height)) / 2
      const inner = z < wall ? 0 : outer - wall
      volume += Math.PI * (outer * outer - inner * inner) * (height / slices)
    }
    return volume
  }

  test.each((Object.keys(TABLE) as Material[]).flatMap((material) => rows(material).map((row) => ({ material, ...row }))))(
    '$size in $material, wall $wall mm: the shell is wall and floor, cut slice by slice', ({ material, size, wall }) => {
      const { likely } = potShape(hangerOf(patchOf(material, size, wall)).answers).shell
      expect(likely / bySlices(size * INCH, wall / 1000)).toBeCloseTo(1, 2)
    })

  // Thin plastic has next to no rim: all that is left is the table's rounding (28 g for 4 in: 2 %) and
  // a pot class that may be 950 or 1000 kg/m3.
  test.each(rows('plastic').slice(1))('$size in plastic: $mass kg within 6 %', ({ size, wall, mass }) => {
    expect(Math.abs(potOf(patchOf('plastic', size, wall), 'dry').likely / mass - 1)).toBeLessThan(0.06)
  })

  // By hand: 3.0 kg over the 1.115 l of a 10 in shell of 7 mm would be 2690 kg/m3, denser than any
  // stoneware (2100 to 2400), so the table counts a rolled rim or a thicker base: 12 to 24 % more.
  // The core counts neither; its unknown wall makes up for it below.
  test.each((['terracotta', 'stoneware', 'concrete'] as const).flatMap((material) => rows(material).slice(1).map((row) => ({ material, ...row }))))(
    '$size in $material of wall $wall mm: $mass kg with rim, of which the bare shell is the most', ({ material, size, wall, mass }) => {
      const share = potOf(patchOf(material, size, wall), 'dry').likely / mass
      expect(share).toBeGreaterThan(0.78)
      expect(share).toBeLessThan(0.9)
    })
})

describe('empty pots of unknown wall', () => {
  test.each((['terracotta', 'stoneware'] as const).flatMap((material) => rows(material).slice(1).map((row) => ({ material, ...row }))))(
    '$size in $material: $mass kg lies within the range that is reckoned with', ({ material, size, mass }) => {
      const { low, high } = potOf(patchOf(material, size, null), 'dry')
      expect(low).toBeLessThan(mass)
      expect(high).toBeGreaterThan(mass)
    })

  test.each(rows('terracotta').slice(1))('$size in terracotta soaks up 12 %: likely x 1.12', ({ size }) => {
    const patch = patchOf('terracotta', size, null)
    expect(potOf(patch, 'watered').likely / potOf(patch, 'dry').likely).toBeCloseTo(1.12, 12)
  })
})
