import { defineStore } from 'pinia'
import { computed, inject, shallowRef } from 'vue'
import { bestFirst, CHART_MATERIALS, chartHangerName, cutFolderText, EMPTY_DOCUMENT, fileOutcomeText, folderProblemText, potTakenSheet, sizeChartSheet, USUAL_RIMS, type ChartRow, type HangerDocument, type PageFormat, type PotTaken, type Sheet, type SheetKind } from '#core'
import type { FileToken, FolderFile } from '../../electron/contract'
import type { Platform } from '../platform/platform'
import { todayText } from '../shelf/todayText'
import { PLATFORM } from '../stores/file'
import { texts } from '../texts/texts'
import type { SheetsAsker } from './askSheets'
import { askWorker } from './sheetsStore'

/** Most sheets that are held, printed and written at once; what is left over is made in another go. */
export const MOST_AT_ONCE = 300
/** Most that are offered to be opened; the list on paper has more. */
const MOST_TAKERS = 30
const DRAWN_ONE_BY_ONE = 10
const DRAWN_EVERY = 25

/** A hanger that has no sheet among the others, and why. */
export interface LeftOut {
  readonly name: string
  readonly why: string
}

/** Of what a folder's hangers become: a sheet each, one chart, or one list of those that take a pot. */
export type Gathered = 'each' | 'chart' | 'pot'

/** A hanger that takes the pot asked about. */
export interface Taker {
  readonly name: string
  readonly token: FileToken
}

type State = 'idle' | 'listing' | 'noFolder' | 'making' | 'stopped' | 'done'

/**
 * Sheets of all hangers in the maker's folder, one after the other from a worker. Those that cannot be read, and
 * those of which no sheet may be given away, are told by name; the rest become one print or file.
 */
export function createFolderSheets(platform: Platform, ask: SheetsAsker, today: () => string, most: number) {
  const state = shallowRef<State>('idle')
  const problem = shallowRef<string | null>(null)
  const folder = shallowRef('')
  const files = shallowRef<readonly FolderFile[]>([])
  /** Files of the folder that are done with, those of earlier goes included. */
  const done = shallowRef(0)
  const sheets = shallowRef<readonly Sheet[]>([])
  const leftOut = shallowRef<readonly LeftOut[]>([])
  const gathered = shallowRef<Gathered>('each')
  /** Rows of the chart that is being made. */
  let rows: readonly ChartRow[] = []
  const charted = shallowRef(0)
  /** Hangers that were tried with the pot asked about, and the hanger it is of. */
  let tried: readonly (PotTaken & { readonly token: FileToken })[] = []
  let pot: HangerDocument = EMPTY_DOCUMENT
  const takers = shallowRef<readonly Taker[]>([])
  /** How many take it, those that are not offered included. */
  const takenBy = shallowRef(0)
  /** A go ends when another begins or it is stopped. */
  let go = 0

  const unable: Readonly<Partial<Record<Sheet['kind'], string>>> = { mustChange: texts.sheets.mustChange, notKnown: texts.sheets.notKnown }

  /** The hanger joins the chart; what is wrong with it where it cannot. */
  async function chartWith(file: FolderFile, text: string, mine: number): Promise<string | null> {
    const outcome = await ask.row({ text, file: file.name })
    if (outcome?.ok !== true) return outcome?.problem ?? texts.sheets.failed
    // One that was asked in an earlier go is of no use to this one.
    if (go === mine) rows = [...rows, outcome.row]
    return null
  }

  /** The hanger joins those that were tried with the pot. */
  async function takenWith(file: FolderFile, text: string, mine: number): Promise<string | null> {
    const outcome = await ask.pot({ text, file: file.name, pot })
    if (outcome?.ok !== true) return outcome?.problem ?? texts.sheets.failed
    if (go === mine) tried = [...tried, { ...outcome.taken, token: file.token }]
    return null
  }

  /** The chart or the list as far as it has come. */
  function showGathered(format: PageFormat): void {
    const options = { format, today: today() }
    charted.value = rows.length
    if (gathered.value === 'chart') sheets.value = rows.length === 0 ? [] : [sizeChartSheet({ rims: USUAL_RIMS, materials: CHART_MATERIALS, rows }, options)]
    if (gathered.value !== 'pot') return
    sheets.value = tried.length === 0 ? [] : [potTakenSheet(tried, pot, options)]
    const taking = bestFirst(tried).filter(({ takes }) => takes)
    takenBy.value = taking.length
    takers.value = taking.slice(0, MOST_TAKERS).map((one) => ({ name: chartHangerName(one), token: one.token }))
  }

  /** A sheet of its own, null where it joined the others, or why there is none. */
  async function sheetOf(file: FolderFile, kind: SheetKind, format: PageFormat, mine: number): Promise<Sheet | string | null> {
    const read = await platform.readListed(file.token)
    if (!read.ok) return fileOutcomeText({ ...read.problem, deed: 'open' })
    if (gathered.value === 'chart') return chartWith(file, read.text, mine)
    if (gathered.value === 'pot') return takenWith(file, read.text, mine)
    const outcome = await ask.sheet({ source: { text: read.text }, sheet: kind, options: { format, today: today(), draft: false } })
    if (outcome === null) return texts.sheets.failed
    return outcome.ok ? unable[outcome.sheet.kind] ?? outcome.sheet : outcome.problem
  }

  /** Makes sheets of the files that are not done with, until there are as many as may be held at once. */
  async function next(kind: SheetKind, format: PageFormat): Promise<void> {
    go += 1
    const mine = go
    state.value = 'making'
    sheets.value = []
    leftOut.value = []
    rows = []
    tried = []
    takers.value = []
    takenBy.value = 0
    while (done.value < files.value.length && Math.max(sheets.value.length, rows.length) < most) {
      const file = files.value[done.value] as FolderFile
      const one = await sheetOf(file, kind, format, mine)
      if (go !== mine) return
      if (typeof one === 'string') leftOut.value = [...leftOut.value, { name: file.name, why: one }]
      else if (one !== null) sheets.value = [...sheets.value, one]
      done.value += 1
      // Of a long list not every step is drawn: that would take longer than the checks.
      if (done.value <= DRAWN_ONE_BY_ONE || done.value % DRAWN_EVERY === 0) showGathered(format)
    }
    showGathered(format)
    state.value = 'done'
  }

  /** Looks into the folder and makes the sheets; `asked`: whose pot is asked about, where it is. */
  async function start(kind: SheetKind, format: PageFormat, asked: HangerDocument): Promise<void> {
    pot = asked
    go += 1
    const mine = go
    state.value = 'listing'
    problem.value = null
    done.value = 0
    const outcome = await platform.listFolder()
    if (go !== mine) return
    if (!outcome.ok || outcome.listing === null) {
      problem.value = outcome.ok ? null : folderProblemText(outcome.problem)
      state.value = 'noFolder'
      return
    }
    folder.value = outcome.listing.folder.name
    files.value = outcome.listing.files
    if (outcome.listing.isCut) problem.value = cutFolderText(files.value.length)
    await next(kind, format)
  }

  async function choose(): Promise<boolean> {
    const outcome = await platform.chooseFolder()
    problem.value = outcome.ok ? null : folderProblemText(outcome.problem)
    return outcome.ok && outcome.folder !== null
  }

  /** What is being made is the last; what was made is kept. */
  function stop(): void {
    go += 1
    state.value = 'stopped'
  }
  function forget(): void {
    go += 1
    state.value = 'idle'
    sheets.value = []
    leftOut.value = []
    takers.value = []
  }

  return {
    canChoose: platform.canChooseFolder,
    gathered: computed(() => gathered.value),
    gather: (how: Gathered) => {
      if (how !== gathered.value) forget()
      gathered.value = how
    },
    takers: computed(() => takers.value), taking: computed(() => takenBy.value), charted: computed(() => charted.value),
    state: computed(() => state.value), problem: computed(() => problem.value), folder: computed(() => folder.value),
    all: computed(() => files.value.length), done: computed(() => done.value),
    sheets: computed(() => sheets.value), leftOut: computed(() => leftOut.value),
    start, next, stop, choose, forget,
  }
}

export const useFolderSheets = defineStore('folderSheets', () => {
  const platform = inject(PLATFORM)
  if (platform === undefined) throw new Error('The app was started without a platform.')
  return createFolderSheets(platform, askWorker, () => todayText(new Date()), MOST_AT_ONCE)
})
