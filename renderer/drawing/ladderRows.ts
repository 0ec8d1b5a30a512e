import { CASE_NAMES, linkName, percentText } from '#core'
import { quantityText } from '../components/quantityText'
import type { RungGroup } from './rungs'

/** The ladder’s numbers: of each part its worst situation, what is asked and what its limit is, share, how far it holds, verdict. */
export const ladderRows = (groups: readonly RungGroup[], notKnown: string): readonly (readonly string[])[] =>
  groups.flatMap(({ rungs }) => rungs).map(({ worst, holdsTo }) => [
    linkName(worst.link, worst.tier), CASE_NAMES[worst.case], quantityText(worst.demand), quantityText(worst.allowable),
    worst.utilisation === null ? notKnown : percentText(worst.utilisation), holdsTo === null ? '–' : percentText(holdsTo), worst.verdict,
  ])
