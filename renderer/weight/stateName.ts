import { FIELD_WORDS, type State } from '#core'

/** A state of the pot, as the maker is asked for it. */
export const stateName = (state: State): string => FIELD_WORDS['weighed.state'].choices[state] ?? state
