import type { Answers } from '../hanger/fields'
import { roundSection, squareSection, type Section } from './section'
import type { Piece } from './solid'

export type OutlineAnswers = Pick<Answers, 'pot.shape' | 'pot.rim' | 'pot.base' | 'pot.height' | 'pot.length' | 'pot.belly' | 'pot.bellyHeight'>

/** Radii or half sides of a pot and its heights, m, as its shape reads them. */
interface Measures {
  readonly shape: Answers['pot.shape']
  readonly rim: number
  readonly base: number
  readonly height: number
  readonly belly: number
  readonly bellyHeight: number
  /** Half of what a trough is longer than wide. */
  readonly longer: number
}

function measuresOf(answers: OutlineAnswers): Measures {
  const rim = answers['pot.rim'] / 2
  const shape = answers['pot.shape']
  const base = shape === 'cylinder' ? rim : answers['pot.base'] / 2
  return {
    // A bowl wider at its base than at its rim is no bowl: straight sides hold the same measures.
    shape: shape === 'bowl' && base >= rim ? 'taperedRound' : shape,
    rim, base,
    height: answers['pot.height'],
    belly: Math.max(rim, base, answers['pot.belly'] / 2),
    bellyHeight: answers['pot.bellyHeight'],
    longer: shape === 'trough' ? Math.max(0, answers['pot.length'] - answers['pot.rim']) / 2 : 0,
  }
}

/** Height of the whole ellipse of which a quarter runs from the base edge to the widest level; endless where the side is upright. */
const ellipseHeight = (base: number, widest: number, level: number): number => (base >= widest ? Infinity : (level * widest) / Math.sqrt(widest * widest - base * base))

/** A side that is part of an ellipse, upright at its widest level. */
const belowWidest = (widest: number, tall: number, level: number) => (z: number): Section => roundSection(widest * Math.sqrt(Math.max(0, 1 - ((level - z) / tall) ** 2)))

/** Above a belly: upright there, so wide at the rim. */
const aboveBelly = (belly: number, rim: number, level: number, height: number) => (z: number): Section =>
  roundSection(Math.sqrt(belly * belly - (belly * belly - rim * rim) * ((z - level) / (height - level)) ** 2))

/**
 * The outline of a pot with its wall and floor taken off: outside where the wall is 0, inside where it
 * is the wall's thickness, from the floor to the rim, m. Tapered round, square and trough have straight
 * sides, a trough tapers as much in its length as in its width; a bowl's side is part of an ellipse,
 * upright at the rim; a bellied pot's is made of two that meet upright at the belly.
 */
export function potOutline(answers: OutlineAnswers, wall: number): readonly Piece[] {
  const { shape, rim, base, height, belly, bellyHeight, longer } = measuresOf(answers)
  const straight = (z: number): number => base + (rim - base) * (z / height) - wall
  switch (shape) {
    case 'taperedRound': case 'cylinder': return [{ from: wall, to: height, at: (z) => roundSection(straight(z)) }]
    case 'square': case 'trough': return [{ from: wall, to: height, at: (z) => squareSection(straight(z), longer) }]
    case 'bowl': return [{ from: wall, to: height, at: belowWidest(rim - wall, ellipseHeight(base, rim, height) - wall, height) }]
    case 'bellied': return [
      { from: wall, to: bellyHeight, at: belowWidest(belly - wall, ellipseHeight(base, belly, bellyHeight) - wall, bellyHeight) },
      { from: bellyHeight, to: height, at: aboveBelly(belly - wall, rim - wall, bellyHeight, height) },
    ]
  }
}

/** The thickest wall that leaves a tenth of the least radius or height open, m, so that there is always a pot to answer about. */
export function thickestWall(answers: OutlineAnswers): number {
  const { shape, rim, base, height, bellyHeight } = measuresOf(answers)
  const least = shape === 'bowl' ? Math.min(rim, height) : shape === 'bellied' ? Math.min(rim, bellyHeight, height) : Math.min(rim, base, height)
  return 0.9 * least
}
