import type { CaseCode } from '../load/loadCases'
import type { LinkCode, Part, Side } from '../check/linkResult'
import type { WeightPart } from '../load/weightParts'
import { byUnits } from './writing'

/** Names of links, from the building down. */
export const LINK_NAMES: Readonly<Record<LinkCode, string>> = {
  fixing: 'Fixing in the building',
  bracket: 'Arm of the bracket',
  pin: 'What stands out of the wall',
  hook: 'Hook',
  hookShank: 'Shank of the hook',
  connector: 'Between hook and hanger',
  topCord: 'Top cord',
  stick: 'Stick',
  ringCord: 'Cords above the ring',
  ring: 'Ring',
  leg: 'Legs',
  cradle: 'Fit of the cradle',
  seat: 'Seat of the pot',
  gatheringTurn: 'Turn into the gathering knot',
  wrapHoop: 'Wraps holding the legs together',
  gatheringGrip: 'Grip of the gathering knot',
  load: 'What hangs in it',
}

/** What a link is for, in one line. */
export const LINK_ROLES: Readonly<Record<LinkCode, string>> = {
  fixing: 'carries everything into the building',
  bracket: 'holds the hanger away from the wall',
  pin: 'hook or nail bent down by what hangs on it',
  hook: 'carries the ring or the bunched cords',
  hookShank: 'is bent when the pot swings',
  connector: 'S-hook, chain, carabiner or swivel',
  topCord: 'carries the stick from the hook',
  stick: 'carries the legs side by side',
  ringCord: 'carry the level ring from the hook',
  ring: 'carries all the legs',
  leg: 'carry the pot from ring to rim',
  cradle: 'knots round the pot that it cannot slip or walk out of',
  seat: 'keeps the pot from tipping out',
  gatheringTurn: 'strands bent from under the base into the wraps',
  wrapHoop: 'top wrap that stops the legs from splaying',
  gatheringGrip: 'friction that keeps the strands from slipping out of the wraps',
  load: 'pot, mix, water and plant',
}

export const PART_NAMES: Readonly<Record<Part, string>> = {
  whole: 'the whole',
  larksHead: 'lark’s heads at the top',
  bend: 'cords bent over the hook',
  plainStrands: 'plain strands',
  fillers: 'filler cords inside square knots',
  alternatingKnots: 'filler cords inside alternating square knots',
  spiralKnots: 'filler cords inside a spiral',
  tiedStrands: 'strands tied in their length',
  splicedStrands: 'strands spliced in their length',
  gluedStrands: 'strands glued, taped or whipped together',
  potEdge: 'strands over the pot’s sharp edge',
  turn: 'turn into the wraps',
  ultimateRoute: 'from the published breaking strength',
  allowableRoute: 'from the published allowable load',
  rated: 'by its rating',
  wireHinge: 'wire bending open',
  ringCollapse: 'ring of wire giving way',
  testHang: 'by the test hang',
  gripModel: 'by the friction of the wraps',
  dropSlip: 'how far the strands slip',
  overKnots: 'tilted over the cradle’s knots',
  onKnot: 'base on the gathered strands',
  netOpens: 'pot through the net',
  sliding: 'strands free to slide',
  locked: 'strands locked by the cradle’s knots',
  friction: 'strands held by friction',
  shankBending: 'bending at the ceiling',
  weldedChain: 'welded chain by its table',
  openChain: 'open links by their table',
  tiedToStick: 'tied to the stick',
  stickBending: 'bending, from the wood’s strength',
  stickBendingAllowed: 'bending, from what the wood may bear for good',
  stickShear: 'shear along the grain, from the wood’s strength',
  stickShearAllowed: 'shear along the grain, from what the wood may bear for good',
  judgedBending: 'bending, by judgement',
  lowTable: 'by the low figure of a table',
  pulledInPlace: 'by the pull in place',
  pinInWood: 'bending or turning in the wood',
  pinAtFace: 'bending at the wall',
  armHinge: 'arm bending down at the wall',
  frontStrands: 'strands round the front',
  backStrands: 'strands behind the pot',
  panelCords: 'outermost cords of the knotted panel',
  frontNet: 'knots of the net in front',
}

export const SIDE_NAMES: Readonly<Record<Side, string>> = { hanger: 'The hanger', place: 'The place' }

/** Situations a hanger is checked in. */
export const CASE_NAMES: Readonly<Record<CaseCode, string>> = {
  dry: 'at rest, dry',
  watered: 'at rest, just watered',
  flooded: 'at rest, standing in water',
  bump: 'bumped and swinging',
  setDown: 'set down hard',
  gust: 'in a gust of wind',
  tug: 'tugged from below',
  lowerOut: 'a lower pot lifted out',
  neighbourDown: 'one of the row taken down',
  get drop() { return byUnits('dropped 10 mm', 'dropped 3/8 in') },
  strandParted: 'one strand gone',
  legParted: 'one leg gone',
  legPartedSudden: 'one leg gone at once',
}

/** What the weight is made of. */
export const WEIGHT_PART_NAMES: Readonly<Record<WeightPart, string>> = {
  weighed: 'weighed together',
  pot: 'pot',
  layer: 'drainage layer',
  mix: 'potting mix',
  topping: 'top dressing',
  plant: 'plant',
  rain: 'rain on the leaves',
  reservoir: 'water reservoir',
  standingWater: 'water on the mix',
  saucer: 'saucer',
  coverPot: 'cover pot',
  hanger: 'hanger',
}
