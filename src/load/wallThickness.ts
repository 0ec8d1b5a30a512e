import type { Range } from '../catalogue/basis'
import { LEAST_WALL_SHARE, POT_MATERIALS, WALLS_AT_RIM, type PotMaterialKind } from '../catalogue/potMaterials'

/** Wall thickness of a pot, m: measured, or the catalogue's range for its material and width. */
export function wallThickness(material: PotMaterialKind, width: number, measured: number | null): Range {
  if (measured !== null) return { low: measured, likely: measured, high: measured, unit: 'm', basis: 'your own', source: 'measured wall' }
  const { wall, wallPerRim } = POT_MATERIALS[material]
  const more = wallPerRim * (width - WALLS_AT_RIM)
  const scale = Math.max(LEAST_WALL_SHARE.value, (wall.likely + more) / wall.likely)
  return { ...wall, low: wall.low * scale, likely: wall.likely * scale, high: wall.high * scale }
}
