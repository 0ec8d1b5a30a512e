import { value, type Value } from './basis'

/** How a quantity differs from one hanger to the next: lognormal, and where the value that the check counts lies in it. */
export interface Spread {
  /** Scatter: standard deviation over mean. */
  readonly scatter: Value
  /** The value counted over the median: 1 where it is the middle one. */
  readonly counted: Value
}

const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)
const practice = (x: number, source: string): Value => value(x, '1', 'common practice', source)
const middle = (): Value => practice(1, 'the value counted is taken as the middle one')
/** The value counted as the one that a share of all falls short of: exp(-z s), s the standard deviation of the logarithm. */
const lowEnd = (scatter: Value, z: number, source: string): Spread =>
  ({ scatter, counted: value(Math.exp(-z * Math.sqrt(Math.log(1 + scatter.value ** 2))), '1', 'computed', source) })
const TENTH = 1.2816
const TWENTIETH = 1.6449

/** Standard deviations from the likely weight to the low and the high one: nine of ten lie between them. */
export const WEIGHT_ENDS: Value = value(1.6449, '1', 'common practice', 'a judgement: the low and high of a weight are taken as what 1 in 20 lies beyond on either side')
/** How far a weight may lie beyond them at most, in the same measure. */
export const WEIGHT_CUT: Value = practice(3, 'a judgement: beyond three standard deviations nobody would take it for the same pot')
/** Scatter of a mass read from a kitchen or luggage scale. */
export const SCALE_SCATTER: Value = memory(0.01, 'household scales show the mass to about 1 % or a step of their display')
/** Standard deviations in what a maker is told as a tolerance, an offset or a margin. */
export const TOLERANCE_SIGMAS: Value = practice(2, 'a tolerance that is kept 19 times in 20')

/** Stiffness of a leg over that at its first load: the low and high end, bedded in, are what 1 in 20 lies beyond. */
export const STRETCH_SCATTER: Value = value(0.34, '1', 'computed', 'stiffness from that of the first load to three times as much, nine of ten between: ln 3 / (2 x 1.645)')

/** A roll of cord against what is counted of its kind, by how its strength is known; of one's own tests see the tests themselves. */
export const ROLL: Readonly<Record<'rated' | 'table' | 'weighed' | 'diameter', Spread>> = {
  rated: { scatter: memory(0.1, 'no published scatter of rated craft cord was found; as the least of EN 1990, annex D'), counted: middle() },
  table: { scatter: memory(0.1, 'tables of rope give a least break, which rope makers set about 20 % below the mean (ASTM D6268 as relayed by a rope vendor); that gain is not counted'), counted: middle() },
  weighed: lowEnd(memory(0.2, 'tenacity of cotton cord 6 to 10 cN/tex of its own mass (fibre-to-yarn and yarn-to-cord figures)'), TENTH, 'the low end of the tenacities is what 1 roll in 10 is taken to fall short of'),
  diameter: lowEnd(memory(0.5, 'published breaks of cotton cord at one diameter differ sixfold, 17 to 103 N/mm2'), TWENTIETH, 'below the weakest published cord: what 1 roll in 20 is taken to fall short of'),
}

/** What knots, bends and turns leave of a strand, against what is counted; never more than all of it. */
export const KNOT: Spread = lowEnd(memory(0.12, 'knots of one kind by several sources: square knot 0.43 to 0.50, bowline 0.60 to 0.75, cord over a pin of its own diameter 0.5 to 0.7; no test gives its scatter'), TENTH, 'the efficiencies counted are low ends: 1 maker in 10 is taken to fall short of them')

/** What ageing takes: scatter of the share lost, from one place to the next. */
export const AGEING_SCATTER: Value = memory(0.3, 'a judgement: cotton and other fabrics outdoors for 120 days lost 29 to 87 % (Int. J. Polym. Mater. 9:45, 1981)')
/** Scatter of the strength lost per tenfold time under load. */
export const DURATION_SCATTER: Value = memory(0.1, 'slopes of several fibres by Meredith’s relation lie within 0.07 to 0.095; of one fibre no scatter was found')
/** Scatter of the time that a pot hangs just watered or standing in water. */
export const WATERING_SCATTER: Value = practice(0.4, 'a judgement: watered twice a week or twice a month')

/** Friction of cord on pot and cord, against the low one counted. */
export const FRICTION: Spread = lowEnd(value(0.25, '1', 'computed', 'cotton on cotton 0.26 sliding to 0.51 at rest (lecture notes on the friction of textile fibres)'), TENTH, 'a low friction is counted: 1 in 10 is taken to be lower')
/** Tension that a maker leaves in the wraps, and what relaxing leaves of it. */
export const WRAPS: Spread = { scatter: practice(0.35, 'a judgement: pulled tight by hand, by one maker and the next; no test of wrapped knots was found'), counted: middle() }

/** Parts that are not of cord, by how their strength was found. */
export const PART_SPREADS = {
  pulledOut: { scatter: memory(0.18, 'screws and nails pulled out of timber, coefficient of variation about 0.18'), counted: value(Math.sqrt(1 + 0.18 ** 2), '1', 'computed', 'the mean is counted; the median of a lognormal is mean / sqrt(1 + v^2)') },
  woodBent: { scatter: memory(0.16, 'USDA Wood Handbook, table 5-6: modulus of rupture'), counted: value(Math.sqrt(1 + 0.16 ** 2), '1', 'computed', 'the mean is counted; the median of a lognormal is mean / sqrt(1 + v^2)') },
  woodSheared: { scatter: memory(0.14, 'USDA Wood Handbook, table 5-6: shear along the grain'), counted: value(Math.sqrt(1 + 0.14 ** 2), '1', 'computed', 'the mean is counted; the median of a lognormal is mean / sqrt(1 + v^2)') },
  metal: lowEnd(memory(0.1, 'yield of mild steel scatters by about 0.07 (JCSS Probabilistic Model Code); of craft wire, with its diameter, 0.10'), TWENTIETH, 'the least usual yield stress is counted: 1 in 20 is taken to be lower'),
  pinInWood: { scatter: memory(0.18, 'bearing and bending of the wood at its edge, as of screws pulled out'), counted: middle() },
  rated: { scatter: memory(0.25, 'rated hooks, plugs and chain of many makers; no published scatter was found'), counted: value(Math.exp(-TWENTIETH * Math.sqrt(Math.log(1 + 0.25 ** 2))) / 2, '1', 'computed', 'chain is proof-loaded to twice its limit and breaks at four times (chain maker’s chart): 1 in 20 is taken to break below twice its rating, the middle one at three times') },
  lowTable: lowEnd(memory(0.3, 'plugs and board fixings of one size differ by maker and wall'), TWENTIETH, 'the low figure of a table: 1 in 20 is taken to bear less'),
  tested: lowEnd(memory(0.2, 'what held a test bears at least that; how much more is not known'), TWENTIETH, 'what it was tested with: 1 in 20 is taken to bear less the next time'),
  other: lowEnd(memory(0.25, 'no figure for this kind; as rated parts'), TWENTIETH, 'what is counted: 1 in 20 is taken to bear less'),
} as const satisfies Readonly<Record<string, Spread>>
export type PartSpread = keyof typeof PART_SPREADS
