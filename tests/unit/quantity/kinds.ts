import type { QuantityKind } from '../../../src/quantity/quantityKind'

const ALL: Readonly<Record<QuantityKind, true>> = {
  length: true, mass: true, force: true, angle: true, speed: true, linearDensity: true, time: true, volume: true, density: true, pressure: true, count: true, number: true, ratio: true,
}

/** Every kind of quantity; the type checker holds the list complete. */
export const KINDS = Object.keys(ALL) as readonly QuantityKind[]
