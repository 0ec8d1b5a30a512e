import { BUNDLE_WIDTH, DRAG_COEFFICIENT, FOLDED_LEAVES } from '../catalogue/wind'
import { UNMEASURED_DIAMETER } from '../catalogue/cords'
import type { Answers } from '../hanger/fields'
import { metresPerSecond, type MetresPerSecond, type Newtons, type Pascals } from '../quantity/si'
import { dynamicPressure, foliageShareAt, windForce, type InWind } from '../statics/wind'
import { cradledOutline, type Level } from './outline'
import { sectionReach } from './section'

/** The wind on all of a hanger, whichever way it blows. */
export interface WindLoad {
  readonly speed: MetresPerSecond
  readonly pressure: Pascals
  readonly pot: InWind
  readonly leaves: InWind
  readonly cords: InWind
  readonly force: Newtons
}

/** Silhouette above a height of an outline with straight sides between its levels, m2; of square pots seen on their diagonal. */
function silhouette(levels: readonly Level[], above: number): number {
  return levels.slice(1).reduce((sum, level, i) => {
    const below = levels[i] ?? level
    const from = Math.max(below.z, above)
    if (from >= level.z) return sum
    const [narrow, wide] = [sectionReach(below), sectionReach(level)]
    const reach = narrow + ((wide - narrow) * (from - below.z)) / (level.z - below.z)
    return sum + (level.z - from) * (reach + wide)
  }, 0)
}

/** Silhouette of a pot with what of it stands out above a cover pot, m2. */
const withCover = (pot: readonly Level[], cover: readonly Level[] | null): number =>
  (cover === null ? silhouette(pot, 0) : Math.max(silhouette(pot, 0), silhouette(cover, 0) + silhouette(pot, cover.at(-1)?.z ?? 0)))

const FOLDING = FOLDED_LEAVES.points.map(([speed, share]) => ({ speed: metresPerSecond(speed), share }))

/**
 * The push of a wind on pot, leaves and cords, none sheltered by another: q sum of Cd A, q = 0.613 V^2. A cover
 * pot counts with what of the pot stands out above it, a saucer beside its pot; leaves by the outline of their width and height, folded as the
 * wind bends them; each leg as a bundle as long as its strands.
 */
export function windLoad(answers: Answers, speed: MetresPerSecond): WindLoad {
  const { pot, saucer, cover } = cradledOutline(answers)
  const square = answers['pot.shape'] === 'square' || answers['pot.shape'] === 'trough'
  const parts = {
    pot: { area: withCover(pot, cover) + silhouette(saucer ?? [], 0), drag: (square ? DRAG_COEFFICIENT.squarePot : DRAG_COEFFICIENT.roundPot).value, share: 1 },
    leaves: { area: answers['plant.width'] * (answers['plant.height'] + answers['plant.trail']), drag: DRAG_COEFFICIENT.leaves.value, share: foliageShareAt(FOLDING, speed) },
    cords: {
      area: cordArea(answers),
      drag: DRAG_COEFFICIENT.cord.value, share: 1,
    },
  }
  const pressure = dynamicPressure(speed)
  return { speed, pressure, ...parts, force: windForce(pressure, Object.values(parts)) }
}

/** Each leg a bundle as long as its strands; a panel as if it had no gaps, and its strands below it in four bundles. */
function cordArea(answers: Answers): number {
  const cord = answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value
  if (answers['make.arrangement'] !== 'panel') return answers['make.legs'] * answers['make.totalLength'] * BUNDLE_WIDTH.value * Math.sqrt(answers['make.strands']) * cord
  const below = answers['panel.rise'] + answers['pot.height'] + answers['make.fringe']
  return answers['panel.width'] * answers['panel.height'] + 4 * below * BUNDLE_WIDTH.value * Math.sqrt(answers['panel.front']) * cord
}
