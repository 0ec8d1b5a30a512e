import { defineStore } from 'pinia'
import { computed, inject, shallowRef } from 'vue'
import { CHART_MATERIALS, fileOutcomeText, folderProblemText, sizeChartSheet, USUAL_RIMS, type ChartRow, type PageFormat, type Sheet, type SheetKind } from '#core'
import type { FolderFile } from '../../electron/contract'
import type { Platform } from '../platform/platform'
import { todayText } from '../shelf/todayText'
import { PLATFORM } from '../stores/file'
import { texts } from '../texts/texts'
import type { SheetsAsker } from './askSheets'
import { askWorker } from './sheetsStore'

/** Most sheets that are held, printed and written at once; what is left over is made in another go. */
export const MOST_AT_ONCE = 300

/** A hanger that has no sheet among the others, and why. */
export interface LeftOut {
  readonly name: string
  readonly why: string
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
  const isChart = shallowRef(false)
  /** Rows of the chart that is being made. */
  let rows: readonly ChartRow[] = []
  /** A go ends when another begins or it is stopped. */
  let go = 0

  const unable: Readonly<Partial<Record<Sheet['kind'], string>>> = { mustChange: texts.sheets.mustChange, notKnown: texts.sheets.notKnown }

  /** The hanger joins the chart as far as it has come. */
  async function chartWith(file: FolderFile, text: string, format: PageFormat, mine: number): Promise<Sheet | string> {
    const outcome = await ask.row({ text, file: file.name })
    if (outcome?.ok !== true) return outcome?.problem ?? texts.sheets.failed
    // One that was asked in an earlier go is of no use to this one.
    if (go === mine) rows = [...rows, outcome.row]
    return sizeChartSheet({ rims: USUAL_RIMS, materials: CHART_MATERIALS, rows }, { format, today: today() })
  }

  async function sheetOf(file: FolderFile, kind: SheetKind, format: PageFormat, mine: number): Promise<Sheet | string> {
    const read = await platform.readListed(file.token)
    if (!read.ok) return fileOutcomeText({ ...read.problem, deed: 'open' })
    if (isChart.value) return chartWith(file, read.text, format, mine)
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
    while (done.value < files.value.length && Math.max(sheets.value.length, rows.length) < most) {
      const file = files.value[done.value] as FolderFile
      const one = await sheetOf(file, kind, format, mine)
      if (go !== mine) return
      if (typeof one === 'string') leftOut.value = [...leftOut.value, { name: file.name, why: one }]
      else sheets.value = isChart.value ? [one] : [...sheets.value, one]
      done.value += 1
    }
    state.value = 'done'
  }

  /** Looks into the folder and makes the sheets; asks for a folder where none was chosen yet. */
  async function start(kind: SheetKind, format: PageFormat): Promise<void> {
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
  }

  return {
    canChoose: platform.canChooseFolder,
    isChart: computed(() => isChart.value),
    makeChart: (chart: boolean) => {
      if (chart !== isChart.value) forget()
      isChart.value = chart
    },
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
