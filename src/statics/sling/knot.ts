/**
 * A gathering knot that may shift under the pot's base while the strands run over the pot without friction. Strand i
 * goes on from its lower end down the side to `edge` and to the knot; only the last part changes. Pot frame, m.
 */
export interface KnotShift {
  /** Edge points as seen from the knot's drawn place: x, y, z one after another. */
  readonly edge: readonly number[]
  /** Lengths of the last part with the knot as drawn. */
  readonly drawn: readonly number[]
  /** Keeps the energy smooth where the knot meets an edge point, m: small beside the base. */
  readonly rounding: number
  /** Where the knot is (x, y), by how much longer each last part is than drawn, and its direction from the edge to the knot. */
  readonly at: Float64Array
  readonly longer: Float64Array
  readonly towards: Float64Array
  /** Stiffness against shifts of the knot, 2 x 2, and between them and the pot's six motions, 2 x 6. */
  readonly own: Float64Array
  readonly cross: Float64Array
}
