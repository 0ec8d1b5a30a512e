import { bundle, strandsSeen } from './bundle'
import { potAside } from './potFrame'
import { neighbours } from './row'
import { ringLength, type Stand } from './scene'
import type { Dimension, Point, Shape } from './shape'

/** One strand of the hanger laid out straight beside it, from the top of the ring to the end of the fringe: heights of its joints, m. */
interface Tape {
  readonly x: number
  readonly top: number
  readonly ringEnd: number
  readonly firstKnots: number
  /** Of a told second row; null without. */
  readonly secondKnots: number | null
  readonly gathering: number
  readonly gatheringEnd: number
  readonly end: number
}

function tapeOf(stand: Stand): Tape {
  const { answers, pose, check, unit } = stand
  const { strand, knot } = check.solved.geometry
  const ringEnd = pose.hangingPoint[2]
  const top = ringEnd + ringLength(stand)
  const gathering = ringEnd - strand
  const aside = Math.min(...potAside(stand))
  const leftmost = Math.min(0, ...neighbours(answers, 'dry'), ...check.solved.tiers.map(({ alone }) => (answers['pot.rim'] - alone.hanger.answers['pot.rim']) / 2))
  return {
    x: Math.min(answers['pot.rim'] / -2, stand.hasStick ? stand.stickAt - answers['stick.length'] / 2 : 0, aside, leftmost + aside) - 2.4 * unit,
    top, ringEnd, gathering,
    firstKnots: gathering + answers['cradle.first'],
    secondKnots: answers['cradle.second'] === null || answers['cradle.kind'] !== 'net' || answers['make.arrangement'] === 'panel' ? null : gathering + answers['cradle.second'],
    gatheringEnd: gathering - knot,
    end: gathering - knot - answers['make.fringe'],
  }
}

/** Where the strand laid out straight stands, m. */
export const tapeAt = (stand: Stand): number => tapeOf(stand).x

/** The strand laid out straight, as thick as the strands of one leg, with a stroke across at every joint. */
export function tapeShapes(stand: Stand): readonly Shape[] {
  const { answers, cord, unit, pencil } = stand
  const tape = tapeOf(stand)
  const strands = strandsSeen(answers['make.arrangement'] === 'panel' ? answers['panel.front'] : answers['make.strands'])
  const run = (link: 'leg' | 'seat' | 'gatheringGrip', from: number, to: number): Shape =>
    ({ kind: 'cord', link, ink: 'cord', leg: null, pencil: pencil(answers['make.arrangement'] === 'panel' ? 'panel.front' : 'make.strands', 'cord.diameter'), behind: false, ...bundle([[tape.x, from], [tape.x, to]], cord, strands) })
  const note = { link: null, ink: 'note', leg: null, kind: 'line', width: 0, behind: false } as const
  const across = (z: number): Shape => ({ ...note, pencil: false, points: [[tape.x - 0.5 * unit, z], [tape.x + 0.5 * unit, z]] })
  const joints = [tape.top, tape.ringEnd, ...(tape.secondKnots === null ? [] : [tape.secondKnots]), tape.firstKnots, tape.gathering, tape.gatheringEnd, tape.end]
  return [
    run('leg', tape.ringEnd, tape.firstKnots),
    run('seat', tape.firstKnots, tape.gathering),
    run('gatheringGrip', tape.gathering, tape.gatheringEnd),
    { ...note, pencil: pencil('make.fringe'), ink: 'cord', points: [[tape.x, tape.gatheringEnd], [tape.x, tape.end]] },
    ...(tape.top > tape.ringEnd ? [{ ...note, pencil: false, points: [[tape.x, tape.top], [tape.x, tape.ringEnd]] } satisfies Shape] : []),
    ...joints.map(across),
  ]
}

/** Its lengths: the whole, or the leg where that was given; the cradle's first knots; the fringe. */
export function tapeDimensions(stand: Stand): readonly Dimension[] {
  const { answers, unit, pencil } = stand
  const tape = tapeOf(stand)
  const vertical = (path: 'panel.height' | 'make.totalLength' | 'make.legLength' | 'cradle.first' | 'cradle.second' | 'make.fringe', value: number, away: number, upper: number, lower: number): Dimension => {
    const x = tape.x - away * unit
    const foot = (z: number): Point => [tape.x, z]
    return { path, value, from: [x, upper], to: [x, lower], feet: [foot(upper), foot(lower)], number: [x, (upper + lower) / 2], side: 'middle', pencil: pencil(path) }
  }
  const leg = answers['make.legLength']
  const second = tape.secondKnots
  return [
    answers['make.arrangement'] === 'panel'
      ? vertical('panel.height', answers['panel.height'], 2, tape.ringEnd, tape.ringEnd - answers['panel.height'])
      : leg === null
      ? vertical('make.totalLength', answers['make.totalLength'], second === null ? 6 : 10, tape.top, tape.end)
      : vertical('make.legLength', leg, 2, tape.ringEnd, tape.firstKnots),
    vertical('cradle.first', answers['cradle.first'], 2, tape.firstKnots, tape.gathering),
    ...(second === null ? [] : [vertical('cradle.second', second - tape.gathering, 6, second, tape.gathering)]),
    vertical('make.fringe', answers['make.fringe'], 2, tape.gatheringEnd, tape.end),
  ]
}

/** Where the name of the strand laid out stands: above it. */
export const tapeCaption = (stand: Stand): Point => {
  const tape = tapeOf(stand)
  // Without a whole length beside it there is less room to the left.
  return [tape.x - (stand.answers['make.arrangement'] === 'panel' ? 1 : 3) * stand.unit, tape.top + 0.8 * stand.unit]
}
