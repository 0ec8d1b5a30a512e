import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import { BUNDLE_PACKING, STRANDS_OF_FOLD } from '../catalogue/knots'
import type { Answers } from '../hanger/fields'
import { gatheredStrands } from '../hanger/strandCount'
import { metres, type Metres } from '../quantity/si'
import { bundleDiameter, wrappingCord, wrapsFrom } from '../statics/wrappingCord'

export type KnotCordAnswers = Pick<Answers, 'make.arrangement' | 'make.legs' | 'make.strands' | 'panel.front' | 'panel.behind' | 'cord.diameter' | 'gathering.wraps' | 'gathering.cordLength' | 'gathering.tails'>

/** The gathering knot as it is tied. */
export interface KnotCord {
  /** Thicknesses of cord that are wrapped: all strands of all legs and the loop of the wrapping cord. */
  readonly strands: number
  /** Diameter of that bundle. */
  readonly bundle: Metres
  /** What to cut for the wraps, with the loop under them and both ends. */
  readonly length: Metres
  /** Height of the wraps side by side. */
  readonly height: Metres
  /** Whole wraps that the wrapping cord makes as it was cut; null where its length was not said. */
  readonly makes: number | null
}

/** The gathering knot of a hanger, wrapped with its own cord round the strands of all legs; a cord that was not measured counts as the usual one. */
export function knotCord(answers: KnotCordAnswers): KnotCord {
  const cord = metres(answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value)
  const strands = gatheredStrands(answers) + STRANDS_OF_FOLD.value
  const bundle = bundleDiameter(strands, cord, BUNDLE_PACKING.value)
  const tails = metres(answers['gathering.tails'])
  const { length, height } = wrappingCord({ wraps: answers['gathering.wraps'], bundle, cord, tails })
  const cut = answers['gathering.cordLength']
  return { strands, bundle, length, height, makes: cut === null ? null : wrapsFrom({ length: metres(cut), bundle, cord, tails }) }
}
