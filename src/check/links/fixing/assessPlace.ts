import { assessLink, type Evidence, type LinkResult, type Term } from '../../linkResult'
import type { Solved } from '../../solved'
import { weakerGrade } from '../../verdict'

/**
 * Judges a part of the place. What a customer told of it counts, but is no better than a table, and every line that
 * rests on it says so (TOLD_BY_CUSTOMER).
 */
export function assessPlace(solved: Solved, evidence: Evidence): LinkResult {
  if (solved.hanger.answers['place.known'] !== 'told') return assessLink(evidence)
  const { capacity } = evidence
  const told = (term: Term): Term => (term.basis === 'your own' && term.code !== 'pottedMass' ? { ...term, basis: 'told by customer' } : term)
  return assessLink({
    ...evidence,
    grade: weakerGrade(evidence.grade, 'table'),
    capacity: capacity?.basis === 'your own' ? { ...capacity, basis: 'told by customer' } : capacity,
    findings: [...evidence.findings, { code: 'TOLD_BY_CUSTOMER' }],
    terms: evidence.terms.map(told),
  })
}
