import type { Refusal } from '../catalogue/refusals'
import type { SettlingQuestion } from '../catalogue/substrates'

const BETWEEN_JOISTS = 'Fix into a joist, or into a timber laid across two joists.'
const ROD_INSTEAD = 'Use a rail whose brackets are rated for the load, or a hook in a joist.'

/** Why nothing is hung so, and what to do instead. */
export const REFUSAL_TEXTS: Readonly<Record<Refusal, string>> = {
  ceilingTileOrGrid: 'A ceiling tile and its grid carry tiles and nothing else. Hang from the joist or slab above, through the tile.',
  plasterboardCeiling: `A plasterboard ceiling alone is refused for a lasting load overhead: board sags and crumbles round whatever holds in it. ${BETWEEN_JOISTS}`,
  lightingBox: `A lighting box is made for its lamp and is no plant hook; water and wiring do not go together either. ${BETWEEN_JOISTS}`,
  sprinkler: 'Nothing hangs from a sprinkler or its pipe: it may flood the room and will not put out the fire. Keep the pot clear of it.',
  gasOrHeatingPipe: 'A gas or heating pipe must not carry: its joints leak, and heat rots cord. Fix into the wall or ceiling instead.',
  duct: 'An air duct is thin sheet on light straps. Fix into the joist or slab above it.',
  furringOrResilientChannel: 'A thin metal channel behind the board can be taken for a joist and is none: it springs, and its screws pull out. Find the joist itself.',
  chipboard: 'Chipboard crumbles round a thread and swells when damp. Screw through it into the joist below, and count only the thread in the joist.',
  trim: `A moulding or trim is held by small nails. ${BETWEEN_JOISTS}`,
  tensionRod: `A tension rod holds by friction and lets go without a warning. ${ROD_INSTEAD}`,
  curtainRod: `A curtain rod’s brackets are made for cloth, unless they are rated for the load. ${ROD_INSTEAD}`,
  showerRod: `A shower rod’s brackets are made for a curtain, unless they are rated for the load. ${ROD_INSTEAD}`,
  towelRod: `A towel rod’s brackets are made for towels, unless they are rated for the load. ${ROD_INSTEAD}`,
  postTensionedSlab: 'A slab with tensioned cables must not be drilled before it is scanned: a cut cable is deadly. Have it scanned by those who may drill it, or hang from something else.',
  unknownSupport: 'What is not known cannot be trusted. Find out what it is, or have someone look who can tell.',
  adhesiveHook: 'Adhesive creeps, and overhead it is peeled off little by little. Use a screw in a joist.',
  magneticHook: 'A magnet slides at a fifth of its rated pull and lets go over paint or thin sheet. Clamp or bolt to the steel, or take the cord round it.',
  resinAnchorOverhead: 'Resin anchors under a lasting pull overhead creep, and heat softens them. Use an anchor that expands or cuts into the concrete and is rated for overhead use.',
  plasticPlugOverhead: 'One plastic plug pulled straight down may creep out, unless its packet rates it for ceilings. Use a metal anchor rated for overhead use, or a joist.',
  screwInEndGrain: 'A wood screw in end grain holds erratically and no book allows for it. Turn the screw into the side of the timber.',
  nailInEndGrain: 'A nail in end grain works loose. Use a screw in the side of the timber.',
  smoothNailPulledOut: 'A smooth nail that is pulled along its length for good creeps out as the wood dries. Use a screw or a screw hook.',
  unweldedRingOverPeople: 'A ring or link that is only bent shut opens like a hook. Over people use one that is welded or forged.',
  openHookOverPeople: 'Over people an open hook is refused: a bump can lift the hanger out. Use a closed eye, or a hook with a latch or carabiner.',
}

/** Questions that tell what a wall or ceiling is, as they are put. */
export const SETTLING_QUESTION_TEXTS: Readonly<Record<SettlingQuestion, string>> = {
  soundWhenKnocked: 'Knock on it: does it sound hollow all along, dull at even distances, or hard everywhere?',
  screwsShowInALine: 'Does a magnet find screws or nails in a straight line? They show where a joist or stud runs.',
  dustOfTheDrill: 'If a small hole is drilled: is the dust white, red, grey, or shavings of wood, and does the drill fall into a hollow?',
  houseAge: 'When was the house built, and has the ceiling been changed since?',
  whatIsAbove: 'What is above or behind it: a floor, a loft, a flat roof, another flat, or pipes and cables?',
}
