import { POT_MATERIALS, type PotMaterialKind } from '../catalogue/potMaterials'
import { squareSection, roundSection, sectionArea } from './section'
import type { MassRange } from './states'
import { wallThickness } from './wallThickness'

/** Inside measures of an upright vessel, m: round, or as much longer than wide as said. */
export interface Vessel {
  readonly width: number
  readonly depth: number
  readonly round: boolean
  readonly longer: number
}

const sectionOf = ({ width, round, longer }: Vessel, wall: number): number =>
  sectionArea(round ? roundSection(width / 2 + wall) : squareSection(width / 2 + wall, longer / 2))

/** Area inside, m2. */
export const vesselArea = (vessel: Vessel): number => sectionOf(vessel, 0)

/** Dry mass of an upright vessel of a material with its usual walls, kg, floor as thick as the wall. */
export function vesselMass(vessel: Vessel, material: PotMaterialKind): MassRange {
  const wall = wallThickness(material, vessel.width, null)
  const { density } = POT_MATERIALS[material]
  const shell = (t: number): number => sectionOf(vessel, t) * (vessel.depth + t) - sectionOf(vessel, 0) * vessel.depth
  return { low: shell(wall.low) * density.low, likely: shell(wall.likely) * density.likely, high: shell(wall.high) * density.high }
}

/** Water that a soaked wall takes up, kg. */
export function soakedInto(dry: MassRange, material: PotMaterialKind): MassRange {
  const { uptake } = POT_MATERIALS[material]
  return { low: dry.low * uptake.low, likely: dry.likely * uptake.likely, high: dry.high * uptake.high }
}
