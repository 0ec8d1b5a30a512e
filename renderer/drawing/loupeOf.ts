import { partOf, type LinkCode, type Loupe, type LoupeCode, type PartKey } from '#core'

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
export function loupeOf(details: readonly Loupe[], part: PartKey): Loupe | null {
  const { link, tier } = partOf(part)
  return details.find((loupe) => SHOWS[loupe.code].includes(link) && partOf(loupe.link).tier === tier) ?? null
}
