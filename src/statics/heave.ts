import { newtonsPerMetre, type Metres, type Newtons, type NewtonsPerMetre } from '../quantity/si'

export interface HeaveInput {
  readonly legs: number
  /** Axial stiffness EA of one leg, N. */
  readonly stiffness: Newtons
  /** Loaded length of one leg, its height and its horizontal run, m. */
  readonly length: Metres
  readonly height: Metres
  readonly run: Metres
  readonly tension: Newtons
}

/**
 * Vertical stiffness of a symmetric sling, N/m, the pot moving straight up or down: m [k h^2/l^2 + (T/l) s^2/l^2] (second derivative of its energy),
 * k = EA / L0 = (EA + T) / l, since a leg of tension T is strained by T / EA.
 * @example heaveStiffness({ legs: 4, stiffness: newtons(9000), length: metres(0.6), height: metres(0.5), run: metres(0.33), tension: newtons(0) }) // 41666.67
 */
export function heaveStiffness({ legs, stiffness, length: l, height: h, run: s, tension }: HeaveInput): NewtonsPerMetre {
  const k = (stiffness + tension) / l
  return newtonsPerMetre((legs * (k * h * h + (tension / l) * s * s)) / (l * l))
}
