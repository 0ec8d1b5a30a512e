import { DRAWING } from './en/drawing'
import { GUIDES } from './en/guides'
import { HABITS } from './en/habits'

const EN = {
  drawing: DRAWING,
  guides: GUIDES,
  habits: HABITS,
} as const

/** Another language gives the same keys. */
export type Texts = typeof EN

/**
 * The window's one catalogue of messages, by area: a text, or a function of the values it tells. Sentences
 * about a hanger are the core's own, in `src/words`.
 */
export const texts: Texts = EN
