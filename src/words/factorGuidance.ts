import type { FactorGuidance } from '../check/factorGuidance'

/** What guidance asks of an overall factor, within a sentence. */
export const factorGuidanceText = ({ least, most, lifeLine }: FactorGuidance): string =>
  `guidance for fibre rope ${least} to ${most}, for life lines ${lifeLine.least} to ${lifeLine.most}`
