import { value, type Value } from './basis'

/** From the printed constant of N = k sqrt(f) h^1.5, with N, MPa and mm, to SI. */
const PER_MPA_MM = 1000 ** 1.5 / 1000
const cone = (k: number, basis: 'published' | 'from memory', source: string): Value => value(k * PER_MPA_MM, 'N/(Pa^0.5 m^1.5)', basis, `${source}: N = k f^0.5 h^1.5 (N, MPa, mm), k = ${k}`)
const EN = 'EN 1992-4, characteristic, cylinder strength'

/**
 * Constant k of the cone of concrete that breaks out round an anchor, N = k f^0.5 h^1.5. An upper
 * bound only: a plug in a 6 mm hole pulls out long before.
 */
export const CONCRETE_CONE = {
  castIn: cone(10, 'from memory', 'ACI 318, cylinder strength, cast in; k = 24 in pounds, psi and inches'),
  postInstalled: cone(7, 'from memory', 'ACI 318, cylinder strength, post-installed; k = 17 in pounds, psi and inches'),
  crackedPostInstalled: cone(7.7, 'from memory', `${EN}, post-installed, cracked`),
  uncrackedPostInstalled: cone(11, 'from memory', `${EN}, post-installed, uncracked`),
  crackedHeaded: cone(8.9, 'from memory', `${EN}, headed, cracked`),
  uncrackedHeaded: cone(12.7, 'from memory', `${EN}, headed, uncracked`),
  crackedCube: cone(7.2, 'published', 'EOTA TR 029, characteristic, cube strength, cracked'),
  uncrackedCube: cone(10.1, 'published', 'EOTA TR 029, characteristic, cube strength, uncracked'),
} as const satisfies Readonly<Record<string, Value>>
export type ConeKind = keyof typeof CONCRETE_CONE

/** Strength of weak building concrete, Pa. */
export const WEAK_CONCRETE: Value = value(20e6, 'Pa', 'common practice', 'C20, the weakest concrete usual in buildings')

/** Distance over embedment that a whole cone needs, to an edge and between anchors. */
export const CONE_ROOM: Readonly<Record<'toEdge' | 'between', Value>> = {
  toEdge: value(1.5, '1', 'published', 'ACI 318: projected area 9 h^2, half its side to an edge'),
  between: value(3, '1', 'published', 'ACI 318: projected area 9 h^2, its side between anchors'),
}
