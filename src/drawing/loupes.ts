import type { CheckResult } from '../check/checkHanger'
import type { PartKey } from '../check/parts'
import type { CaseCode } from '../load/loadCases'
import { boundsOf } from './bounds'
import { frontView } from './frontView'
import type { Bounds, Drawing, Shape } from './shape'

/** What a loupe shows: a part too small to be read in the whole drawing. */
export type LoupeCode = 'fixing' | 'hook' | 'ring' | 'cradle' | 'gathering' | 'stick'

/** A detail of the hanger at its own, larger scale. */
export interface Loupe {
  readonly code: LoupeCode
  /** The part of the load path that it is opened from. */
  readonly link: PartKey
  /** What of the view from the front it magnifies, m. */
  readonly of: Bounds
  /** Its own drawing, m, all at true proportions; with dimension lines of its own. */
  readonly drawing: Drawing
}

const SHOWN: readonly (readonly [LoupeCode, PartKey])[] = [['fixing', 'fixing'], ['hook', 'hook'], ['ring', 'ring'], ['stick', 'stick'], ['cradle', 'seat'], ['gathering', 'gatheringGrip']]

/** Details of the parts this hanger has, from the building down; none where nothing hangs. */
export function loupes(check: CheckResult, code: CaseCode): readonly Loupe[] {
  const front = frontView(check, code)
  return SHOWN.flatMap(([loupe, link]): readonly Loupe[] => {
    const shapes = front.shapes.filter((s) => s.link === link)
    if (shapes.length === 0) return []
    const of = boundsOf(shapes, [], [], 0.004)
    return [{ code: loupe, link, of, drawing: detail(shapes, of) }]
  })
}

const detail = (shapes: readonly Shape[], bounds: Bounds): Drawing => ({ shapes, dimensions: [], anchors: {}, captions: {}, bounds, corner: null, legs: [] })
