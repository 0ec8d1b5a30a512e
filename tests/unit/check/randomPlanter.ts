import type { Patch } from '#core'
import { PANEL } from '../hanger/panelPatch'
import { seededRandom } from '../quantity/seededRandom'

const SHAPES = ['taperedRound', 'cylinder', 'bowl', 'bellied'] as const

/** A wall planter of any size that may be too narrow for its pot, the same on every run. */
export function randomPlanter(seed: number): Patch {
  const random = seededRandom(seed)
  const between = (from: number, to: number): number => from + random() * (to - from)
  const rim = between(90, 260)
  const share = (from: number, to: number): string => `${rim * between(from, to)} mm`
  const count = (from: number, to: number): string => String(Math.floor(between(from, to + 1)))
  return {
    ...PANEL,
    'pot.shape': SHAPES[Math.floor(random() * SHAPES.length)] ?? 'taperedRound',
    'pot.rim': `${rim} mm`, 'pot.base': share(0.5, 1), 'pot.height': share(0.6, 1.3), 'weighed.mass': `${between(1, 9)} kg`,
    'panel.width': share(1.2, 2.2), 'panel.height': `${between(60, 600)} mm`, 'panel.rise': share(0.2, 0.9), 'panel.front': count(1, 6), 'panel.behind': count(2, 7), 'panel.cords': '14', 'panel.behindWidth': share(0, 0.8),
    'cradle.first': share(0.4, 0.9), 'stick.length': '80 cm', 'stick.span': '70 cm', 'stick.topCord': '110 cm', 'hook.projection': `${between(10, 80)} mm`,
    'place.support': random() < 0.8 ? 'wallHook' : 'ceilingHook', 'make.tolerance': `${between(0, 12)} mm`,
  }
}
