import { describe, expect, test } from 'vitest'
import { metres, newtons, radians } from '../../../src/quantity/si'
import { alongStrand, panelStrand, type PanelStrand, type PanelStrandInput } from '../../../src/statics/panelStrand'
import { drawnKnot } from '../../../src/statics/tiers'
import { radiusAt } from '../../../src/statics/unrolled'

const strandOf = (input: PanelStrandInput): PanelStrand => {
  const strand = panelStrand(input)
  if (!strand.ok) throw new Error(strand.reason)
  return strand
}

describe('a strand from a panel round a pot', () => {
  // Helix on a cylinder: unrolled a straight line (descriptive geometry), tan(slope) = (tangent + arc) / drop.
  test.each([[0.09, 0.011, 0.14, 0.27, 0.03], [0.1, 0.008, 0.12, 0.33, 0.07], [0.085, 0.02, 0.0, 0.24, 0.0]])('cylinder of radius %d, %d off the wall, panel half %d wide at %d, knot at %d', (r, c, half, top, knot) => {
    const strand = strandOf({ pot: { baseRadius: metres(r), rimRadius: metres(r), height: metres(0.3) }, axisFromWall: metres(r + c), across: metres(half), fromWall: metres(0), height: metres(top), knotHeight: metres(knot), knotTurn: radians(0) })
    const tangent = Math.sqrt(half ** 2 + (r + c) ** 2 - r ** 2)
    const arc = r * (Math.PI - Math.atan2(half, r + c) - Math.acos(r / Math.hypot(half, r + c)))
    expect(Math.tan(strand.angle)).toBeCloseTo((tangent + arc) / (top - knot), 10)
    expect(strand.free + strand.onPot).toBeCloseTo(Math.hypot(tangent + arc, top - knot), 10)
  })

  // Clairaut's relation (do Carmo, Differential Geometry of Curves and Surfaces): along a geodesic of a surface of
  // revolution r sin(angle to the generator) stays the same; with the free part's angle it is the same at the touch.
  test.each([[0.07, 0.11], [0.1, 0.08]])('cone of base %d and rim %d keeps Clairaut’s constant', (base, rim) => {
    const pot = { baseRadius: metres(base), rimRadius: metres(rim), height: metres(0.24) }
    const strand = strandOf({ pot, axisFromWall: metres(Math.max(base, rim) + 0.012), across: metres(0.14), fromWall: metres(0), height: metres(0.3), knotHeight: metres(0.06), knotTurn: radians(0) })
    const at = (share: number) => alongStrand(pot, strand, metres(0.06), share)
    for (const share of [0.01, 0.3, 0.62, 0.98]) {
      const [here, next] = [at(share - 1e-5), at(share + 1e-5)]
      const round = radiusAt(pot, at(share).z) * (next.turn - here.turn)
      const sine = round / (2e-5 * strand.onPot)
      const [x, y, z] = strand.touch
      const axis = Math.max(base, rim) + 0.012
      const around = [(y - axis) / radiusAt(pot, metres(z)), -x / radiusAt(pot, metres(z))] as const
      const first = Math.abs(strand.pull[0] * around[0] + strand.pull[1] * around[1])
      expect(radiusAt(pot, at(share).z) * sine).toBeCloseTo(radiusAt(pot, metres(z)) * first, 6)
    }
  })
})

describe('a pot under a pot', () => {
  // Two knots of one string (funicular polygon, textbook statics): the cord runs freely, so one tension T throughout;
  // above 3 strands bear both, 3 T cos b = 70; below one load alone, 3 T cos g = 22.
  test('frictionless: cos g / cos b = 22 / 70', () => {
    const found = drawnKnot({ strands: 3, own: newtons(48), lower: newtons(22), leaveRadius: metres(0.1), baseRadius: metres(0.07), side: metres(0.18), strand: metres(0.9), friction: 0 })
    if (!found.ok) throw new Error(found.reason)
    expect(Math.cos(found.angleBelow) / Math.cos(found.angleAbove)).toBeCloseTo(22 / 70, 10)
    expect(found.tensionBelow).toBeCloseTo(found.tensionAbove, 12)
  })
})
