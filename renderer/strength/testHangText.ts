import { forceText, type CaseCode, type LinkResult } from '#core'

/** What a recorded test hang lets a part carry, at rest and for a moment; null where none counts for it. */
export function testHangText(results: readonly LinkResult[]): string | null {
  const by = (code: CaseCode): number | null => results.find((result) => result.part === 'testHang' && result.case === code)?.allowable?.value ?? null
  const atRest = by('watered')
  const moment = by('setDown')
  if (atRest === null) return null
  return `The test hang lets it carry ${forceText(atRest)} for good${moment === null ? '' : `, and ${forceText(moment)} for a moment`}.`
}
