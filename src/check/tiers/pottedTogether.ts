import type { Component } from '../../load/component'
import type { PottedState } from '../../load/pottedMass'
import { addMass, STATES, type State } from '../../load/states'
import type { Solved } from '../solved'

/** What all pots of a hanger weigh together, part by part; of a single one that of itself. */
export function pottedTogether({ potted, tiers }: Pick<Solved, 'potted' | 'tiers'>): Solved['potted'] {
  if (tiers.length === 0) return potted
  return Object.fromEntries(STATES.map((state) => [state, tiers.map(({ alone }) => alone.potted[state]).reduce(together)])) as Record<State, PottedState>
}

/** Centres of gravity stay those of the upper one, for two pots have no common place. */
function together(upper: PottedState, lower: PottedState): PottedState {
  const parts = new Set([...upper.components, ...lower.components].map(({ part }) => part))
  const components = [...parts].map((part) => [...upper.components, ...lower.components].filter((c) => c.part === part).reduce((a, b): Component => ({ ...a, mass: addMass(a.mass, b.mass), water: addMass(a.water, b.water) })))
  return { ...upper, mass: addMass(upper.mass, lower.mass), components, weighed: upper.weighed && lower.weighed, tooLight: upper.tooLight || lower.tooLight, standing: upper.standing || lower.standing }
}
