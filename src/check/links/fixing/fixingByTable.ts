import type { Value } from '../../../catalogue/basis'
import { BOARD_FIXINGS } from '../../../catalogue/boardFixings'
import { SHEAR_AS_PULL_OUT } from '../../../catalogue/places'
import { AERATED_DEPTH, NYLON_PLUGS, type PlugBase } from '../../../catalogue/plugs'
import type { Answers } from '../../../hanger/fields'
import type { CaseCode } from '../../../load/loadCases'
import type { Finding } from '../../finding'
import type { LinkResult } from '../../linkResult'
import type { PlaceDemand } from '../../placeLoad'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { temperAssumed } from '../assumedPart'
import { ratedFactors } from '../ringLink'
import { assessPlace } from './assessPlace'
import { atOnce, fixingBase, withoutCapacity, type TwoWays } from './fixingEvidence'
import { anchorCone } from './anchorCone'

/** The column of the table of plugs for a wall; dense block, which it has not, as brick with holes. */
const PLUG_COLUMN: Readonly<Record<string, PlugBase>> = {
  concrete: 'concrete', solidBrick: 'solidBrick', perforatedBrick: 'perforatedBrick', denseBlock: 'perforatedBrick', aeratedBlock: 'aerated', plasterboard: 'board', plasterboardOnSteelStud: 'board',
}

/** The low figure of the table for a plug of the hole drilled, the next smaller plug standing for one between; null outside the table. */
function plugFigure(answers: Answers): Value | null {
  const column = PLUG_COLUMN[answers['place.substrate']]
  const row = NYLON_PLUGS.findLast(({ diameter }) => diameter <= answers['fixing.plugHole'] + 1e-9)
  const figure = column === undefined || row === undefined ? null : row.pullOut[column]
  return figure === null || row === undefined ? null : { value: figure.low, unit: figure.unit, basis: figure.basis, source: `low end, plug of ${row.id}: ${figure.source}` }
}

/** The weakest fixing of the board makers' table, since which of them it is was not asked. */
const boardFigure = (answers: Answers) => BOARD_FIXINGS[answers['place.substrate'] === 'plasterboardOnSteelStud' ? 'board13OnSteelStud' : 'board13'].toggleEighth

function twoWays(answers: Answers): { readonly bears: TwoWays; readonly source: Value } | null {
  if (answers['fixing.kind'] === 'boardFixing') {
    const figure = boardFigure(answers)
    if (figure === undefined || !answers['place.substrate'].startsWith('plasterboard')) return null
    return {
      source: figure.pullOut,
      bears: { pull: figure.pullOut.value, pullTerms: [fromCatalogue('capacity', 'R', figure.pullOut)], shear: figure.shear.value, shearTerms: [fromCatalogue('alongCapacity', 'R_V', figure.shear)] },
    }
  }
  const figure = answers['fixing.kind'] === 'plug' ? plugFigure(answers) : null
  if (figure === null) return null
  const along = figure.value * SHEAR_AS_PULL_OUT.value
  return {
    source: figure,
    bears: {
      pull: figure.value, pullTerms: [fromCatalogue('capacity', 'R', figure)], shear: along,
      shearTerms: [fromCatalogue('pullOutRating', 'R_N', figure), fromCatalogue('shearShare', 'k_V', SHEAR_AS_PULL_OUT), worked('alongCapacity', 'R_V', along, 'N', 'k_V * R_N', 'along the wall no more is counted than straight out')],
    },
  }
}

/**
 * A plug in a wall of known kind, or a fixing in a board wall, whose packet is gone: the low figure of a table, which
 * never does more than just hold (LOW_TABLE_FIGURE). Without a figure, or in a ceiling, or in brick, block or concrete not known which: the
 * rating is asked for (MASONRY_NEEDS_RATING, BOARD_NEEDS_RATING). Aerated block needs 50 mm of depth
 * (AERATED_DEPTH).
 */
export function fixingByTable(solved: Solved, code: CaseCode, asked: PlaceDemand): readonly LinkResult[] {
  const { answers } = solved.hanger
  const aerated = aeratedFindings(answers)
  const shallow = aerated.some((f) => f.code === 'AERATED_DEPTH' && f.given !== null)
  const known = answers['place.support'] === 'ceilingHook' || shallow ? null : twoWays(answers)
  if (known === null) {
    const needs: Finding = { code: answers['place.substrate'].startsWith('plasterboard') ? 'BOARD_NEEDS_RATING' : 'MASONRY_NEEDS_RATING' }
    return [withoutCapacity(solved, code, { ...asked, terms: [...asked.terms, ...anchorCone(answers)] }, [needs, ...aerated], 'not enough known')]
  }
  const { factors, terms } = ratedFactors(solved, code)
  const scale = atOnce(asked, known.bears)
  return temperAssumed(solved, answers['fixing.kind'] === 'plug' ? ['fixing.plugHole'] : [], [assessPlace(solved, {
    ...fixingBase(code), part: 'lowTable', demand: scale.demand, capacity: { value: scale.capacity, unit: 'N', basis: known.source.basis, source: known.source.source },
    factors, grade: 'table', atLeast: 'just holds', findings: [{ code: 'LOW_TABLE_FIGURE' }, ...aerated],
    terms: [
      ...asked.terms, ...scale.terms,
      ...(answers['fixing.kind'] === 'plug' ? [entering('plugHole', 'd_p', answers['fixing.plugHole'], 'm', 'your own', 'hole drilled for the plug')] : []),
      ...terms,
    ],
  })])
}

/** In aerated block: that it needs its depth, with the depth given where that is too little. */
function aeratedFindings(answers: Answers): readonly Finding[] {
  if (answers['place.substrate'] !== 'aeratedBlock') return []
  const length = answers['fixing.length']
  const depth = length === null ? null : length - answers['fixing.between']
  return depth !== null && depth >= AERATED_DEPTH.value ? [] : [{ code: 'AERATED_DEPTH', given: depth, least: AERATED_DEPTH.value }]
}
