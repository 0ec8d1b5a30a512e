import type { Basis } from '../catalogue/basis'
import type { UnitSymbol } from '../quantity/units'
import type { ChoiceField, DateField, Default, FieldKind, OpenField, QuantityField, ScrewField, TextField } from './field'

/** How much a field matters: asked later, among the first, without which nothing certain can be said, or never mentioned. */
export const LATER = { first: false, essential: false, tacit: false } as const
export const FIRST = { first: true, essential: false, tacit: false } as const
export const ESSENTIAL = { first: true, essential: true, tacit: false } as const
export const TACIT = { first: false, essential: false, tacit: true } as const
type Importance = { readonly first: boolean; readonly essential: boolean; readonly tacit: boolean }

/** A default that is the same for every hanger; one that follows another answer. */
export const is = (value: number, unit: UnitSymbol | '', basis: Basis, source: string): Default => ({ from: () => value, unit, basis, source })
export const times = (factor: number, path: string, unit: UnitSymbol | '', source: string): Default =>
  ({ from: (earlier) => factor * earlier(path), unit, basis: 'common practice', source })

/** Fields by their kind. */
export const quantity = <K extends FieldKind>(kind: K, min: number, max: number, standard: Default, importance: Importance): QuantityField<K> =>
  ({ type: 'quantity', kind, min, max, default: standard, ...importance })
export const open = <K extends FieldKind>(kind: K, min: number, max: number, importance: Importance): OpenField<K> =>
  ({ type: 'open', kind, min, max, ...importance })
export const choice = <const C extends string>(choices: readonly C[], standard: NoInfer<C>, source: string, importance: Importance): ChoiceField<C> =>
  ({ type: 'choice', choices, default: { choice: standard, basis: 'common practice', source }, ...importance })

export const text = (max: number): TextField => ({ type: 'text', max, ...LATER })
export const day: DateField = { type: 'date', ...LATER }
export const screw: ScrewField = { type: 'screw', ...LATER }

export const mm = 0.001
export const litre = 0.001
export const SAFE = 'the safer answer until it is known'
