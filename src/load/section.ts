/** A horizontal section of a pot, outside or inside: half its width and half its length, m; where round, the radius twice. */
export interface Section {
  readonly round: boolean
  readonly across: number
  readonly along: number
}

export const roundSection = (radius: number): Section => ({ round: true, across: radius, along: radius })
export const squareSection = (half: number, longer: number): Section => ({ round: false, across: half, along: half + longer })

/**
 * Area of a section, m2.
 * @example sectionArea(squareSection(2, 3)) // 40
 */
export const sectionArea = ({ round, across, along }: Section): number => (round ? Math.PI : 4) * across * along

/**
 * How far a section reaches from the pot's axis, m: its radius, or half its diagonal.
 * @example sectionReach(squareSection(3, 1)) // 5
 */
export const sectionReach = ({ round, across, along }: Section): number => (round ? across : Math.hypot(across, along))

/**
 * How far a section reaches in one direction, m; the angle is seen from above, 0 along its length.
 * @example reachAt(squareSection(3, 1), Math.PI / 2) // 3
 * @example reachAt(squareSection(3, 1), Math.atan2(3, 4)) // 5
 */
export const reachAt = ({ round, across, along }: Section, angle: number): number =>
  (round ? across : 1 / Math.max(Math.abs(Math.cos(angle)) / along, Math.abs(Math.sin(angle)) / across))
