import { newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'

/**
 * Plastic moment of round wire, N m: fy d^3 / 6 (plastic section modulus of a circle).
 * @example plasticMoment(metres(0.004), pascals(250e6)) // 2.6667
 */
export const plasticMoment = (wire: Metres, yieldStress: Pascals): number => (yieldStress * wire ** 3) / 6

/**
 * Load that opens a hook by a plastic hinge opposite its mouth: Mp / R, R to the wire's centre line,
 * axial force neglected; the load acts on the axis of the bowl.
 * `inside` is the bowl's width.
 * @example openHookLoad(metres(0.004), metres(0.024), pascals(250e6)) // 190.48
 */
export function openHookLoad(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  return newtons(plasticMoment(wire, yieldStress) / ((inside + wire) / 2))
}

/**
 * Plastic collapse of a closed ring under two opposed pulls: 4 Mp / R (four hinges, each arm R).
 * `inside` is the ring's width.
 * @example closedRingLoad(metres(0.004), metres(0.046), pascals(250e6)) // 426.67
 */
export function closedRingLoad(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  return newtons((4 * plasticMoment(wire, yieldStress)) / ((inside + wire) / 2))
}

/**
 * Load at which such a ring first yields, and may open slightly: M = 0.3183 W R (Mechanical
 * Engineer's Data Handbook, p. 29; Roark, ring case 1) on 32 M / (pi d^3).
 * @example ringFirstYield(metres(0.004), metres(0.046), pascals(250e6)) // 197.39
 */
export function ringFirstYield(wire: Metres, inside: Metres, yieldStress: Pascals): Newtons {
  const radius = (inside + wire) / 2
  return newtons((yieldStress * Math.PI * wire ** 3) / 32 / (radius / Math.PI))
}

/**
 * Side pull that bends a straight shank plastically at a lever, square to it: Mp / lever, the axial
 * pull neglected. Without a lever nothing bends it: infinite.
 * @example shankSidePull(metres(0.004), metres(0.04), pascals(250e6)) // 66.67
 */
export function shankSidePull(wire: Metres, lever: Metres, yieldStress: Pascals): Newtons {
  return newtons(lever <= 0 ? Infinity : plasticMoment(wire, yieldStress) / lever)
}
