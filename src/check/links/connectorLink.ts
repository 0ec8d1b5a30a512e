import { PROOF_COIL, UNWELDED_CHAIN, type ChainRow } from '../../catalogue/chain'
import { YIELD_STRESS } from '../../catalogue/metals'
import { peopleBeneath } from '../../catalogue/reserves'
import type { Answers } from '../../hanger/fields'
import type { CaseCode } from '../../load/loadCases'
import { metres, pascals } from '../../quantity/si'
import { closedRingLoad, openHookLoad, plasticMoment } from '../../statics/wire'
import type { Finding } from '../finding'
import { belowHook } from '../hookLoad'
import { assessLink, reserve, type Evidence, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { fromCatalogue, worked } from '../term'
import { byTestHang, liftFindings, testHangFaults, testMassFor } from '../testHang'
import { allowableReserve, reserveTerms, strengthReserve } from '../timeFactors'
import { isWorse } from '../verdict'
import { ratedFactors, wireTerms } from './ringLink'

type Base = Pick<Evidence, 'link' | 'side' | 'case' | 'demand' | 'overallFactor' | 'atLeast'> & { readonly findings: readonly Finding[] }

/**
 * What hangs between hook and ring or stick, N: by its rating; an S-hook of known wire by the hinge that opens either
 * bend, or a shut one by ring collapse; steel chain by its maker's table, welded or not (CHAIN_NOT_FOR_LIFTING);
 * anything else is not known until test-hung (CONNECTOR_UNRATED). Over people an open S-hook and open links
 * are refused (CONNECTOR_OPEN_OVER_PEOPLE). No results where nothing hangs between.
 */
export function connectorLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const kind = answers['connector.kind']
  if (kind === 'none') return []
  const open = answers['connector.joint'] === 'open' && (kind === 'sHook' || (kind === 'chain' && answers['connector.rated'] === null))
  const refused = open && peopleBeneath(answers['place.beneath'])
  const findings: readonly Finding[] = refused ? [{ code: 'CONNECTOR_OPEN_OVER_PEOPLE', kind }] : []
  return solved.wholeCases.map((code) => {
    const base: Base = { link: 'connector', side: 'place', case: code, demand: { value: belowHook(solved, code).load, unit: 'N' }, overallFactor: null, atLeast: refused ? refusal(solved) : 'holds', findings }
    if (answers['connector.rated'] !== null) return rated(solved, code, base, answers['connector.rated'])
    const known = byWire(solved, code, base) ?? unknown(solved, code, base)
    return refused ? known : tested(solved, code, base, known)
  })
}

/** What was only assumed to be open is not said to fail. */
const refusal = ({ hanger: { given } }: Solved): 'fails' | 'not enough known' => (given.has('connector.joint') || given.has('connector.rated') ? 'fails' : 'not enough known')

function rated(solved: Solved, code: CaseCode, base: Base, rating: number): LinkResult {
  const { factors, terms } = ratedFactors(solved, code)
  return assessLink({ ...base, part: 'rated', capacity: { value: rating, unit: 'N', basis: 'your own', source: 'rated load of the part between' }, factors, grade: 'rated', terms: [...belowHook(solved, code).terms, ...terms] })
}

const unknown = (solved: Solved, code: CaseCode, base: Base): LinkResult => assessLink({
  ...base, part: 'whole', capacity: null, factors: [], grade: 'table', atLeast: base.atLeast === 'fails' ? 'fails' : 'not enough known',
  findings: [...base.findings, { code: 'CONNECTOR_UNRATED', testMass: testMassFor(solved) }], terms: belowHook(solved, code).terms,
})

/** What a test hang shows, where it shows more than the wire. */
function tested(solved: Solved, code: CaseCode, base: Base, known: LinkResult): LinkResult {
  if (testHangFaults(solved, false)?.length !== 0) return known
  const held = assessLink({ ...base, part: 'testHang', ...byTestHang(solved, code), grade: 'tested', findings: [...base.findings, ...liftFindings(solved, false)] })
  return held.utilisation !== null && held.utilisation <= 1 && isWorse(known.verdict, held.verdict) ? held : known
}

/** By its wire; null where that says nothing. */
function byWire(solved: Solved, code: CaseCode, base: Base): LinkResult | null {
  const { answers } = solved.hanger
  if (answers['connector.kind'] === 'sHook') return sHook(solved, code, base)
  const row = answers['connector.kind'] === 'chain' ? chainRow(answers) : null
  if (row === null) return null
  const welded = answers['connector.joint'] === 'closed'
  const reserveOf = allowableReserve(answers, solved.loads[code].case)
  const { factors } = ratedFactors(solved, code)
  return assessLink({
    ...base, part: welded ? 'weldedChain' : 'openChain',
    capacity: { value: row.limit.value, unit: 'N', basis: row.limit.basis, source: row.limit.source },
    factors, grade: 'table',
    findings: [...base.findings, welded ? { code: 'CHAIN_NOT_FOR_LIFTING' } : { code: 'CHAIN_UNWELDED' }],
    terms: [...belowHook(solved, code).terms, ...reserveTerms(reserveOf)],
  })
}

/** The thickest chain of the tables that is no thicker than the wire measured; only steel chain is in them. */
function chainRow(answers: Answers): ChainRow | null {
  const wire = answers['connector.wire']
  if (wire === null || answers['connector.metal'] !== 'steel') return null
  // Wire is rolled a little thinner than its name says.
  const fits = ({ diameter }: ChainRow): boolean => diameter !== null && diameter <= wire * 1.02
  const rows = (answers['connector.joint'] === 'closed' ? PROOF_COIL : UNWELDED_CHAIN.filter((row) => row.id.startsWith('jack'))).filter(fits)
  return rows.reduce<ChainRow | null>((most, row) => (most === null || row.limit.value > most.limit.value ? row : most), null)
}

/** Both bends alike, each opened by a hinge opposite its mouth; shut ones give way as rings. */
function sHook(solved: Solved, code: CaseCode, base: Base): LinkResult | null {
  const { answers } = solved.hanger
  const [wire, inside] = [answers['connector.wire'], answers['connector.inside']]
  if (wire === null || inside === null) return null
  const yieldStress = YIELD_STRESS[answers['connector.metal']]
  const stress = pascals(yieldStress.value)
  const shut = answers['connector.joint'] === 'closed'
  const capacity = (shut ? closedRingLoad : openHookLoad)(metres(wire), metres(inside), stress)
  const reserveOf = strengthReserve(answers, solved.loads[code].case)
  return assessLink({
    ...base, part: shut ? 'ringCollapse' : 'wireHinge',
    capacity: { value: capacity, unit: 'N', basis: 'computed', source: shut ? 'the pull that bends a shut bend of this wire for good' : 'the pull that bends an open bend of this wire for good' },
    factors: [reserve(reserveOf)], grade: 'table',
    terms: [
      ...belowHook(solved, code).terms,
      ...wireTerms('d_c', wire, inside, fromCatalogue('yieldStress', 'f_y', yieldStress), plasticMoment(metres(wire), stress)),
      worked('capacity', 'R', capacity, 'N', shut ? '4 * M_p / r_m' : 'M_p / r_m', shut ? 'four hinges, each arm the mean radius' : 'hinge opposite the mouth, lever the mean radius'),
      ...reserveTerms(reserveOf),
    ],
  })
}
