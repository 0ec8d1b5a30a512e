import { metres, type Metres, type Newtons } from '../quantity/si'
import { momentAt, type Beam } from './beam'
import { sagAt } from './deflection'

/** Shear, bending and sag of a bar along its length; arrays of one length. A step in the shear stands as two points in one place. */
export interface Diagram {
  /** Places from one end, m; of a ring along the middle of its bar from under one pull to the other. */
  readonly at: readonly number[]
  /** Upward force of all before that place, N. */
  readonly shear: readonly number[]
  /** N m; sagging positive: the under side, of a ring the outer, is stretched. */
  readonly moment: readonly number[]
  /** Downwards, of a ring outwards, m; null where its stiffness is not known. */
  readonly sag: readonly number[] | null
}

/** Points between two forces, for a smooth curve of the sag. */
const STEPS = 8

/**
 * Of a stick on two supports (Macaulay). `bendingStiffness`: E I, N m2.
 * @example beamDiagram({ ok: true, length: metres(1), supports: [metres(0), metres(1)], reactions: [newtons(5), newtons(5)], forces: [{ at: metres(0), force: newtons(5) }, { at: metres(0.5), force: newtons(-10) }, { at: metres(1), force: newtons(5) }], shear: { at: metres(0), force: newtons(5) }, sagging: { at: metres(0.5), moment: 2.5 }, hogging: { at: metres(0), moment: 0 } }, null).moment[8] // 2.5
 */
export function beamDiagram(beam: Beam, bendingStiffness: number | null): Diagram {
  const places = [...new Set<number>([0, ...beam.forces.map((f) => f.at), beam.length])]
  const at = places.slice(1).flatMap((to, i) => steps(places[i] ?? to, to))
  // Just after a place the force that stands in it counts, just before it not: the shear of a stretch is that of all before its end.
  const shear = places.slice(1).flatMap((to) => {
    const even = beam.forces.reduce((sum, f) => sum + (f.at < to ? f.force : 0), 0)
    return new Array<number>(STEPS + 1).fill(even)
  })
  return {
    at, shear,
    moment: at.map((x) => momentAt(beam.forces, metres(x))),
    sag: bendingStiffness === null ? null : sagAt(beam, bendingStiffness, at.map(metres)),
  }
}

const steps = (from: number, to: number): readonly number[] => Array.from({ length: STEPS + 1 }, (_, i) => (i === STEPS ? to : from + ((to - from) * i) / STEPS))

/**
 * Of an arm held at the wall with a load at its end: M = -W (a - x), sag W x^2 (3 a - x) / (6 E I) (textbook mechanics).
 * @example armDiagram(newtons(60), metres(0.25), null).moment[0] // -15
 */
export function armDiagram(load: Newtons, reach: Metres, bendingStiffness: number | null): Diagram {
  const at = steps(0, reach)
  return {
    at, shear: at.map(() => load),
    moment: at.map((x) => 0 - load * (reach - x)),
    sag: bendingStiffness === null ? null : at.map((x) => (load * x * x * (3 * reach - x)) / (6 * bendingStiffness)),
  }
}

/**
 * Of half a thin closed ring under two opposed pulls, angle t from one of them: M = W R (1 / pi - sin t / 2), shear W cos t / 2,
 * outward W R^3 / (4 E I) (sin t + (pi / 2 - t) cos t - 4 / pi) (Timoshenko, Strength of Materials, part I: thin rings; Roark, circular rings, case 1).
 * @example ringDiagram(newtons(80), metres(0.05), 2).sag[0] * 1000 // 0.372
 */
export function ringDiagram(load: Newtons, mean: Metres, bendingStiffness: number | null): Diagram {
  const angles = Array.from({ length: 4 * STEPS + 1 }, (_, i) => (Math.PI * i) / (4 * STEPS))
  return {
    at: angles.map((t) => t * mean),
    shear: angles.map((t) => (load * Math.cos(t)) / 2),
    moment: angles.map((t) => load * mean * (1 / Math.PI - Math.sin(t) / 2)),
    sag: bendingStiffness === null ? null : angles.map((t) => ((load * mean ** 3) / (4 * bendingStiffness)) * (Math.sin(t) + (Math.PI / 2 - t) * Math.cos(t) - 4 / Math.PI)),
  }
}
