import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import { mappedDocument, resolveDocument, lineFields, type Axis, type FieldPath, type HangerDocument, type LinesPoint, type MapCell, type MapCode, type MapScope, type MapStep, type NoMap } from '#core'
import { startJob, type StartJob } from '../jobs/startJob'
import { useDocument } from '../stores/document'
import type { MapGrid } from './mapLines'

/** After the last change of the hanger, ms. */
const QUIET = 400

type State = 'idle' | 'asking' | 'done' | 'calledOff' | 'failed'

/** A grid as far as it has come. */
export interface Drawn {
  readonly along: Axis
  readonly up: Axis
  readonly grid: MapGrid
}

/** What is looked at: a map, or all parts along one input. */
export type Look = MapCode | 'lines'

/** Maps of the hanger at hand from the worker, drawn anew when it changes while they are looked at. What was drawn stays until the new one has come. */
export function createMaps(start: StartJob, document: () => HangerDocument, replace: (next: HangerDocument) => void) {
  const look = shallowRef<Look>('cordByPot')
  const scope = shallowRef<MapScope>('hanger')
  const field = shallowRef<FieldPath | null>(null)
  const state = shallowRef<State>('idle')
  const why = shallowRef<NoMap | null>(null)
  const asked = shallowRef<HangerDocument | null>(null)
  /** Of which hanger what is shown is: while it is drawn anew that is still the one before. */
  const shownOf = shallowRef<HangerDocument | null>(null)
  const drawn = shallowRef<Drawn | null>(null)
  const present = shallowRef<MapCell | null>(null)
  const points = shallowRef<readonly LinesPoint[]>([])
  const rowsDone = shallowRef(0)
  const tried = shallowRef<{ readonly before: HangerDocument, readonly after: HangerDocument } | null>(null)
  let callOffJob: (() => void) | null = null
  let timer: ReturnType<typeof setTimeout> | undefined
  let isOpen = false
  /** The grid that is being filled; it takes the place of what is shown once it has a row more than that, or is whole. */
  let filling: Drawn | null = null

  const fields = computed<readonly FieldPath[]>(() => {
    const resolved = resolveDocument(document())
    return resolved.ok ? lineFields(resolved.hanger.answers) : []
  })
  const fieldAsked = computed(() => (field.value !== null && fields.value.includes(field.value) ? field.value : fields.value.find((path) => path === 'make.totalLength' || path === 'make.legLength') ?? fields.value[0] ?? null))

  function takeStep(step: MapStep): void {
    if (step.kind === 'present') present.value = step.cell
    else if (step.kind === 'grid') filling = { along: step.along, up: step.up, grid: [] }
    else if (filling !== null) {
      const grid = [...filling.grid]
      grid[step.row] = step.cells
      filling = { ...filling, grid }
      rowsDone.value += 1
      const isWhole = grid.length === filling.up.values.length && grid.every((row) => row !== undefined)
      // A finer grid replaces a coarse one when it is whole; the first is shown row by row.
      if (isWhole || drawn.value === null || drawn.value.along.values.length === filling.along.values.length) {
        drawn.value = filling
        shownOf.value = asked.value
      }
    }
  }

  function ended(how: 'answered' | 'calledOff' | 'failed', reason: NoMap | null): void {
    callOffJob = null
    state.value = how === 'answered' ? 'done' : how
    why.value = reason
    if (reason !== null) forget()
  }
  function forget(): void {
    shownOf.value = null
    drawn.value = null
    points.value = []
    present.value = null
  }

  function begin(): void {
    callOffJob?.()
    clearTimeout(timer)
    const mine = document()
    asked.value = mine
    state.value = 'asking'
    why.value = null
    rowsDone.value = 0
    filling = null
    if (look.value === 'lines') {
      if (fieldAsked.value === null) return ended('answered', resolveDocument(mine).ok ? 'notConcerned' : 'unread')
      const fresh: LinesPoint[] = []
      const job = start('inputLines', { document: mine, field: fieldAsked.value }, (steps) => { fresh.push(...steps) })
      callOffJob = job.callOff
      void job.ended.then((end) => {
        if (asked.value !== mine || callOffJob !== job.callOff) return
        points.value = fresh
        shownOf.value = mine
        ended(end.how, end.how === 'answered' && !end.answer.ok ? end.answer.why : null)
      })
      return
    }
    const job = start('utilisationMap', { document: mine, map: look.value, scope: scope.value }, (steps) => { for (const step of steps) takeStep(step) })
    callOffJob = job.callOff
    void job.ended.then((end) => {
      if (callOffJob === job.callOff) ended(end.how, end.how === 'answered' && !end.answer.ok ? end.answer.why : null)
    })
  }

  /** Another map, part or field: what was drawn is of something else. */
  function choose(change: () => void): void {
    change()
    forget()
    begin()
  }

  function open(): void {
    isOpen = true
    if (asked.value !== document() || state.value !== 'done') begin()
  }
  function close(): void {
    isOpen = false
    clearTimeout(timer)
    callOffJob?.()
  }
  watch(document, () => {
    if (!isOpen) return
    clearTimeout(timer)
    timer = setTimeout(begin, QUIET)
  })

  /** Lays a point of the map over the hanger, as one step. */
  function tryOn(x: number, y: number): boolean {
    if (look.value === 'lines' || asked.value === null || asked.value !== document() || shownOf.value !== asked.value) return false
    const after = mappedDocument({ document: asked.value, map: look.value }, x, y)
    if (after === null) return false
    tried.value = { before: asked.value, after }
    replace(after)
    return true
  }
  function takeBack(): void {
    if (tried.value !== null && tried.value.after === document()) replace(tried.value.before)
    tried.value = null
  }

  return {
    look: computed(() => look.value), scope: computed(() => scope.value), field: fieldAsked, fields,
    state: computed(() => state.value), why: computed(() => why.value), drawn: computed(() => drawn.value), present: computed(() => present.value),
    points: computed(() => points.value), rowsDone: computed(() => rowsDone.value),
    isOld: computed(() => shownOf.value !== null && shownOf.value !== document()),
    isTried: computed(() => tried.value !== null && tried.value.after === document()),
    open, close, begin, tryOn, takeBack,
    callOff: () => callOffJob?.(),
    chooseLook: (next: Look) => choose(() => { look.value = next }),
    chooseScope: (next: MapScope) => choose(() => { scope.value = next }),
    chooseField: (next: FieldPath) => choose(() => { field.value = next }),
  }
}

export const useMaps = defineStore('maps', () => {
  const source = useDocument()
  return createMaps(startJob, () => source.document, source.replace)
})
