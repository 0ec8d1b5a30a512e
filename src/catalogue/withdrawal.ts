import { value, type Basis, type Value } from './basis'

/** What is pulled straight out of the side grain of seasoned wood. */
export const WITHDRAWN = ['woodScrew', 'lagScrew', 'smoothNail', 'annularNail', 'driftPin'] as const
export type Withdrawn = (typeof WITHDRAWN)[number]
/** Those that the National Design Specification gives an allowable for. */
export type WithdrawnByAllowable = Extract<Withdrawn, 'woodScrew' | 'lagScrew' | 'smoothNail'>

/** Powers of gravity G and diameter D in p = c G^a D^b L; both books share them. */
export interface WithdrawalPowers {
  readonly ofGravity: number
  readonly ofDiameter: number
  readonly basis: Basis
  readonly source: string
}

const HANDBOOK = 'USDA Wood Handbook FPL-GTR-282 (2021)'
const powers = (ofGravity: number, ofDiameter: number, where: string): WithdrawalPowers => ({ ofGravity, ofDiameter, basis: 'published', source: `${HANDBOOK}, ${where}` })
export const WITHDRAWAL_POWERS: Readonly<Record<Withdrawn, WithdrawalPowers>> = {
  woodScrew: powers(2, 1, 'eq. 8-10'),
  lagScrew: powers(1.5, 0.75, 'eq. 8-14'),
  smoothNail: powers(2.5, 1, 'eq. 8-1'),
  annularNail: powers(2, 1, 'eq. 8-2a'),
  driftPin: powers(2, 1, 'eq. 8-9'),
}

/** From the printed constant of p = c G^a D^0.75 L, N and mm, to SI. */
const PER_MM_1_75 = 1000 ** 1.75
const ultimate = (c: number, where: string): Value => value(c * 1e6, 'Pa', 'published', `${HANDBOOK}, ${where} (${c} there, in N and mm)`)

/** Mean ultimate withdrawal: the constant c of p = c G^a D^b L, G by volume at 12 % moisture, L the thread (of a nail: all that is driven) in the wood. */
export const WITHDRAWAL_ULTIMATE: Readonly<Record<Withdrawn, Value>> = {
  woodScrew: ultimate(108.25, 'eq. 8-10, p. 8-10'),
  lagScrew: value(125.4 * PER_MM_1_75, 'N/m^1.75', 'published', `${HANDBOOK}, eq. 8-14, p. 8-12 (125.4 there, in N and mm)`),
  smoothNail: ultimate(54.12, 'eq. 8-1, p. 8-2'),
  annularNail: ultimate(77.57, 'eq. 8-2a, p. 8-4, by root diameter and oven-dry gravity'),
  driftPin: ultimate(45.51, 'eq. 8-9, p. 8-10'),
}

const NDS = 'AWC National Design Specification'
/** Allowable withdrawal for ten years: the constant c of W = c G^a D^b per length of thread, G oven-dry. */
export const WITHDRAWAL_ALLOWABLE: Readonly<Record<WithdrawnByAllowable, Value>> = {
  woodScrew: value(19.65e6, 'Pa', 'published', `${NDS}, wood screws (2850 there, in lb and inches)`),
  lagScrew: value(27.86 * PER_MM_1_75, 'N/m^1.75', 'published', `${NDS}, lag screws (1800 there, in lb and inches)`),
  smoothNail: value(9.515e6, 'Pa', 'published', `${NDS}, smooth nails (1380 there, in lb and inches)`),
}

/** Lower-tail factor from mean ultimate withdrawal to the 5 % value. */
export const WITHDRAWAL_SCATTER: Value = value(0.7, '1', 'from memory', 'coefficient of variation about 0.18: 1 - 1.645 x 0.18')

/** Least length in the timber, as a multiple of the diameter. */
export const LEAST_PENETRATION: Readonly<Record<WithdrawnByAllowable, Value>> = {
  woodScrew: value(6, '1', 'published', `${NDS}: least penetration 6 D for nails and screws`),
  lagScrew: value(4, '1', 'published', `${NDS}: least penetration 4 D for lag screws`),
  smoothNail: value(6, '1', 'published', `${NDS}: least penetration 6 D for nails and screws`),
}

/** Penetration, as a multiple of its diameter, from which a lag screw breaks before it pulls out. */
export const LAG_BREAKS_FIRST: Readonly<Record<'lightWood' | 'denseWood', Value>> = {
  lightWood: value(12, '1', 'published', 'USDA Wood Handbook FPL-GTR-190 (2010), p. 8-13: 10 to 12 D in wood of gravity below 0.42; the larger'),
  denseWood: value(7, '1', 'from memory', 'USDA Wood Handbook: about 7 D in dense wood'),
}

/** Lead hole over the screw's root diameter, for full withdrawal strength. */
export const LEAD_HOLE: Readonly<Record<'softwood' | 'hardwood', Value>> = {
  softwood: value(0.7, '1', 'published', `${HANDBOOK}, wood screws, p. 8-10: about 70 % of the root diameter in softwood`),
  hardwood: value(0.9, '1', 'published', `${HANDBOOK}, wood screws, p. 8-10: about 90 % of the root diameter in hardwood`),
}

/** A sheet-metal (type A tapping) screw pulled from wood over a wood screw of its size; not counted. */
export const TAPPING_OVER_WOOD_SCREW: Value = value(1.1, '1', 'published', 'USDA Wood Handbook as quoted by Engineers Edge: about 10 % more')

/** Loss of withdrawal strength for each 1 % of moisture more, as a share. */
export const WITHDRAWAL_LOSS_PER_MOISTURE: Value = value(0.024, '1', 'published', 'Hübner, axially loaded screws in hardwood, abstract: 2.4 % for each 1 % of moisture')
