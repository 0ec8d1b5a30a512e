import type { CheckResult, Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

/** A stick of which everything is said: 20 mm yellow birch hung by a doubled top cord, four legs of one length in a row of 9 cm, the pot's weight in the middle. */
export const ON_STICK = {
  ...ORDINARY,
  'make.top': 'stick', 'stick.wood': 'yellowBirch', 'stick.diameter': '20 mm', 'stick.grain': 'straight', 'stick.length': '340 mm', 'stick.span': '300 mm',
  'stick.held': 'topCord', 'stick.topCord': '50 cm', 'stick.topStrands': '4', 'stick.bunch': '90 mm', 'make.tolerance': '0 mm', 'seat.offset': '0 mm',
} as const

export const onStick = (patch: Patch): CheckResult => checkOf({ ...ON_STICK, ...patch })
