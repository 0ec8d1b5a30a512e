import type { Comparison } from '../compare/comparison'
import type { Saying } from '../compare/differences'
import type { Variant } from '../compare/variant'
import type { LinkResult } from '../check/linkResult'
import { differenceRow } from '../words/compare'

export const COMPARE_FORMAT = 'strandwise-compare'
export const COMPARE_VERSION = 1

/** A hanger that is compared, and the file it came from. */
export interface ComparedFile {
  readonly file: string
  readonly variant: Variant
}

const hangerJson = ({ file, variant: { document, check, heaviest, pot, cord } }: ComparedFile): object => ({
  file,
  name: document.name,
  verdict: check.verdict,
  verdicts: check.verdicts,
  governing: check.governing === null ? null : { link: check.governing.link, tier: check.governing.tier, case: check.governing.case, utilisation: check.governing.utilisation },
  heaviest,
  pot,
  hangerMass: check.solved.hangerMass.dry,
  cord: cord.ok
    ? { cords: cord.kinds.reduce((sum, { count }) => sum + count, 0), length: cord.total, mass: cord.mass.known ? cord.mass.value : null, cost: cord.cost.known ? cord.cost.value : null }
    : null,
})

const judgedJson = (result: LinkResult | null): object | null =>
  (result === null ? null : { verdict: result.verdict, utilisation: result.utilisation, case: result.case })

const sayingJson = (saying: Saying): object => ({ how: saying.how, text: 'text' in saying ? saying.text : null })

/** Two hanger files side by side by the contract "strandwise-compare" version 1: every key always there, null where not known, SI, unrounded. */
export const compareJson = (first: ComparedFile, second: ComparedFile, comparison: Comparison): object => ({
  format: COMPARE_FORMAT,
  version: COMPARE_VERSION,
  first: hangerJson(first),
  second: hangerJson(second),
  better: comparison.better,
  parts: comparison.parts.map(({ link, tier, first: a, second: b, better }) => ({ link, tier, first: judgedJson(a), second: judgedJson(b), better })),
  weights: comparison.weights,
  differences: comparison.differences.map((difference) => ({
    path: difference.path, name: differenceRow(difference).name, first: sayingJson(difference.first), second: sayingJson(difference.second), onlySaid: difference.onlySaid,
  })),
  logs: comparison.logs,
})
