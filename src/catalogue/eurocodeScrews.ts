import { value, type Value } from './basis'

const EC5 = 'EN 1995-1-1, 8.7.2'
/** Characteristic withdrawal of screws of 6 to 12 mm, f = c d^a l^b rho^n, with N, mm and kg/m3. */
export const EUROCODE_WITHDRAWAL = { c: 0.52, ofDiameter: -0.5, ofThread: -0.1, ofDensity: 0.8, basis: 'from memory', source: `${EC5}: f_ax,k = 0.52 d^-0.5 l_ef^-0.1 rho_k^0.8 (N/mm2)` } as const

/** Diameters for which the formula holds, m; a thinner screw counts d/8 of it, m. */
export const EUROCODE_DIAMETERS: Readonly<Record<'from' | 'upTo' | 'whole', Value>> = {
  from: value(0.006, 'm', 'from memory', EC5),
  upTo: value(0.012, 'm', 'from memory', EC5),
  whole: value(0.008, 'm', 'from memory', `${EC5}: k_d = min(d/8, 1)`),
}

/** Characteristic density of C24 softwood, kg/m3. */
export const C24_DENSITY: Value = value(350, 'kg/m3', 'from memory', 'EN 338, C24: characteristic density')

/** Share of a strength that may be used for good, by service class: 1 and 2 indoors or sheltered, 3 in the weather. */
export const EUROCODE_PERMANENT: Readonly<Record<'sheltered' | 'weather', Value>> = {
  sheltered: value(0.6, '1', 'from memory', 'EN 1995-1-1, table 3.1: permanent, solid timber, service classes 1 and 2'),
  weather: value(0.5, '1', 'from memory', 'EN 1995-1-1, table 3.1: permanent, solid timber, service class 3'),
}

/** Partial factor of connections. */
export const EUROCODE_CONNECTION: Value = value(1.3, '1', 'from memory', 'EN 1995-1-1, table 2.3: connections')

/** Angle of screw to grain below which only short loads may pull on it. */
export const EUROCODE_LEAST_ANGLE: Value = value(Math.PI / 6, 'rad', 'published', 'eurocode.us on the amendment of EN 1995-1-1: below 30 degrees to the grain only short-term loads')
