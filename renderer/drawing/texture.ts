import type { Shape } from '#core'

/** Fillings that are patterns. */
export type Texture = Exclude<Extract<Shape, { readonly kind: 'area' }>['texture'], 'open' | 'paper'>
