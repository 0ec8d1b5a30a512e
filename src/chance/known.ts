import type { CheckResult } from '../check/checkHanger'
import type { Finding } from '../check/finding'
import type { LinkResult } from '../check/linkResult'
import { partKey, parts, type CheckedPart } from '../check/parts'
import { isAllowed } from './partMember'
import type { ChanceProblem } from './problem'
import { CHANCE_CASES, type ChanceCase, type LeftOut, type LeftOutReason } from './tally'

/** A part whose real strength is known, with its results in the situations told. */
export interface KnownPart extends Omit<CheckedPart, 'results'> {
  readonly results: readonly LinkResult[]
}

const isTold = (code: string): code is ChanceCase => (CHANCE_CASES as readonly string[]).includes(code)

/** Not enough known only because it was not said what is beneath: that sets the reserve, not what a part bears. */
const onlyForReserve = ({ findings }: LinkResult): boolean => {
  const fails = findings.filter((f) => f.code === 'ASSUMED_PART_FAILS')
  return fails.length > 0 && fails.every((f) => f.path === 'place.beneath')
}

/** What makes a part fail whatever it bears: no figure of its strength tells when. */
const REFUSING: readonly Finding['code'][] = ['JUTE_NEVER_DRY', 'NATURAL_CORD_OUTDOORS_OVER_PEOPLE', 'LEG_ANGLE_REFUSED', 'PANEL_CORDS_FEW']
const refuses = (finding: Finding): boolean => REFUSING.includes(finding.code) || ('refused' in finding && finding.refused) || ('tooLong' in finding && finding.tooLong)

/** Why a result gives no strength to draw; null where it does. What does not arise in a situation (no demand, nothing asked) is no reason. */
function reasonFor(result: LinkResult): LeftOutReason | null {
  if (result.link === 'cradle') return 'fit'
  if (result.capacity === null) return result.verdict === 'fails' ? 'refused' : result.verdict === 'not enough known' ? 'notKnown' : 'farStronger'
  // Within what it may bear it fails for something else, as a knot that was seen to slip.
  if (result.verdict === 'fails' && ((result.utilisation !== null && result.utilisation <= 1) || result.findings.some(refuses))) return 'refused'
  if (result.demand === null || result.capacity.value <= 0) return result.verdict === 'fails' ? 'refused' : 'notKnown'
  return result.verdict === 'not enough known' && !onlyForReserve(result) ? 'notKnown' : null
}

const WORST: readonly LeftOutReason[] = ['refused', 'notKnown', 'fit', 'farStronger']

/** Parts of a check sorted into those whose strength can be drawn and those left out, with why. */
export function knownParts(check: CheckResult): { readonly known: readonly KnownPart[]; readonly leftOut: readonly LeftOut[] } {
  const known: KnownPart[] = []
  const leftOut: LeftOut[] = []
  for (const { link, tier, results } of parts(check)) {
    const told = results.filter((r) => isTold(r.case) && !isAllowed(r))
    if (told.length === 0 || link === 'load') continue
    const reasons = told.map(reasonFor)
    const reason = WORST.find((one) => reasons.includes(one))
    if (reason === undefined) known.push({ link, tier, results: told })
    else leftOut.push({ key: partKey(link, tier), link, tier, reason })
  }
  return { known, leftOut }
}

/** Why no figure is told at all: what matters most is missing; null where there is enough. */
export function refusalFor(check: CheckResult, { known, leftOut }: ReturnType<typeof knownParts>): ChanceProblem | null {
  const { answers } = check.solved.hanger
  if (answers['make.have'] === 'no') return { code: 'NO_HANGER' }
  if (answers['pot.have'] === 'no') return { code: 'NO_POT' }
  const load = check.links.find((l) => l.link === 'load')
  const open = load?.findings.flatMap((f) => (f.code === 'ANSWER_NEEDED' ? [f.path] : [])) ?? []
  if (open.length > 0 || load?.findings.some((f) => f.code === 'WEIGHED_TOO_LIGHT') === true) return { code: 'LOAD_NOT_KNOWN', open }
  if (check.solved.slings === null || Object.values(check.solved.slings).some((sling) => sling.trouble !== 'none' && sling.gone === null)) return { code: 'NO_BALANCE' }
  const legs = leftOut.filter(({ link }) => link === 'leg')
  if (legs.length > 0) return { code: legs.some(({ reason }) => reason === 'refused') ? 'LEGS_REFUSED' : 'LEGS_NOT_KNOWN' }
  return known.length === 0 ? { code: 'NOTHING_KNOWN', links: leftOut.map(({ link }) => link) } : null
}
