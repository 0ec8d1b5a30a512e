import type { Puller } from '../catalogue/jolts'
import type { Finding, FindingCode, Outcome } from '../check/finding'
import type { FieldPath } from '../hanger/fields'
import { STANDARD_GRAVITY } from '../quantity/si'
import { FIELD_WORDS } from './fields'
import { REFUSAL_TEXTS, SETTLING_QUESTION_TEXTS } from './refusals'
import { forceText, lengthText, lengthUpText, linearDensityText, massLeastText, massLimitText, massText, numberText, plainLengthText, speedText, timeText } from './amounts'
import { dayText } from './care'
import { preferredText } from './preferredText'
import { byUnits } from './writing'

type Words = { readonly [C in FindingCode]: (finding: Extract<Finding, { code: C }>) => string }

/** That a field was left open; where its label is a question, that it was. */
function unsaid(path: FieldPath): string {
  const { label } = FIELD_WORDS[path]
  return label.endsWith('?') ? `“${label}” was not answered` : `${label} was not said`
}
/** Lengths are the only measures that are ever assumed. */
const assumedText = (path: FieldPath, assumed: string): string => FIELD_WORDS[path].choices[assumed] ?? preferredText(assumed, 'length')

const TUGS: Readonly<Record<Puller, string>> = { cat: 'A cat that jumps in', child: 'A child who hangs on it' }
const weighCord = (): string => byUnits('Weigh 10 m of it and enter grams per metre with the fibre', 'Weigh 10 yd of it and enter ounces per yard with the fibre')
const degrees = (value: number): string => `${Math.round(value)}°`

const percent = (share: number): string => `${Math.round(share * 100)} %`

const legsText = (legs: readonly number[]): string => (legs.length === 1 ? `Leg ${legs[0] ?? ''} has` : legs.length <= 6 ? `Legs ${legs.slice(0, -1).join(', ')} and ${legs.at(-1) ?? ''} have` : 'Some legs have')

/** Makers measure to so much, m; what has to be more than a length is a hair more. */
const STEP = 0.005
const HAIR = 1e-6
/** By how much at least, rounded up so that it is enough. */
const moreText = (length: number): string => `at least ${lengthUpText(length + HAIR, STEP)}`

const LEG_OUTCOME: Readonly<Record<Outcome, string>> = {
  stays: 'If one leg goes, the pot stays up on the others.',
  tips: 'If one leg goes, the pot tips and may slide out.',
  falls: 'If one leg goes, the pot falls.',
  unknown: 'What happens if one leg goes cannot be said yet.',
}
const PANEL_OUTCOMES: Readonly<Record<Outcome, string>> = { stays: 'the pot stays up', tips: 'the pot tips and may slide out', falls: 'the pot falls', unknown: 'what happens cannot be said yet' }
const PANEL_OUTCOME = (what: string, outcome: Outcome): string => `${what}, ${PANEL_OUTCOMES[outcome]}.`
const STRAND_OUTCOME: Readonly<Record<Outcome, string>> = {
  stays: 'If one strand goes, the pot stays up.',
  tips: 'If one strand goes, the pot tips.',
  falls: 'If one strand goes, the pot falls.',
  unknown: 'What happens if one strand goes cannot be said yet.',
}

const FINDING_WORDS: Words = {
  NO_POT_YET: () => 'No pot yet: what is shown is the hanger with the heaviest pot it may carry. Choose a pot, or weigh one watered, to check it.',
  NO_HANGER_YET: () => 'No hanger yet: what is shown is the usual build. Say how yours will be made up to check it.',
  ANSWER_NEEDED: ({ path, assumed }) => `${unsaid(path)}; ${assumedText(path, assumed)} is only a guess. Answer it and the check can be trusted.`,
  ASSUMED_PART_HOLDS: ({ path, assumed }) => `${unsaid(path)}; that this part holds rests on the assumed ${assumedText(path, assumed)}.`,
  ASSUMED_PART_FAILS: ({ path, assumed }) => `${unsaid(path)}; with the assumed ${assumedText(path, assumed)} it would fail. Say what it is, or choose something stronger.`,
  WEIGHED_STATE_ASSUMED: () => 'A weight was given without saying whether the pot was dry, just watered or standing in water; dry is taken, the safer answer.',
  FORCE_FROM_MASS: ({ path, force }) => `${FIELD_WORDS[path].label}: given as a mass, taken as the pull of that mass, ${numberText(force)} N.`,
  CORD_UNKNOWN: () => `Nothing is known of the cord’s strength. ${weighCord()}, or measure its diameter.`,
  CORD_BY_DIAMETER: ({ linearDensityKnown }) => linearDensityKnown
    ? `${byUnits('Grams per metre', 'Ounces per yard')} say nothing without the fibre: name the fibre. Until then the cord is known by its diameter only.`
    : `The cord is known by its diameter only, and cords of one diameter differ sixfold in strength. ${weighCord()}.`,
  NATURAL_CORD_OUTDOORS_OVER_PEOPLE: () => 'Natural cord outdoors loses most of its strength in a season: never over people. Use polyester, or hang it elsewhere.',
  NATURAL_CORD_OUTDOORS: ({ tooLong }) => tooLong
    ? 'Natural cord outdoors lasts one season, and it was to hang longer: replace it every year.'
    : 'Natural cord outdoors lasts one season: replace it every year.',
  OUTDOOR_LOSS_UNKNOWN: () => 'How fast this fibre loses strength in the sun is not known: some cords turn brittle in weeks. Use polyester outdoors.',
  LEANS_IN_WIND: ({ speed, lean, swing, reach, strikes }) => {
    const keep = reach === null ? '' : ` Keep ${lengthText(reach)} clear of walls and glass all round its plumb line, or tie it back.`
    return `In gusts of ${speedText(speed)} it leans by ${degrees(lean)} when it is dry, and may swing to ${degrees(Math.min(90, swing))} to any side.${strikes ? ' It may strike the wall it hangs by: tie it back, or take it down when wind is forecast.' : keep}`
  },
  WIND_THROWS: ({ speed, force }) => `A gust of ${speedText(speed)} pushes with ${forceText(force)}, more than it weighs: it is thrown about, and what that does to it cannot be reckoned. Hang it sheltered, or take it in when wind is forecast.`,
  TUG_RECKONED: ({ who, pull, assumed }) => `${TUGS[who]} is reckoned, as the pull of ${forceText(pull)}${assumed ? ', since nobody said who can reach it and people are beneath. If nobody can, say so' : ''}.`,
  WEIGHED_TOO_LIGHT: () => 'The weight given is less than this pot with its mix can have. Weigh it again, or correct the measures of the pot.',
  LEG_TOO_SHORT: ({ strand, least }) => `The legs are too short to close under this pot: each runs ${lengthText(Math.max(0, strand))} from ring to gathering knot and needs more than ${lengthText(least)}. ${strand > 0 ? `Make the hanger ${moreText(least - strand)} longer, or the pot smaller.` : `Fringe, knot and ring use up the whole hanger: make it ${moreText(least - strand)} longer, or the fringe shorter by as much.`}`,
  LEG_ANGLE_WIDE: ({ degrees: angle, longer }) => `The legs lie ${degrees(angle)} from the vertical: shallow legs multiply the load. Make the hanger ${moreText(longer)} longer.`,
  LEG_ANGLE_REFUSED: ({ degrees: angle, longer }) => `The legs lie ${degrees(angle)} from the vertical; beyond 75° no number can be trusted. Make the hanger ${moreText(longer)} longer.`,
  SLING_UNSTABLE: () => 'The pot does not rest upright in these legs: it turns over. Spread the legs further or lower the pot’s weight.',
  SLING_LOST_SUPPORT: () => 'Fewer than three legs carry: the pot is not held.',
  SLING_NOT_CONVERGED: () => 'The forces in the legs could not be found, so nothing is said of them. Change the lengths a little and look again.',
  NEARLY_SLACK: ({ legs, millimetres }) => `${plainLengthText(millimetres / 1000)} more or less in one leg leaves ${legs} ${legs === 1 ? 'leg' : 'legs'} almost slack; the others were checked carrying its share.`,
  LOW_OVERALL_FACTOR: ({ factor, least }) => `Its strands when new bear ${numberText(factor)} times the watered load; guidance for fibre rope asks for ${least} to 12, so this is “just holds” at best.`,
  SHAPE_NOT_RECKONED: ({ shape }) => `How strands lie at the corners of a ${shape === 'square' ? 'square pot' : 'trough'} is not reckoned in such a hanger: its weight is, but not whether it sits firmly. Hang it low over a cushion with a quarter more weight in it and try to tip it by hand.`,
  STRANDS_UNEQUAL: ({ legs, shorter }) => `${legsText(legs)} a shorter way to the gathering knot: make those strands up to ${lengthText(shorter)} shorter than the longest, or the pot hangs on the others alone.`,
  STRANDS_SLIP_ALONG: ({ atCorners, held }) => (held
    ? `Strands ${atCorners ? 'at a corner' : 'that do not lie in the middle of a side'} would slip along the edge; the cradle’s first knots, tied between the legs on the pot’s side, hold them there.`
    : `Strands ${atCorners ? 'at a corner' : 'that do not lie in the middle of a side'} slip along the edge to its middle. Tie the cradle’s first knots between the legs on the pot’s side, or ${atCorners ? 'let the legs lie in the middle of the sides' : 'use four legs'}.`),
  VESSEL_ASSUMED: ({ vessel }) => (vessel === 'cover'
    ? 'Only the width and depth of the cover pot are known, so its sides are taken as upright; how firmly it sits is “just holds” at best.'
    : 'The strands lie round the saucer, and the pot stands loose in it; how firmly both sit is “just holds” at best.'),
  SEAT_LOWER_OUT: () => 'Judged as it stands when what hangs below it is lifted out, for then it tips most easily.',
  LOWER_NOT_WEIGHED: ({ pots, watered }) => `${pots === 1 ? 'The lower pot was' : 'The lower pots were'} not weighed and ${pots === 1 ? 'counts' : 'count together'} as ${massText(watered)} watered, the heaviest of what size and the first pot suggest; weighing ${pots === 1 ? 'it' : 'them'} settles it.`,
  TIERS_OWN_CORDS: () => 'The lower pot’s cords come down past the pot above, which presses them outwards: how they bend there is not reckoned, so they are “just holds” at best. Keep them clear of its rim.',
  TIERS_HELD_BY_WRAPS: ({ assumed }) => `${assumed ? 'It was not said what the lower pot hangs from, so it is taken to hang' : 'The lower pot hangs'} on cords that nothing but the upper wraps hold: how well is only reckoned. Strands that run on through the wraps from the top hold by their own strength.`,
  SEAT_LOCKED: () => 'The pot stands higher than bare strands could hold; the cradle’s first knots, tied between the legs on the pot’s side, keep it from tipping.',
  SEAT_ON_FRICTION: () => 'The pot stands higher than smooth strands could hold; only friction keeps it from tipping. Tie the cradle’s first knots on the pot’s side.',
  SEAT_SLIDES: () => 'The pot stands too high in its seat: the strands can slide and it tips out. Tie the cradle’s first knots between the legs on the pot’s side.',
  SEAT_TOPPLES: () => 'The pot is on the edge of toppling even if no strand slides. Make it lower or spread the legs.',
  CRADLE_UNDER_BASE: ({ first, least }) => `The cradle’s first knots come ${lengthText(first)} from the gathering knot, still under the base; they hold the side of this pot from ${lengthText(least)} on. Tie them ${moreText(least - first)} further up.`,
  CRADLE_ABOVE_RIM: ({ first, most }) => `The cradle’s first knots come ${lengthText(first)} from the gathering knot, above the rim; they hold the side of this pot up to ${lengthText(most)}. Tie them ${moreText(first - most)} further down.`,
  CRADLE_LOW: ({ first, needed }) => (needed !== null && needed > first
    ? `The pot is tall for its cradle and may walk out over the first knots when pushed: tie them ${lengthUpText(needed, STEP)} above the gathering knot, ${moreText(needed - first)} further up, or add a second row.`
    : 'The pot is tall for its cradle and may walk out over its knots when pushed: add a second row of knots further up, or choose a lower plant or a wider pot.'),
  CRADLE_GAPS: ({ gap, base }) => `No knots join the legs on the pot’s side: the gaps between them are ${lengthText(gap)} and the base is ${lengthText(base)} wide, so that it can slip out between two if it is pushed. Tie the legs together there, or use more legs.`,
  CRADLE_SECOND_LOW: ({ first, second }) => `The second row of knots comes ${lengthText(second)} from the gathering knot and the first ${lengthText(first)}: the second has to be further up. Measure both along a strand.`,
  BASE_ON_KNOT: ({ bundle, base }) => `The strands gathered under the pot are ${lengthText(bundle)} thick and its base is ${lengthText(base)} wide: it rides on the knot instead of standing on the strands. Use a pot with a wider base, or fewer or thinner strands.`,
  NET_TOO_NARROW: ({ girth, opens, second }) => `Between its two rows of knots the net opens to ${lengthText(opens)} round, and the pot is ${lengthText(girth)} round: it does not go in. Tie the second row ${lengthUpText(second, STEP)} above the gathering knot, or choose a slimmer pot.`,
  GRIP_UNTESTED: ({ testMass }) => `No published test of a gathering knot exists, so its grip is only reckoned. Hang ${massLeastText(testMass)} in it for 24 h over a cushion with the strands marked where they leave the wraps; a slip under ${byUnits('3 mm', '7/64 in')} settles it.`,
  WRAPPING_CORD_SHORT: ({ length, makes, wraps, needed }) => `A wrapping cord of ${lengthText(length)} makes ${makes} ${makes === 1 ? 'wrap' : 'wraps'} round these strands, and ${wraps} were said: cut ${lengthUpText(needed, 2 * STEP)} for ${wraps === 1 ? 'it' : 'them'}. Until then only ${makes} count.`,
  TEST_HANG_TOO_SHORT: ({ time, least }) => `The test hang lasted ${timeText(time)}; it counts from ${timeText(least)}.`,
  TEST_HANG_SLIPPED: ({ slip, most }) => `The strands slipped ${lengthText(slip)} in the test hang; it counts below ${lengthText(most)}. Tie the knot tighter, with more wraps, and test again.`,
  TEST_HANG_SLIP_UNSAID: ({ most }) => `The test hang does not say how far the marked strands slipped; it counts below ${lengthText(most)}. Measure the slip.`,
  RING_UNRATED: ({ testMass }) => `A wooden ring cannot be reckoned: it breaks across the grain where nobody can see. Hang ${massLeastText(testMass)} on it for 24 h, or use a metal ring, or one with a rating.`,
  RING_LEVEL_UNTESTED: ({ testMass }) => `How a ring that lies level bends between its cords is not reckoned, and a rating is for a pull upright. Hang ${massLeastText(testMass)} on it for 24 h, or hang the legs from an upright ring.`,
  RING_CORDS_WIDE: ({ degrees: angle, refused }) => (refused
    ? `The cords above the ring lie ${degrees(angle)} from the vertical; beyond 75° no number can be trusted. Hang the ring further below the hook.`
    : `The cords above the ring lie ${degrees(angle)} from the vertical: shallow cords multiply the load. Hang the ring further below the hook.`),
  RING_MAY_OPEN: ({ force }) => `At ${forceText(force)} the ring may open slightly; it does not give way.`,
  HOOK_OPEN_OVER_PEOPLE: () => 'Over people an open hook is refused: a bump can lift the hanger out. Use a closed eye, or a hook with a latch or carabiner.',
  HOOK_UNMARKED: ({ testMass }) => `Of what metal the hook is was not said, so it counts as the softest. Hang ${massLeastText(testMass)} on it for 24 h, or find out what it is made of.`,
  HOOK_MAY_OPEN: ({ force }) => `At ${forceText(force)} the hook’s bowl may open slightly; it does not let go.`,
  HOOK_MAY_UNSCREW: () => 'Twisted legs turn as they settle, and may turn a screw hook out of its hole. Hang a swivel between, or look at the hook at each watering.',
  CONNECTOR_OPEN_OVER_PEOPLE: ({ kind }) => (kind === 'sHook'
    ? 'Over people an open S-hook is refused: a bump can lift the hanger out. Use a carabiner with a rating.'
    : 'Over people a chain of open links is refused: one link that opens lets everything fall. Use welded chain, or one with a rating.'),
  CONNECTOR_UNRATED: ({ testMass }) => `What the part between hook and hanger bears is not known: enter the rating on its packet, or for S-hooks and steel chain its wire and width inside. Or hang ${massLeastText(testMass)} on it for 24 h.`,
  CHAIN_NOT_FOR_LIFTING: () => 'The chain’s table is that of the thickest size no thicker than its wire; such chain is not made for lifting over people’s heads.',
  CHAIN_UNWELDED: () => 'Chain of links that are only bent round is for places where its failure can hurt nobody.',
  RING_ACROSS_GRAIN: ({ asked, bears }) => `Cut from a board, this ring would be pulled across its grain with ${numberText(asked / bears)} times what a weak softwood bears there. A bent, laminated or plywood ring may bear more.`,
  STICK_TIPS: () => 'The legs reach so far beyond the supports that the stick tips. Tie the top cord, or set the hooks, further out.',
  ROW_TIPS: () => 'With one of the row taken down the stick tips off its supports. Set the hooks further out, or take down the outer ones first and alike on both sides.',
  ROW_LEANS: ({ degrees: angle, runs }) => (runs
    ? 'With one of the row taken down the cord runs over the hook and the stick tips until the rest hang from its end. Hang the stick on two hooks, or tie its cord to the hook.'
    : `With one of the row taken down the stick leans by ${degrees(angle)}; the cord’s grip on the hook holds it there.`),
  ROW_BEYOND_STICK: ({ least }) => `The row is wider than the stick: it needs a stick of at least ${lengthText(least)}, or the hangers closer together.`,
  ROW_TESTED: () => 'A test hang counts for the stick only if every hanger of the row held that mass at once.',
  ROW_TOUCHES: ({ least }) => `The pots of the row touch one another: hang them at least ${lengthText(least)} apart.`,
  STICK_UNRATED: ({ testMass }) => `How strong a natural stick is no table says; what is shown is a judged share of what weak wood bears. Hang ${massLeastText(testMass)} on it for 24 h, and stop at any crack or soft place; or use a dowel of a known wood.`,
  STICK_DIAMETER_NEEDED: ({ diameter }) => `A dowel of the same wood ${lengthText(diameter)} thick would hold.`,
  STICK_NONE_THICK_ENOUGH: ({ most }) => `No usual dowel of this wood up to ${lengthText(most)} would hold: use a stronger wood, or move the supports closer to the legs.`,
  STICK_WET_OUTDOORS: () => 'Outdoors the stick gets wet, and wet wood is little more than half as strong: it counts so.',
  STICK_SAGS: ({ sag, lasting }) => `The stick bends down by ${lengthText(sag)} just watered, and in time by as much as ${lengthText(lasting)}. That is a matter of looks.`,
  BAMBOO_SPLITS: () => 'Bamboo splits along its length long before it breaks: bind it beside every knot that bears, and never put a nail or screw through it.',
  BAMBOO_HOLLOW_UNKNOWN: () => 'The hollow of the bamboo was not measured; a thin wall is taken. Look into its end and measure it.',
  TOP_CORD_TOO_SHORT: ({ cord, least }) => `The top cord is ${lengthText(cord)} long and the places where it is tied are ${lengthText(least)} apart: it has to be longer than that, better half as long again.`,
  TOP_CORD_SHALLOW: ({ degrees: angle, refused }) => (refused
    ? `The top cord rises only ${degrees(angle)} from the stick; below 15° no number can be trusted. Make it longer.`
    : `The top cord rises only ${degrees(angle)} from the stick: a shallow cord multiplies the load. Make it longer.`),
  TOP_CORD_OFFSET: ({ most }) => `The cord’s grip on the hook keeps the stick level as long as the pot hangs within ${lengthText(most)} of the middle. Further out the cord runs over the hook: tie it there with a hitch.`,
  TOP_CORD_RUNS: ({ offset, most, ratio }) => `Legs of slightly unequal length bring the load up to ${lengthText(offset)} off the middle, and one half of the top cord then bears ${numberText(ratio)} times the other; friction keeps it from running only within ${lengthText(most)}. Tie it to the hook with a clove hitch.`,
  TOP_CORD_LEANS: ({ degrees: angle, ratio }) => `Where the legs share unequally the stick may lean by ${degrees(angle)}, one half of its top cord bearing ${numberText(ratio)} times the other.`,
  TOP_CORD_PARTS: ({ strands }) => (strands === 1
    ? 'People are beneath, and the top cord is one strand: if it goes, everything falls. Use two or more, each tied by itself.'
    : 'People are beneath: the strands of the top cord count as a spare for each other only where each is tied by itself.'),
  SUBSTRATE_UNKNOWN: () => `What the hook is fixed into is not known. ${Object.values(SETTLING_QUESTION_TEXTS).join(' ')} If you cannot tell, ask someone licensed.`,
  FIXING_REFUSED: ({ what }) => REFUSAL_TEXTS[what],
  FIXING_KIND_UNKNOWN: () => 'How it is held in the timber is not known. Take it out and look: a screw thread, a smooth nail or only glue.',
  FIXING_NOT_FOR_TIMBER: ({ kind }) => `Timber holds by a thread of its own, and no figure is known for this: ${FIELD_WORDS['fixing.kind'].choices[kind] ?? kind}. Use a screw hook or screw straight into the wood.`,
  GO_ROUND_INSTEAD: ({ substrate }) => `No figure is known for a fixing in ${FIELD_WORDS['place.substrate'].choices[substrate] ?? substrate}. Take the cord or a strap round it, use a clamp made for it, or enter what the fixing is rated for.`,
  NOTHING_TO_GO_ROUND: () => 'A cord needs a beam, rail or branch to go round. Say what it is, or choose a hook or bracket.',
  BEAM_CARRIES: () => 'A beam that carries a floor or roof carries a pot besides. Look that it is sound and is such a beam.',
  CORD_OVER_EDGE: () => 'The edges of a beam wear cord through. Put a strap or padding under it, and look there often.',
  RAIL_NEEDS_RATING: ({ testMass }) => `What a rail carries depends on its brackets. Enter what they are rated for, or pull the rail with ${massLeastText(testMass)} where it hangs and enter that.`,
  BRANCH_UNTESTED: ({ testMass }) => `No figure is known for a branch. See that it is living and sound, pull it with ${massLeastText(testMass)} where it hangs, and enter that.`,
  RATING_FOR_SHEAR: ({ rated }) => `The ${forceText(rated)} on the packet are meant down along the wall, and here the fixing is pulled out, where it may hold a fifth. Look what the packet says for a straight pull.`,
  RATING_WAY_UNSAID: ({ capped }) => capped
    ? 'The rating does not say whether it is meant for a straight pull; taken so, this is “just holds” at best. Look at the packet and say.'
    : 'The rating does not say which way it is meant, and packets often print only the larger one, down along the wall. Look what the packet says for a straight pull.',
  LOW_TABLE_FIGURE: () => 'No rating was given, so the low figure of a table is taken, and this is “just holds” at best. Enter the rating on the packet for this material.',
  AERATED_DEPTH: ({ given, least }) => `Aerated block is soft: screw and plug must go ${lengthText(least)} into it, and as far from its edge${given === null ? '. Say how long the screw is' : `; here it is ${lengthText(Math.max(0, given))}`}.`,
  BOARD_NEEDS_RATING: () => 'In plasterboard the fixing decides. Enter the rating on its packet for this board and a straight pull, or fix into the timber behind.',
  WALL_LEAN_UNKNOWN: () => 'How the pot leans on the wall cannot be said before the legs reach round it.',
  BRACKET_NO_LEVER: () => 'No screw of the bracket stands above the edge on which it turns, so nothing holds it to the wall. Measure how high the highest screw is.',
  BRACKET_TURNS: () => 'A swing arm on one screw turns round it. Use a plate with two or more screws.',
  BRACKET_UNRATED: () => 'What the bracket’s arm bears is not known. Enter its rating, or measure the thickness and height of its arm at the wall.',
  TOLD_BY_CUSTOMER: () => 'The place is known as the customer told it, so more reserve is kept than for what was seen.',
  SCREW_LONGER_THAN_TIMBER: ({ length, depth }) => `The screw goes in ${lengthText(length)} and the timber is ${lengthText(depth)} deep: what comes out behind does not count. Use a shorter one.`,
  LEAD_HOLE: ({ diameter }) => `Drill a lead hole of ${lengthText(diameter)} first: without it the timber may split, with a wider one the thread holds less.`,
  MASONRY_NEEDS_RATING: () => 'In concrete, brick or block the plug decides. Enter the rating on its packet for that material, pulled straight out.',
  PENETRATION_TOO_SHORT: ({ given, least }) => `Only ${lengthText(given)} of thread is in the timber; a screw this thick needs ${lengthText(least)}, so it counts as a thinner one.`,
  PULL_IN_PLACE: ({ mass }) => `One screw overhead is trusted less until it was pulled: hang or pull ${massLeastText(mass)} on it in place, then enter that.`,
  STRAND_PARTS_UNKNOWN: () => 'People are beneath, and what happens if one strand goes cannot be said: use more strands in each leg, or more legs.',
  CORD_TOO_HEAVY: ({ perMetre, most }) => `A cord of this fibre and diameter cannot weigh ${linearDensityText(perMetre)}: more than ${linearDensityText(most)} of fibre does not go into it. Was it weighed doubled, or ${byUnits('ten metres', 'ten yards')} not divided by ten? Until that is clear it counts by its diameter only.`,
  JUTE_DAMP: () => 'Jute rots where it stays damp, as under a drain hole: hang a saucer or cover pot with it, and look at the gathering knot every month.',
  JUTE_NEVER_DRY: ({ lost, holeKnown }) => (holeKnown
    ? `Jute that stays damp loses all its strength within ${timeText(lost)}: under a drain hole that is watered daily, in a steamy room or outdoors it is refused. Use another fibre, or hang a saucer or cover pot with it.`
    : `Jute that stays damp loses all its strength within ${timeText(lost)}. Say whether water can run out of the pot; if it can, use another fibre, or hang a saucer or cover pot with it.`),
  UNDER_LIFE_LINE_FACTOR: ({ factor, least, most }) => `People are beneath: of rope that lives hang on, guidance asks for ${least} to ${most} times the load; these strands when new bear ${numberText(factor)} times.`,
  RESERVE_CHANGED: ({ own, usual, reason }) => `The reserve is ${numberText(own)} instead of the usual ${numberText(usual)}. Reason given: “${reason.trim().replace(/[.]$/, '')}”.`,
  RESERVE_NEEDS_REASON: ({ own, usual }) => `A reserve of ${numberText(own)} was given without a reason, so the usual ${numberText(usual)} is used. Write why, and it counts.`,
  RESERVE_LOW_OVER_PEOPLE: ({ own, usual }) => `People are beneath and the reserve is ${numberText(own)}, less than the usual ${numberText(usual)}: this is “just holds” at best.`,
  STRAND_PARTS_AND_FALLS: () => 'People are beneath, and if one strand goes the pot falls: use more strands in each leg, or more legs.',
  FEW_PULL_TESTS: ({ tests, wanted }) => `${tests === 1 ? 'One pull test is' : 'Two pull tests are'} too few to show how much the cord varies, so a large scatter is taken. From ${wanted} tests on more of its strength counts.`,
  PULL_TEST_OUTLIER: ({ row }) => `Pull test ${row + 1} lies far from the others. It counts all the same: look at the strand where it broke, and pull another in its place.`,
  PULL_TESTS_TIED_STRONGER: ({ tied, straight }) => `The tests as tied bore ${forceText(tied)} on average and the straight ones ${forceText(straight)}, but no strand is stronger for its knots: were several strands pulled at once? Those as tied are left aside.`,
  PULL_TEST_HELD: ({ tests }) => `${tests === 1 ? 'One pull test did not end in a break; it counts as if it had broken at its load' : `${tests} pull tests did not end in a break; they count as if they had broken at their loads`}.`,
  PULL_TEST_IN_MASS: ({ force }) => `Loads in the log that are written as a mass are taken as the pull of that mass: ${forceText(force)} as ${numberText(force)} N.`,
  PULL_TESTS_WOULD_SETTLE: ({ tests, mean }) => `Pull ${tests} single strands straight until they break: if they break close together, at ${massLeastText(mean / STANDARD_GRAVITY)} or more on average, this part holds.`,
  OUTSIDE_ROPE_TABLE: ({ diameter, least, most }) => (diameter < least
    ? `The table of this rope begins at ${lengthText(least)}, and the cord is ${lengthText(diameter)}: it says nothing of so thin a one.`
    : `The table of this rope ends at ${lengthText(most)}, and the cord is ${lengthText(diameter)}: it counts as the thickest of the table.`),
  CORD_LIGHTER_THAN_TABLE: ({ perMetre, least }) => `The cord weighs ${linearDensityText(perMetre)}; rope of this size made to its table weighs ${linearDensityText(least)} or more. The table is left aside.`,
  JOIN_UNKNOWN: () => 'How strong a glued, taped or whipped join is cannot be reckoned. Pull some strands with such a join to the break, as tied, or use whole ones.',
  TEST_HANG_LIFTS: ({ mass, atRest, forAMoment }) => `The test hang with ${massText(mass)} lets this part carry ${massLimitText(atRest)} for good and ${massLimitText(forAMoment)} for a moment.`,
  PANEL_NARROW: ({ width, least }) => `The strands in front would run over the rim: a panel ${lengthText(width)} wide is too narrow for this pot as it hangs. Make its lower edge at least ${lengthText(least)} wide, or raise it above the rim.`,
  PANEL_OVER_RIM: () => 'The strands in front would run over the rim, however wide the panel is. Raise its lower edge above the rim, or tie the first knots in front lower.',
  PANEL_LOW: () => 'The panel ends no higher than where its strands come to the pot. Raise its lower edge above the rim.',
  PANEL_OFF_BASE: () => 'The strands in front would slip off under the base. Tie the first knots in front higher, or use a pot that narrows less.',
  PANEL_CORNERS: ({ shape }) => `How strands from a panel lie round a ${shape === 'square' ? 'square pot' : 'trough'} has not been reckoned. Put it in a round cover pot, or hang it by four legs.`,
  PANEL_CURVED: () => 'The pot’s curved side, or what it stands in, is taken as straight: where the strands in front lie is known roughly only.',
  PANEL_ANGLE: ({ degrees: angle, refused }) => `The strands in front run ${degrees(angle)} from the vertical: ${refused ? 'beyond 75° no number can be trusted' : 'shallow strands multiply the load'}. Raise the panel’s lower edge, or tie the first knots in front lower.`,
  PANEL_CORDS_FEW: ({ cords, needed }) => `${cords} cords folded over the stick give ${2 * cords} strands, and front and back need ${needed}. Put ${Math.ceil(needed / 2)} cords on the stick, or lead fewer strands round the pot.`,
  PANEL_NET_STRANDS: ({ knots, needed, strands }) => `A net with ${knots} ${knots === 1 ? 'knot' : 'knots'} in its widest row takes ${needed} strands, and ${strands} come round the front. Change the one or the other; until then the net is not reckoned.`,
  PANEL_NO_WALL: () => 'Hung from this support, the panel is taken to hang free: no wall is counted on to lean on, nor to rub against.',
  PANEL_SHARES: ({ drawn, longer, shorter, tolerance }) => `As drawn the strands in front bear ${percent(drawn)} of the weight; tied ${lengthText(tolerance)} longer ${percent(longer)}, tied that much shorter ${percent(shorter)}. Friction at the wall and a stiff panel may shift it further, so front and back are each reckoned to bear it all.`,
  REDUNDANCY_PANEL: ({ front, back }) => `${PANEL_OUTCOME('If the strands of one corner go', front)} ${PANEL_OUTCOME('If half of those behind go', back)}`,
  PANEL_SEAT_PINNED: () => 'The pot cannot tip out as long as the knots of the net in front keep their strands in place on it. How it would slide out of a looser net has not been reckoned: hang it low over a cushion with a quarter more weight in it and try to tip it by hand.',
  PANEL_SEAT_LOOSE: () => 'No knots in front lock the strands on the pot’s side, and how a pot slides out of loose strands against a wall has not been reckoned. Tie a net with its first knots on the side, or hang it low over a cushion with a quarter more weight in it and try to tip it by hand.',
  REDUNDANCY_LEG: ({ outcome }) => LEG_OUTCOME[outcome],
  REDUNDANCY_STRAND: ({ outcome }) => STRAND_OUTCOME[outcome],
  INSPECTION_OPEN: ({ what, date, leg }) => `${leg === null ? 'The hanger' : `Leg ${leg}`} was noted as ${what}${date === null ? '' : ` on ${dayText(date)}`}, and nothing since says it was mended. ${what === 'slipped' ? 'Take it down, tie the wraps anew, test it again, and note the repair.' : 'Take it down; count the strand as gone, or mend it and note the repair.'}`,
  INSPECTION_STRAND_GONE: ({ strands, leg, reckoned }) => `${strands === 1 ? 'One strand' : `${strands} strands`} of ${leg === null ? 'a leg' : `leg ${leg}`} ${strands === 1 ? 'is' : 'are'} counted as gone. ${reckoned ? 'Every leg is reckoned without as many.' : 'A panel cannot be reckoned without it: mend it, and note the repair.'}`,
  UNKNOWN_KEYS: ({ names }) => `The file has entries this version does not know; they are kept: ${names.join(', ')}.`,
}

/** The sentence for a finding. */
export const findingText = (finding: Finding): string => (FINDING_WORDS[finding.code] as (f: Finding) => string)(finding)
export const FINDING_CODES_WITH_WORDS = Object.keys(FINDING_WORDS)
