import { newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'

/** Plastic moment of round wire, N m: fy d^3 / 6. */
export const plasticMoment = (wire: Metres, yieldStress: Pascals): number => (yieldStress * wire ** 3) / 6

/**
 * Load that opens a hook by a plastic hinge opposite its mouth: Mp / R, R to the wire's centre line,
 * axial force neglected; the load acts on the axis of the bowl.
 * @example openHookLoad of 4 mm wire, 24 mm wide inside, 250 MPa: 190 N
 */
export function openHookLoad(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  return newtons(plasticMoment(wire, yieldStress) / ((inside + wire) / 2))
}

/**
 * Plastic collapse of a closed ring under two opposed pulls: 4 Mp / R (four hinges, each arm R).
 * @example closedRingLoad of 4 mm wire, mean radius 25 mm, 250 MPa: 427 N
 */
export function closedRingLoad(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  return newtons((4 * plasticMoment(wire, yieldStress)) / ((inside + wire) / 2))
}

/** First yield of such a ring: M = 0.3183 W R (Mechanical Engineer's Data Handbook, p. 29; Roark, ring case 1) on 32 M / (pi d^3). */
export function ringFirstYield(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  const radius = (inside + wire) / 2
  return newtons((yieldStress * Math.PI * wire ** 3) / 32 / (radius / Math.PI))
}

/** Stress in a straight shank from a bending moment at full plasticity over the yield stress is M / Mp; this gives Mp as a side pull at a lever. */
export function shankSidePull(wire: Metres, lever: Metres, yieldStress: Pascals): Newtons {
  return newtons(lever <= 0 ? Infinity : plasticMoment(wire, yieldStress) / lever)
}
