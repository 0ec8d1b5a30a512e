import type { RemedyCode } from '../advice/remedyKinds'

/** What to do, for each kind of remedy; the patch says how much. */
export const REMEDY_TEXTS: Readonly<Record<RemedyCode, string>> = {
  drillHole: 'Let water run out: use a pot with a hole',
  higherRating: 'Use a part with a higher rating',
  moreWraps: 'Tie the gathering knot with more wraps',
  testHang: 'Test-hang it, and find the strands have not slipped',
  pullInPlace: 'Pull the fixing in place',
  closedEye: 'Use a closed eye, a latch or a carabiner',
  thickerHook: 'Use a hook of thicker wire',
  shorterHook: 'Screw the hook in to its shoulder, or use a shorter one',
  deeperScrew: 'Use a longer thread in the timber',
  useJoist: 'Fix it into a timber joist',
  steelRing: 'Use a welded steel ring',
  thickerRing: 'Use a ring of thicker wire',
  replaceSooner: 'Replace the hanger sooner',
  lighterMix: 'Use a lighter mix of peat and perlite',
  lighterPot: 'Use a plastic pot',
  smallerPot: 'Use a smaller pot',
  netCradle: 'Tie the cradle’s first knots between the legs, on the pot’s side',
  otherPlace: 'Hang it where less is at stake beneath',
  thickerCord: 'Use a thicker cord of the same kind',
  moreStrands: 'Use more strands in each leg',
  plainLegs: 'Leave the legs plain instead of knotted',
  moreLegs: 'Use more legs',
  longerHanger: 'Make the hanger longer, so that the legs hang steeper',
  smallestCord: 'Start from this cord, the thinnest of the catalogue that holds',
}
