import type { Basis } from '../catalogue/basis'
import type { UnitSymbol } from '../quantity/units'
import type { CubicMetres, Kilograms, KilogramsPerCubicMetre, KilogramsPerMetre, Metres, Newtons, Seconds } from '../quantity/si'

/** SI type of a quantity field by its kind. */
export interface KindTypes {
  length: Metres
  mass: Kilograms
  force: Newtons
  linearDensity: KilogramsPerMetre
  time: Seconds
  count: number
  volume: CubicMetres
  density: KilogramsPerCubicMetre
  ratio: number
  /** A plain number of something that has no unit here, such as money. */
  number: number
}
export type FieldKind = keyof KindTypes

/** A default: a number in SI, or a rule over fields that stand earlier in the table. */
export interface Default {
  readonly from: (earlier: (path: string) => number) => number
  /** Unit the default is shown in. */
  readonly unit: UnitSymbol | ''
  readonly basis: Basis
  readonly source: string
}

interface Common {
  /** Its default is what nobody mentions (no saucer, one fixing): taken and shown in its place, but not listed among what was assumed. */
  readonly tacit: boolean
  /** One of the first questions the maker is asked. */
  readonly first: boolean
  /** Without an answer nothing certain can be said: the load path gets a link "not enough known". */
  readonly essential: boolean
}

/** A quantity that always has a value: given, or assumed by its default. */
export interface QuantityField<K extends FieldKind> extends Common {
  readonly type: 'quantity'
  readonly kind: K
  readonly min: number
  readonly max: number
  readonly default: Default
}

/** A quantity that may stay unknown: null. */
export interface OpenField<K extends FieldKind> extends Common {
  readonly type: 'open'
  readonly kind: K
  readonly min: number
  readonly max: number
}

/** One of a closed list of words. */
export interface ChoiceField<C extends string> extends Common {
  readonly type: 'choice'
  readonly choices: readonly C[]
  readonly default: { readonly choice: C; readonly basis: Basis; readonly source: string }
}

/** Free words that decide nothing by themselves; null where there are none. `max` in characters. */
export interface TextField extends Common {
  readonly type: 'text'
  readonly max: number
}

/** A calendar day as YYYY-MM-DD; null where it is not said. */
export interface DateField extends Common {
  readonly type: 'date'
}

/** A screw as its packet names it, kept as typed; null where it is not said. */
export interface ScrewField extends Common {
  readonly type: 'screw'
}

export type Field = QuantityField<FieldKind> | OpenField<FieldKind> | ChoiceField<string> | TextField | DateField | ScrewField

/** The SI value of a field in a read hanger. */
export type FieldValue<F> =
  F extends QuantityField<infer K> ? KindTypes[K]
  : F extends OpenField<infer K> ? KindTypes[K] | null
  : F extends ChoiceField<infer C> ? C
  : F extends TextField | DateField | ScrewField ? string | null
  : never
