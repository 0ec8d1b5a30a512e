import { LEAST_OVERALL_FACTOR, LIFE_LINE_FACTOR, MOST_OVERALL_FACTOR, peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'
import type { LinkResult } from './linkResult'

/** Overall factors that guidance asks of fibre rope in ordinary use, and of life lines. */
export interface FactorGuidance {
  readonly least: number
  readonly most: number
  readonly lifeLine: { readonly least: number; readonly most: number }
}

/** The guidance to show beside an overall factor. */
export const FACTOR_GUIDANCE: FactorGuidance = {
  least: LEAST_OVERALL_FACTOR.value,
  most: MOST_OVERALL_FACTOR.value,
  lifeLine: { least: LIFE_LINE_FACTOR.least.value, most: LIFE_LINE_FACTOR.most.value },
}

/** Over people, a link whose overall factor falls short of that of life lines says so (UNDER_LIFE_LINE_FACTOR); its verdict stays. */
export function besideLifeLines(answers: Answers, links: readonly LinkResult[]): readonly LinkResult[] {
  if (!peopleBeneath(answers['place.beneath'])) return links
  const { least, most } = FACTOR_GUIDANCE.lifeLine
  return links.map((link): LinkResult => (link.overallFactor === null || link.overallFactor >= least
    ? link
    : { ...link, findings: [...link.findings, { code: 'UNDER_LIFE_LINE_FACTOR', factor: link.overallFactor, least, most }] }))
}
