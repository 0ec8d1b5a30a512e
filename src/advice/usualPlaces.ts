import type { Refusal } from '../catalogue/refusals'
import type { Substrate } from '../catalogue/substrates'

/** How the fixings of a place are sold. */
export const PLACE_FORMS = ['screwEye', 'screwHook', 'lagEye', 'gaugeScrews', 'metricScrews', 'lagScrews', 'plug', 'toggle', 'metalAnchor', 'anchorEye', 'ratedPlug', 'ratedToggle', 'tiedRound'] as const
export type PlaceForm = (typeof PLACE_FORMS)[number]

/** Walls and ceilings that a hanger usually comes to, in the order they are told. */
export const USUAL_PLACES = [
  'joistOverhead', 'studInWall', 'solidBrickWall', 'perforatedBrickWall', 'denseBlockWall', 'aeratedBlockWall', 'concreteCeiling', 'concreteWall', 'boardWall', 'boardCeiling', 'steelBeam', 'branch',
] as const
export type UsualPlace = (typeof USUAL_PLACES)[number]

/** What a usual place is, and the forms of fixing that are tried there. */
export interface PlaceKind {
  readonly substrate: Substrate
  /** Overhead it hangs from a hook; on a wall from a bracket or hook; round a beam or branch from the cord itself. */
  readonly at: 'overhead' | 'wall' | 'round'
  readonly forms: readonly PlaceForm[]
  /** Whether a rating on the packet would be looked for there. */
  readonly rated: boolean
  /** Nothing is fixed there, whatever the numbers say. */
  readonly refused: Refusal | null
}

const kind = (substrate: Substrate, at: PlaceKind['at'], forms: readonly PlaceForm[]): PlaceKind => ({ substrate, at, forms, rated: at !== 'round', refused: null })
const SOLID: readonly PlaceForm[] = ['plug', 'metalAnchor']
/** A metal anchor bursts or crushes what has holes or little strength. */
const LIGHT: readonly PlaceForm[] = ['plug', 'ratedPlug']

export const PLACE_KINDS: Readonly<Record<UsualPlace, PlaceKind>> = {
  joistOverhead: kind('timber', 'overhead', ['screwEye', 'screwHook', 'lagEye']),
  studInWall: kind('timber', 'wall', ['gaugeScrews', 'metricScrews', 'lagScrews']),
  solidBrickWall: kind('solidBrick', 'wall', SOLID),
  perforatedBrickWall: kind('perforatedBrick', 'wall', LIGHT),
  denseBlockWall: kind('denseBlock', 'wall', SOLID),
  aeratedBlockWall: kind('aeratedBlock', 'wall', LIGHT),
  concreteCeiling: kind('concrete', 'overhead', ['anchorEye']),
  concreteWall: kind('concrete', 'wall', SOLID),
  boardWall: kind('plasterboard', 'wall', ['toggle', 'ratedToggle']),
  boardCeiling: { ...kind('plasterboard', 'overhead', []), rated: false, refused: 'plasterboardCeiling' },
  steelBeam: kind('steelBeam', 'round', ['tiedRound']),
  branch: kind('branch', 'round', ['tiedRound']),
}
