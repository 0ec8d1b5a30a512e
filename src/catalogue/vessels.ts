import { range, value, type Range, type Value } from './basis'
import type { PotMaterialKind } from './potMaterials'

/** Depth of a saucer that was not measured, m. */
export const SAUCER_DEPTH: Range = range(0.015, 0.02, 0.03, 'm', 'common practice', 'saucers of 15 to 25 cm are 2 to 2.5 cm deep')

/** Width of a saucer that was not measured, over that of the pot at its rim. */
export const SAUCER_OVER_RIM: Value = value(1, '1', 'common practice', 'a saucer is sold as wide as its pot')

/** Width inside a cover pot that was not measured, over the widest part of the pot. */
export const COVER_OVER_POT: Value = value(1.1, '1', 'common practice', 'a pot is lifted out with two fingers beside it')

/** What a cover pot that was not weighed is made of, and the lightest it may be. */
export const COVER_MATERIAL: { readonly lightest: PotMaterialKind; readonly usual: PotMaterialKind } = { lightest: 'plastic', usual: 'stoneware' }

/** Water left standing in a cover pot after watering, at most, m. */
export const COVER_WATER: Value = value(0.02, 'm', 'common practice', 'two fingers of water are poured away')
