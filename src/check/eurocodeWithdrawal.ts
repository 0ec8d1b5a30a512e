import { EUROCODE_CONNECTION, EUROCODE_DIAMETERS, EUROCODE_PERMANENT, EUROCODE_WITHDRAWAL } from '../catalogue/eurocodeScrews'
import { newtons, type KilogramsPerCubicMetre, type Metres, type Newtons, type Radians } from '../quantity/si'

/**
 * Characteristic pull-out of one screw, f d l k_d / (1.2 cos^2 a + sin^2 a), f = 0.52 d^-0.5 l^-0.1
 * rho^0.8 in N and mm (EN 1995-1-1, 8.7.2); null outside 6 to 12 mm. `angle` of the screw to the
 * grain, a right angle in side grain; `thread` in the timber.
 * @example eurocodeWithdrawal(metres(0.006), metres(0.036), kilogramsPerCubicMetre(350), radians(Math.PI / 2)) // 2606.6
 */
export function eurocodeWithdrawal(diameter: Metres, thread: Metres, density: KilogramsPerCubicMetre, angle: Radians): Newtons | null {
  if (diameter < EUROCODE_DIAMETERS.from.value || diameter > EUROCODE_DIAMETERS.upTo.value) return null
  const { c, ofDiameter: a, ofThread: b, ofDensity: n } = EUROCODE_WITHDRAWAL
  const stress = c * (diameter * 1000) ** a * (thread * 1000) ** b * density ** n * 1e6
  const counted = Math.min(diameter / EUROCODE_DIAMETERS.whole.value, 1)
  return newtons((stress * diameter * thread * counted) / (1.2 * Math.cos(angle) ** 2 + Math.sin(angle) ** 2))
}

/**
 * What of a characteristic pull-out may be used under a permanent load: k_mod / gamma_M.
 * @example eurocodePermanent('sheltered') // 0.462
 */
export const eurocodePermanent = (where: keyof typeof EUROCODE_PERMANENT): number => EUROCODE_PERMANENT[where].value / EUROCODE_CONNECTION.value
