import { pascals, type Metres, type Newtons, type Pascals } from '../quantity/si'

/** The cross-section of a straight bar: area (m2), section modulus (m3), second moment of area (m4), and its peak shear stress over the mean. */
export interface Section {
  readonly area: number
  readonly modulus: number
  readonly inertia: number
  readonly shearPeak: number
}

/**
 * A solid round stick: pi d^2 / 4, pi d^3 / 32, pi d^4 / 64, shear 4/3 of the mean (textbook mechanics).
 * @example roundSection(metres(0.02)).modulus * 1e9 // 785.4
 */
export const roundSection = (diameter: Metres): Section => ({
  area: (Math.PI * diameter ** 2) / 4,
  modulus: (Math.PI * diameter ** 3) / 32,
  inertia: (Math.PI * diameter ** 4) / 64,
  shearPeak: 4 / 3,
})

/**
 * A round tube, outside D, inside d below it: pi (D^4 - d^4) / (32 D); shear 4/3 (D^2 + D d + d^2) / (D^2 + d^2)
 * of the mean, which is 4/3 without a bore and 2 with a thin wall (Jourawski's rule over half the ring).
 * @example tubeSection(metres(0.03), metres(0.022)).modulus * 1e9 // 1884.1
 */
export const tubeSection = (outside: Metres, inside: Metres): Section => {
  const fourths = outside ** 4 - inside ** 4
  return {
    area: (Math.PI * (outside ** 2 - inside ** 2)) / 4,
    modulus: (Math.PI * fourths) / (32 * outside),
    inertia: (Math.PI * fourths) / 64,
    shearPeak: ((4 / 3) * (outside ** 2 + outside * inside + inside ** 2)) / (outside ** 2 + inside ** 2),
  }
}

/**
 * A rectangle, its height along the load: b h, b h^2 / 6, b h^3 / 12, shear 3/2 of the mean.
 * @example rectangleSection(metres(0.012), metres(0.03)).modulus * 1e9 // 1800.0
 */
export const rectangleSection = (width: Metres, height: Metres): Section => ({
  area: width * height,
  modulus: (width * height ** 2) / 6,
  inertia: (width * height ** 3) / 12,
  shearPeak: 3 / 2,
})

/**
 * Largest stress of the outer fibres, never negative: |M| / Z + |N| / A. `moment` in N m of either sign;
 * `thrust` along the bar, pushed or pulled.
 * @example fibreStress(roundSection(metres(0.02)), 10, newtons(60)) / 1e6 // 12.923
 */
export const fibreStress = (section: Section, moment: number, thrust: Newtons): Pascals => pascals(Math.abs(moment) / section.modulus + Math.abs(thrust) / section.area)

/**
 * Largest shear stress under a shear force of either sign, never negative: 4 V / (3 A) in a round stick.
 * @example shearStress(roundSection(metres(0.02)), newtons(-150)) / 1e6 // 0.637
 */
export const shearStress = (section: Section, shear: Newtons): Pascals => pascals((section.shearPeak * Math.abs(shear)) / section.area)
