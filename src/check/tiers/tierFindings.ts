import type { Finding } from '../finding'
import type { Solved } from '../solved'

/** On pots one under another: LOWER_NOT_WEIGHED, TIERS_OWN_CORDS where a lower pot’s cords pass the one above, and TIERS_HELD_BY_WRAPS where only wraps hold the lower one. */
export function tierFindings({ hanger: { answers, given }, tiers }: Solved): readonly Finding[] {
  if (tiers.length === 0) return []
  const unweighed = tiers.slice(1).filter(({ tier }) => answers[tier === 2 ? 'second.mass' : 'third.mass'] === null)
  const watered = unweighed.reduce((sum, { alone }) => sum + alone.loads.watered.potted, 0)
  return [
    ...(unweighed.length === 0 ? [] : [{ code: 'LOWER_NOT_WEIGHED', pots: unweighed.length, watered } as const]),
    ...(answers['tiers.how'] === 'ownCords' ? [{ code: 'TIERS_OWN_CORDS' } as const] : []),
    ...(answers['tiers.how'] === 'wrapped' ? [{ code: 'TIERS_HELD_BY_WRAPS', assumed: !given.has('tiers.how') } as const] : []),
  ]
}
