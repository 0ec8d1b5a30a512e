import { POUND, STANDARD_GRAVITY } from '../quantity/si'
import { value, type Value } from './basis'

/** One size of chain. */
export interface ChainRow {
  readonly id: string
  /** Of the wire, nominal, m; null where the chart does not give it. */
  readonly diameter: number | null
  /** What the chain may carry, N. */
  readonly limit: Value
}

const LBF = POUND * STANDARD_GRAVITY
const NACM = 'proof coil chain, grade 30, working load limit (chain maker’s chart after the National Association of Chain Manufacturers); not for lifting overhead'
const proofCoil = (name: string, inches: number, pounds: number): ChainRow => ({ id: `${name} in`, diameter: inches * 0.0254, limit: value(pounds * LBF, 'N', 'published', NACM) })

/** Welded chain, grade 30. */
export const PROOF_COIL: readonly ChainRow[] = [proofCoil('1/8', 1 / 8, 400), proofCoil('3/16', 3 / 16, 800), proofCoil('1/4', 1 / 4, 1300), proofCoil('5/16', 5 / 16, 1900)]

/** Breaking force of welded chain over its working load limit. */
export const CHAIN_BREAK_OVER_LIMIT: Value = value(4, '1', 'published', NACM)

const ERI = 'unwelded chain, working load limit (ERI 415, data sheet of 2018); not where its failure can hurt'
const unwelded = (name: string, mm: number | null, pounds: number): ChainRow => ({ id: name, diameter: mm === null ? null : mm / 1000, limit: value(pounds * LBF, 'N', 'published', ERI) })

/** Light chain with open or twisted links: never over people. */
export const UNWELDED_CHAIN: readonly ChainRow[] = [
  unwelded('jack No. 10', 3.2, 43), unwelded('jack No. 12', 2.7, 29),
  unwelded('double loop No. 2', 2.3, 115), unwelded('double loop No. 3', null, 90), unwelded('double loop No. 4', null, 70),
]
