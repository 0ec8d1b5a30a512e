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
 * Vertical stiffness of a symmetric sling: m [k h^2/l^2 + (T/l) s^2/l^2] (second derivative of its energy),
 * k = EA / L0 = (EA + T) / l, since a leg of tension T is strained by T / EA.
 */
export function heaveStiffness({ legs, stiffness, length: l, height: h, run: s, tension }: HeaveInput): NewtonsPerMetre {
  const k = (stiffness + tension) / l
  return newtonsPerMetre((legs * (k * h * h + (tension / l) * s * s)) / (l * l))
}
