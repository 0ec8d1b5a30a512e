import { SEASON, WEATHERING } from '../catalogue/ageing'
import { peopleBeneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'
import type { Finding } from './finding'
import type { Verdict } from './verdict'

/**
 * What hanging outdoors says of a cord whatever its strength: natural fibre lasts one season and never
 * hangs over people (NATURAL_CORD_OUTDOORS…), a fibre whose loss is not known is not enough known
 * (OUTDOOR_LOSS_UNKNOWN). None under a roof or of polyester and nylon, whose loss is reckoned.
 */
export function weatherFindings(answers: Answers): readonly { readonly finding: Finding; readonly atLeast: Verdict }[] {
  if (answers['place.exposure'] !== 'outdoors') return []
  switch (WEATHERING[answers['cord.fibre']]) {
    case 'yearly': return []
    case 'unknown': return [{ finding: { code: 'OUTDOOR_LOSS_UNKNOWN' }, atLeast: 'not enough known' }]
    case 'season': {
      if (peopleBeneath(answers['place.beneath'])) return [{ finding: { code: 'NATURAL_CORD_OUTDOORS_OVER_PEOPLE' }, atLeast: 'fails' }]
      const tooLong = answers['place.life'] > SEASON.value * 1.01
      return [{ finding: { code: 'NATURAL_CORD_OUTDOORS', tooLong }, atLeast: tooLong ? 'fails' : 'holds' }]
    }
  }
}
