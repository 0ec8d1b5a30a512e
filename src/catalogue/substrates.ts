/**
 * What a hook, nail or bracket may be fixed into, each with the way it is judged: `byTimber` from the
 * published formulas of screws, lags and nails in a joist, stud or beam; `byPacket` from the rating on the fixing's packet for
 * this very substrate (`masonry`: brick, block or concrete, not known which), or else the low figure of a table, which never does more than just hold;
 * `byBoard` the same and no ceiling; `tiedRound` nothing is fixed into it, the cord or a strap goes
 * round it; `unknown` until the questions are answered.
 */
export const SUBSTRATE_ROUTES = {
  timber: 'byTimber',
  masonry: 'byPacket',
  plasterboard: 'byBoard',
  plasterboardOnSteelStud: 'byBoard',
  solidBrick: 'byPacket',
  perforatedBrick: 'byPacket',
  denseBlock: 'byPacket',
  aeratedBlock: 'byPacket',
  concrete: 'byPacket',
  steelBeam: 'tiedRound',
  rail: 'tiedRound',
  branch: 'tiedRound',
  unknown: 'unknown',
} as const satisfies Readonly<Record<string, string>>

export type Substrate = keyof typeof SUBSTRATE_ROUTES
export const SUBSTRATES = Object.keys(SUBSTRATE_ROUTES) as readonly Substrate[]
export type SubstrateRoute = (typeof SUBSTRATE_ROUTES)[Substrate]

/** Questions that settle an unknown wall or ceiling, in the order they are asked. */
export const SETTLING_QUESTIONS = ['soundWhenKnocked', 'screwsShowInALine', 'dustOfTheDrill', 'houseAge', 'whatIsAbove'] as const
export type SettlingQuestion = (typeof SETTLING_QUESTIONS)[number]
