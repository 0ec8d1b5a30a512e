import type { Puller } from '../catalogue/jolts'
import { peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'

/**
 * Who may pull at a hanger: as answered, else a child where people sit, sleep or play beneath, or the public;
 * null for nobody.
 * @example pullerOf({ 'place.reach': 'unknown', 'place.beneath': 'furniture' }) // null
 * @example pullerOf({ 'place.reach': 'unknown', 'place.beneath': 'people' }) // 'child'
 */
export function pullerOf({ 'place.reach': reach, 'place.beneath': beneath }: Pick<Answers, 'place.reach' | 'place.beneath'>): Puller | null {
  if (reach === 'nobody') return null
  return reach === 'unknown' ? (peopleBeneath(beneath) ? 'child' : null) : reach
}
