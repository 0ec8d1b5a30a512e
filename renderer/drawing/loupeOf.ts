import { loupes, partOf, type CaseCode, type CheckResult, type LinkCode, type Loupe, type LoupeCode, type PartKey } from '#core'

/** The parts each detail helps to see. */
const SHOWS: Readonly<Record<LoupeCode, readonly LinkCode[]>> = {
  fixing: ['fixing'],
  hook: ['hook', 'hookShank'],
  ring: ['ring', 'ringCord'],
  stick: ['stick', 'topCord'],
  cradle: ['cradle', 'seat'],
  gathering: ['gatheringGrip', 'gatheringTurn', 'wrapHoop'],
}

/** The detail in which a part is seen larger; null where there is none. */
export function loupeOf(check: CheckResult, situation: CaseCode, part: PartKey): Loupe | null {
  const { link, tier } = partOf(part)
  if (!Object.values(SHOWS).some((links) => links.includes(link))) return null
  const found = loupes(check, situation).filter((loupe) => SHOWS[loupe.code].includes(link))
  return found.find((loupe) => partOf(loupe.link).tier === tier) ?? null
}
