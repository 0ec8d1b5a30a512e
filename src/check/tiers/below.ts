import type { Answers } from '../../hanger/fields'
import { addMass, NO_MASS, STATES, type MassRange, type State } from '../../load/states'
import type { PottedState } from '../../load/pottedMass'

type Masses = Readonly<Record<State, MassRange>>

/** What hangs under a pot, from its gathering knot or beside it from the top: pots with their cords, kg. */
export interface Below {
  readonly potted: Masses
  readonly hanger: Masses
  /** Answers of each of those pots, for the wind on them. */
  readonly answers: readonly Answers[]
}

const NONE: Masses = { dry: NO_MASS, watered: NO_MASS, flooded: NO_MASS }

/** A hanger with nothing under its pot. */
export const NOTHING_BELOW: Below = { potted: NONE, hanger: NONE, answers: [] }

const added = (a: Masses, b: Masses): Masses => Object.fromEntries(STATES.map((state) => [state, addMass(a[state], b[state])])) as Record<State, MassRange>

/** With one more pot above those. */
export const withPot = (below: Below, answers: Answers, potted: Readonly<Record<State, PottedState>>, hanger: Masses): Below => ({
  potted: added(below.potted, { dry: potted.dry.mass, watered: potted.watered.mass, flooded: potted.flooded.mass }),
  hanger: added(below.hanger, hanger),
  answers: [answers, ...below.answers],
})
