import type { CheckResult } from '../check/checkHanger'
import type { PartKey } from '../check/parts'
import type { CaseCode } from '../load/loadCases'
import { cradleDetail } from './loupe/cradle'
import { drawingOf, type Detail, type LoupeCode } from './loupe/detail'
import { fixingDetail } from './loupe/fixing'
import { gatheringDetail } from './loupe/gathering'
import { hookDetail } from './loupe/hook'
import { ringDetail } from './loupe/ring'
import { stickDetail } from './loupe/stick'
import { sceneOf } from './scene'
import type { Bounds, Drawing, Shape } from './shape'
import { fromFront, keyOf, lowerKeyed, lowerScenes } from './tiers'

export type { LoupeCode }

/** A detail of the hanger at its own, larger scale. */
export interface Loupe {
  readonly code: LoupeCode
  /** The part of the load path that it is opened from; of a lower pot its own. */
  readonly link: PartKey
  /** What of the view from the front it magnifies, m; of a hook or fixing in a wall the detail itself is seen from the side. */
  readonly of: Bounds
  /** Its own drawing, m, all at true proportions; with dimension lines of its own. */
  readonly drawing: Drawing
}

/** Details of the parts this hanger has, from the building down, then those of lower pots; none where nothing hangs. */
export function loupes(check: CheckResult, code: CaseCode): readonly Loupe[] {
  const scene = sceneOf(check, code)
  if (scene === null) return []
  const first = [fixingDetail(scene), hookDetail(scene), stickDetail(scene), ringDetail(scene), cradleDetail(scene), gatheringDetail(scene)]
  const lower = lowerScenes(scene, fromFront).flatMap((under) => [cradleDetail(under.scene), gatheringDetail(under.scene)].flatMap((detail): readonly Loupe[] => {
    if (detail === null) return []
    const [x, z] = under.by
    const { left, right, bottom, top } = detail.of
    const keyed: Detail = { ...detail, shapes: detail.shapes.map((shape): Shape => lowerKeyed(shape, under.tier)) }
    return [{ code: detail.code, link: keyOf(detail.link, under.tier), of: { left: left + x, right: right + x, bottom: bottom + z, top: top + z }, drawing: drawingOf(keyed) }]
  }))
  return [...first.flatMap((detail): readonly Loupe[] => (detail === null ? [] : [{ code: detail.code, link: detail.link, of: detail.of, drawing: drawingOf(detail) }])), ...lower]
}
