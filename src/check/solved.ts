import type { Hanger } from '../hanger/hanger'
import type { CaseCode, LoadCase } from '../load/loadCases'
import type { PottedState } from '../load/pottedMass'
import type { MassRange, State } from '../load/states'
import type { SlingResult } from '../statics/sling/result'
import type { CordStrengths } from './cordStrength'
import type { HangerGeometry } from './geometry'
import type { InGust } from './inGust'
import type { Term } from './linkResult'
import type { SlingPlan } from './slingPlan'
import type { DrawnDown } from './tiers/drawnDown'

/** How one case loads the hanger. */
export interface CaseLoad {
  readonly case: LoadCase
  /** Multiplier on the weight: swing, jolt, drop. */
  readonly factor: number
  readonly factorSource: string
  /** Lines by which it came about, the last of them the multiplier itself, by the symbol phi. */
  readonly factorTerms: readonly Term[]
  /** Mass that hangs, with the high values, kg: potted plant and hanger, those of lower pots among them. */
  readonly potted: number
  readonly hanger: number
  /** What of it hangs below the pot, kg; and the least that surely does. */
  readonly below: number
  readonly belowLeast: number
  /** Height of the common centre of gravity above the pot's base, m, what hangs from its gathering knot counted where it pulls. */
  readonly centre: number
  /** Force at the hook, N: (potted + hanger) x g x factor. */
  readonly weight: number
  /** Largest side pull that goes with it, N: at the end of a swing, from wind or from somebody who tugs; what it is of the weight at rest. */
  readonly side: number
  readonly sideShare: number
  readonly sideSource: string
  /** Pull downwards at that moment, N. */
  readonly sideDown: number
}

/** What the sling does in one case. */
export interface CaseSling {
  /** Solved as drawn; the answer shown. */
  readonly drawn: SlingResult
  /** Worst tension of any leg over all solves and not below the standards' floor, N; null if a solve failed. */
  readonly tension: number | null
  /** Worst solved tension before the floor, N. */
  readonly solvedTension: number | null
  readonly floor: number
  /** The same of each leg, with and before its floor; 0 of one that is gone. */
  readonly each: readonly number[] | null
  readonly solvedEach: readonly number[] | null
  /** The leg that was taken away, from 0. */
  readonly gone: number | null
  /** Sum of the legs' tensions as drawn, N. */
  readonly sum: number | null
  /** Legs slack or nearly slack in some solve within the length tolerance. */
  readonly nearlySlack: number
  /** The first outcome among the solves that is not a stable rest. */
  readonly trouble: 'none' | 'unstable' | 'lost support' | 'not converged'
}

/** One of several pots one under another, solved as a hanger of its own. */
export interface Tier {
  /** From the top, from 1. */
  readonly tier: number
  /** With what hangs from its gathering knot. */
  readonly hung: Solved
  /** With the pots below lifted out; the same for the lowest. */
  readonly alone: Solved
}

/** Who bears what in one way a wall planter may be tied. */
export interface PanelShare {
  /** By how much the strands in front are longer than drawn, m; negative: shorter. */
  readonly longer: number
  /** Shares of the weight that the strands in front and those behind bear; null where there is no rest. */
  readonly front: number | null
  readonly behind: number | null
  /** Push of the wall on the pot's widest level and on its base edge, over the weight. */
  readonly wallAtRim: number | null
  readonly wallAtBase: number | null
}

/** What a panel's strands share, and what is left where one group of them is gone. */
export interface PanelSolved {
  /** Just watered: as drawn, and with the strands in front longer and shorter by the tolerance. */
  readonly shares: readonly PanelShare[]
  /** Without the strands of one corner, and without one half of those behind. */
  readonly without: Readonly<Record<'front' | 'back', CaseSling>>
}

/** Loads, geometry and slings of a hanger: the first stage of a check. */
export interface Solved {
  readonly hanger: Hanger
  readonly potted: Readonly<Record<State, PottedState>>
  /** The hanger itself, kg. */
  readonly hangerMass: Readonly<Record<State, MassRange>>
  /** What is known of the cord’s strength. */
  readonly cord: CordStrengths
  readonly geometry: HangerGeometry
  readonly loads: Readonly<Record<CaseCode, CaseLoad>>
  /** How the pot hangs in its legs; null where they do not reach round it. */
  readonly plan: SlingPlan | null
  /** The cases that concern this hanger whole, nothing of it parted. */
  readonly wholeCases: readonly CaseCode[]
  /** What the gust does that it is checked for; null under a roof. */
  readonly gust: InGust | null
  /** Null where the strands do not reach round the pot. */
  readonly slings: Readonly<Record<CaseCode, CaseSling>> | null
  /** What a panel's strands share; null of any other hanger, or where they cannot go so. */
  readonly panel: PanelSolved | null
  /** Whether the pinned sling stays upright with legs half as stiff and the centre of gravity 20 mm higher; null if not solved. */
  readonly pinnedMargin: boolean | null
  /** The gathering knot where another pot hangs from it; null elsewhere. */
  readonly drawnKnot: DrawnDown | null
  /** Pots one under another, from the top; none where there is only one. Loads of the whole are then those of all of them. */
  readonly tiers: readonly Tier[]
}
