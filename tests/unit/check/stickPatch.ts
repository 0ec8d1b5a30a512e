import type { Patch } from '#core'
import { oneOf, seededRandom, wholeBetween } from '../quantity/seededRandom'
import { randomPatch } from './randomPatch'

/** A random hanger on a stick, every measure of it said, sometimes with something between; the same for the same seed. */
export function stickPatch(seed: number): Patch {
  const random = seededRandom(seed + 5000)
  const between = (from: number, to: number): number => wholeBetween(random, from, to)
  const length = between(150, 900)
  const span = Math.round((length * between(40, 100)) / 100)
  const connected = between(1, 100) <= 60
  return {
    ...randomPatch(seed),
    'place.support': 'ceilingHook', 'place.substrate': 'timber', 'weighed.mass': `${between(8, 160) / 10} kg`, 'weighed.state': 'watered',
    'make.top': 'stick', 'stick.wood': oneOf(random, ['unknown', 'natural', 'bamboo', 'yellowBirch', 'easternWhitePine', 'americanBeech', 'douglasFir', 'quakingAspen']),
    'stick.diameter': `${between(9, 40)} mm`, 'stick.hollow': `${between(0, 8)} mm`, 'stick.state': oneOf(random, ['dry', 'dry', 'green']), 'stick.grain': oneOf(random, ['straight', 'sloping', 'unknown']),
    'stick.length': `${length} mm`, 'stick.span': `${span} mm`, 'stick.bunch': `${Math.round((span * between(0, 60)) / 100)} mm`, 'stick.held': oneOf(random, ['topCord', 'topCord', 'twoHooks']),
    'stick.topCord': `${Math.round((span * between(103, 300)) / 100)} mm`, 'stick.topStrands': String(between(1, 8)),
    ...(connected ? {
      'connector.kind': oneOf(random, ['sHook', 'chain', 'carabiner', 'swivel']), 'connector.metal': oneOf(random, ['steel', 'brass', 'unknown']),
      'connector.wire': `${between(20, 80) / 10} mm`, 'connector.inside': `${between(8, 40)} mm`, 'connector.joint': oneOf(random, ['open', 'closed']),
    } : {}),
  }
}
