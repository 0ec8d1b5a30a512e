import { metres, newtons } from '../../../src/quantity/si'
import type { BeamInput, PointLoad } from '../../../src/statics/beam'

/** A stick of 0.3 to 1.5 m with one to nine unequal loads, held anywhere along it, in either order. */
export function randomStick(random: () => number): BeamInput {
  const length = 0.3 + 1.2 * random()
  const [low, high] = [0.4 * random(), 0.6 + 0.4 * random()].map((share) => metres(share * length))
  const loads = Array.from({ length: 1 + Math.floor(9 * random()) }, (): PointLoad => ({ at: metres(length * random()), force: newtons(2 + 90 * random()) }))
  return { length: metres(length), supports: random() < 0.5 ? [low!, high!] : [high!, low!], loads, heldDown: true }
}

/** The same stick seen from behind. */
export const mirrored = ({ length, supports: [a, b], loads, heldDown }: BeamInput): BeamInput => ({
  length, supports: [metres(length - a), metres(length - b)], loads: loads.map(({ at, force }) => ({ at: metres(length - at), force })), heldDown,
})
