import { range, type Range } from './basis'
import type { Fibre } from './cords'

const cNtex = (low: number, likely: number, high: number, basis: Range['basis'], source: string): Range => range(low * 1e4, likely * 1e4, high * 1e4, 'N/(kg/m)', basis, source)

const MILL = 'spinning-machine maker’s handbook (Rieter), cotton fibre of 24 cN/tex'

/** Tenacity of cotton yarn spun from fibre of 24 cN/tex, N per (kg/m): a mill uses 45 to 55 % of the fibre by rotor, 50 to 65 % by ring. */
export const COTTON_YARN: Readonly<Record<'rotor' | 'ring', Range>> = {
  rotor: cNtex(10.8, 12, 13.2, 'published', `${MILL}, rotor yarn 45 to 55 % of it; likely: the middle`),
  ring: cNtex(12, 13.8, 15.6, 'published', `${MILL}, ring yarn 50 to 65 % of it; likely: the middle`),
}

/** Tenacity of yarn from recycled cotton, N per (kg/m). */
export const RECYCLED_COTTON_YARN: Range = cNtex(6, 8, 10, 'from memory', 'yarn of recycled cotton 6 to 10 cN/tex; no figure was found')

/** Tenacity of a cord over that of its yarns: the more twist and the more yarns, the less. */
export const YARN_TO_CORD: Range = range(0.65, 0.75, 0.85, '1', 'from memory', 'yarn-to-cord realisation 0.65 to 0.85')

const COTTON = 'yarn tenacity x yarn-to-cord realisation, from recycled yarn to good rotor yarn'
const times = (yarn: number, realisation: number): number => yarn * realisation
const LOOSE = 'loose string of this fibre: no figure found; from loose cotton up to the tight cord'
const rope = (low: number, high: number, source: string): { loose: Range; tight: Range } => ({
  loose: cNtex(3.9, 4, high, 'from memory', LOOSE),
  tight: cNtex(low, (low + high) / 2, high, 'computed', `${source}; likely: the middle`),
})

/** Between what tenacities a cord of this fibre may lie by its own mass, N per (kg/m). What counts is a low value of it (FIBRE_PROPERTIES); null where no figure was found. */
export const TENACITY_SPREAD: Readonly<Record<Fibre, { readonly loose: Range; readonly tight: Range } | null>> = {
  cotton: {
    loose: range(times(RECYCLED_COTTON_YARN.low, YARN_TO_CORD.low), times(RECYCLED_COTTON_YARN.likely, YARN_TO_CORD.likely), times(COTTON_YARN.rotor.high, YARN_TO_CORD.low), 'N/(kg/m)', 'computed', COTTON),
    tight: range(times(RECYCLED_COTTON_YARN.low, YARN_TO_CORD.low), times(COTTON_YARN.rotor.likely, YARN_TO_CORD.low), times(COTTON_YARN.rotor.high, YARN_TO_CORD.high), 'N/(kg/m)', 'computed', COTTON),
  },
  linen: null,
  hemp: rope(8.8, 10.4, 'natural-fibre rope by its own mass, as manila (CI 1308-96) and dry jute twine (GB 2696-1987)'),
  jute: rope(8.5, 9.2, 'GB 2696-1987, least break over mean mass per metre with the water that jute holds in air, 13.75 % (ASTM D1909)'),
  manila: rope(8.8, 10.2, 'Cordage Institute CI 1308-96, break over mass per metre, row by row'),
  sisal: rope(7, 8.2, '0.80 of manila (US Army FM 5-125)'),
  polyester: rope(19.5, 21.3, 'three-strand rope table, break over mass per metre, row by row'),
  polypropylene: rope(24, 31, 'three-strand rope table, break over mass per metre, row by row'),
  nylon: rope(26, 30, 'three-strand rope table, break over mass per metre, row by row'),
  viscose: null,
  unknown: null,
}
