import { computed, type ComputedRef } from 'vue'
import { linkName, loupes, partOf, type CaseCode, type CheckResult, type Dimension, type Drawing, type LinkCode, type PartKey } from '#core'
import { boxRound, movedBox, scaleIn, shapedTo, type Box, type Frame } from './box'
import { loupeOf } from './loupeOf'
import { noteBoxes } from './notes'
import { placeViews, type PlacedView, type Placement } from './placement'
import { pointAt, type Pointing } from './pointing'
import { legPulls } from './sentences'
import { CHARACTERS, coveredBy, numberBox, type Covered } from './strokesOf'
import { at } from './svgPoint'
import { VIEWS, viewsShown, type ViewChoice, type ViewCode } from './views'

/** One view laid on the sheet. */
export interface DrawnPlace extends PlacedView {
  readonly drawing: Drawing
}

/** What is drawn and on what. */
export interface Sitting {
  readonly check: CheckResult
  readonly situation: CaseCode
  readonly choice: ViewChoice
  readonly selected: PartKey | null
  /** px */
  readonly frame: Frame
  /** What stands on a dimension line. */
  readonly textOf: (dimension: Dimension) => string
}

/** Height of the letters, px: smaller where the drawing is small, never too small to read. */
const LETTERS = { least: 12, most: 16, inDrawing: 46 }

/** Parts that are ringed when chosen. */
const SMALL: ReadonlySet<LinkCode> = new Set(['fixing', 'hook', 'hookShank', 'ringCord', 'ring', 'gatheringTurn', 'wrapHoop', 'gatheringGrip', 'pin', 'connector'])

/** The picture of a hanger as it lies on the sheet; only views that are shown are drawn, each again only when the hanger or the situation is another. */
export function usePicture(sitting: () => Sitting) {
  const check = computed(() => sitting().check)
  const situation = computed(() => sitting().situation)
  const selected = computed(() => sitting().selected)
  const frame = computed(() => sitting().frame)
  const draw = (code: ViewCode): ComputedRef<Drawing> => computed(() => VIEWS[code](check.value, situation.value))
  const drawn: Readonly<Record<ViewCode, ComputedRef<Drawing>>> = { front: draw('front'), side: draw('side'), above: draw('above') }

  // As one text, so that a sheet of another size with the same views draws nothing anew.
  const codes = computed(() => viewsShown(sitting().choice, frame.value).join(' '))
  const placed = computed(() => placeViews<DrawnPlace>((codes.value.split(' ') as ViewCode[]).map((code) => ({ code, drawing: drawn[code].value })), frame.value))
  const pulls = computed(() => legPulls(check.value, situation.value))
  const lettering = computed(() => {
    const { top, bottom } = placed.value.views[0]?.drawing.bounds ?? { top: 1, bottom: 0 }
    return Math.min(LETTERS.most, Math.max(LETTERS.least, ((top - bottom) * 1000 * scaleIn(placed.value.box, frame.value)) / LETTERS.inDrawing))
  })
  const placement = computed(() => ({ views: placed.value.views, box: withNumbers(placed.value, lettering.value, frame.value) }))

  const covered = computed((): Covered => {
    const letter = (0.92 * lettering.value) / scaleIn(placement.value.box, frame.value)
    const all = placement.value.views.map(({ drawing, dx, dy }) => {
      const { strokes, boxes } = coveredBy(drawing, letter)
      return {
        strokes: strokes.map((points) => points.map(({ x, y }) => ({ x: x + dx, y: y + dy }))),
        boxes: [...boxes, ...noteBoxes(drawing, pulls.value, letter)].map((box) => movedBox(box, dx, dy)),
      }
    })
    return { strokes: all.flatMap(({ strokes }) => strokes), boxes: all.flatMap(({ boxes }) => boxes) }
  })

  const characters = (dimension: Dimension): number => sitting().textOf(dimension).length
  const details = computed(() => loupes(check.value, situation.value))
  const pointing = computed((): Pointing | null => {
    const first = placement.value.views[0]
    const anchor = first === undefined || selected.value === null ? undefined : first.drawing.anchors[selected.value]
    if (first === undefined || selected.value === null || anchor === undefined) return null
    const { x, y } = at(anchor)
    const { link, tier } = partOf(selected.value)
    return pointAt({
      box: placement.value.box, frame: frame.value, covered: covered.value, name: linkName(link, tier), letter: 0.92 * lettering.value, isSmall: SMALL.has(link),
      part: { x: x + first.dx, y: y + first.dy }, moved: first.dx, characters, loupe: first.code === 'front' ? loupeOf(details.value, selected.value) : null,
    })
  })

  const box = computed(() => pointing.value?.box ?? placement.value.box)
  return {
    codes, placement, pulls, lettering, pointing,
    /** All that is drawn, without the paper round it, mm. */
    extent: computed(() => pointing.value?.extent ?? placement.value.box),
    /** The picture in the shape of the sheet, mm. */
    whole: computed(() => shapedTo(box.value, frame.value)),
    /** px for each millimetre when all is seen. */
    scale: computed(() => scaleIn(box.value, frame.value)),
  }
}

/** A small drawing is widened, so that its numbers, which are no smaller for that, stay on the sheet. */
function withNumbers({ box, views }: Placement<DrawnPlace>, lettering: number, frame: Frame): Box {
  const letter = (0.92 * lettering) / scaleIn(box, frame)
  return boxRound([box, ...views.flatMap(({ drawing, dx, dy }) => drawing.dimensions.map((dimension) => movedBox(numberBox(dimension, CHARACTERS, letter), dx, dy)))])
}

/** The loupe's own scale: mm of the picture for each mm of the detail, and how it is moved. */
export function loupeScale({ loupe }: Pointing): { readonly scale: number, readonly x: number, readonly y: number } | null {
  if (loupe === null) return null
  const { frame, shown } = loupe
  const scale = frame.width / shown.width
  return { scale, x: frame.x - shown.x * scale, y: frame.y - shown.y * scale }
}
