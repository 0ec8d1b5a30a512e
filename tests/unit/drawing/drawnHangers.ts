import { checkHanger, DEMOS, parseDocument, resolveDocument, type CheckResult, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

/** Builds that are drawn differently: few and many legs, one strand, each way of knotting, each ceiling, nothing known, nothing hanging. */
const PATCHES: readonly (readonly [string, Patch])[] = [
  ['ordinary', ORDINARY],
  ['three plain legs of one strand, bunched', { ...ORDINARY, 'make.legs': '3', 'make.strands': '1', 'make.build': 'plain', 'make.top': 'bunched', 'cradle.kind': 'open' }],
  ['twelve spiral legs into masonry', { ...ORDINARY, 'make.legs': '12', 'make.build': 'spiral', 'place.substrate': 'masonry', 'hook.kind': 'open' }],
  ['seven alternating legs by their length, plasterboard', { ...ORDINARY, 'make.legs': '7', 'make.build': 'alternating', 'make.legLength': '52 cm', 'place.substrate': 'plasterboard' }],
  ['cradle under the base, flooded', { ...ORDINARY, 'cradle.first': '3 cm', 'pot.drainage': 'none', 'weighed.state': 'watered' }],
  ['base wider than rim, no plant, no fringe', { ...ORDINARY, 'pot.rim': '15 cm', 'pot.base': '19 cm', 'plant.height': '0 mm', 'make.fringe': '0 mm' }],
  ['nothing said', {}],
  ['legs too short', { ...ORDINARY, 'make.totalLength': '55 cm' }],
]

const demos = DEMOS.map(({ file, text }): readonly [string, CheckResult] => {
  const parsed = parseDocument(text)
  if (!parsed.ok) throw new Error(file)
  const read = resolveDocument(parsed.document)
  if (!read.ok) throw new Error(file)
  return [file, checkHanger(read.hanger)]
})

export const DRAWN: readonly (readonly [string, CheckResult])[] = [...demos, ...PATCHES.map(([name, patch]) => [name, checkOf(patch)] as const)]
