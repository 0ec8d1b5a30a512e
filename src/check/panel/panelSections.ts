import { FILLER_IN_KNOTS, FILLER_SHARE, PLAIN_STRAND, SHARP_EDGE, SPLICED_STRAND, TIED_STRAND } from '../../catalogue/knots'
import type { Answers } from '../../hanger/fields'
import type { CordStrength } from '../cordStrength'
import { bendEfficiency, larksHeadEfficiency, thickestCord, type Section } from '../sections'

type Cord = Pick<CordStrength, 'tied' | 'size'>

/** Of strands that go on through alternating square knots half carry, one at least. */
export const carryInKnots = (strands: number): number => (strands === 0 ? 0 : Math.max(1, Math.floor(strands * FILLER_SHARE.value)))

const maker = ({ tied }: Cord) => (part: Section['part'], strands: number, efficiency: Section['efficiency']): Section => {
  const kept = tied ? PLAIN_STRAND : efficiency
  return { part, strands, efficiency: kept, effective: strands * kept.value }
}

/** Sections of so many strands below the panel, side by side: plain, through the knots of a net in front, joined, over a sharp edge. */
export function strandSections(answers: Answers, strands: number, inNet: boolean, cord: Cord): readonly Section[] {
  const make = maker(cord)
  const sections = [make('plainStrands', strands, PLAIN_STRAND)]
  if (inNet) sections.push(make('alternatingKnots', carryInKnots(strands), FILLER_IN_KNOTS))
  if (answers['make.joined'] === 'yes') sections.push(make('tiedStrands', strands, TIED_STRAND))
  if (answers['make.joined'] === 'splice') sections.push(make('splicedStrands', strands, SPLICED_STRAND))
  // No pull as tied has shown what an edge does.
  if (answers['pot.edge'] === 'sharp') {
    const efficiency = bendEfficiency(SHARP_EDGE.value / (cord.size ?? thickestCord(answers)))
    sections.push({ part: 'potEdge', strands, efficiency, effective: strands * efficiency.value })
  }
  return sections
}

/** Sections of the same strands above, in the panel: lark's heads on the stick, and alternating square knots. */
export function panelSections(answers: Answers, strands: number, cord: Cord): readonly Section[] {
  const make = maker(cord)
  return [
    make('larksHead', strands, larksHeadEfficiency(answers['stick.diameter'] / (cord.size ?? thickestCord(answers)))),
    make('alternatingKnots', carryInKnots(strands), FILLER_IN_KNOTS),
  ]
}
