import type { Finding } from '#core'
import { familyOf, type MeasuredPath } from './families'

/** What is measured where a finding asks for it without naming the field. */
const MEASURED_FOR: Readonly<Partial<Record<Finding['code'], MeasuredPath>>> = {
  CORD_UNKNOWN: 'cord.weighedMass',
  CORD_BY_DIAMETER: 'cord.weighedMass',
  BAMBOO_HOLLOW_UNKNOWN: 'stick.hollow',
  BRACKET_NO_LEVER: 'bracket.top',
  BRACKET_UNRATED: 'bracket.thick',
}

/** The field whose measure would settle a finding; null where none would. */
export function measureSettling(finding: Finding): MeasuredPath | null {
  if (!('path' in finding)) return MEASURED_FOR[finding.code] ?? null
  return familyOf(finding.path) === null ? null : finding.path as MeasuredPath
}
