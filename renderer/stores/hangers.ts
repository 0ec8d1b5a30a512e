import { defineStore } from 'pinia'
import { computed, inject, shallowReactive, shallowRef } from 'vue'
import { cutFolderText, fileOutcomeText, folderProblemText, UNCHECKED_TEXT, writingHabits } from '#core'
import { heard } from '../faults/heard'
import type { FileProblem, FolderFile, FolderListing } from '../../electron/contract'
import { unreadCard, type HangerCard } from '../hangers/hangerCard'
import type { HangerQuestion, HangerReply } from '../hangers/messages'
import type { Platform } from '../platform/platform'
import { PLATFORM } from './file'

/** The part of a worker that the store uses. */
export interface HangersWorker {
  postMessage(question: HangerQuestion): void
  onmessage: ((event: MessageEvent<HangerReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** A file written anew is another. */
const keyOf = ({ token, size, modified }: FolderFile): string => `${token} ${size} ${modified}`

/**
 * The maker's own hangers: the files of a folder of their choice, checked in a worker one after the other
 * while they are looked at; all verdicts first, then the heaviest pots, which take longer.
 */
export function createHangers(platform: Platform, start: () => HangersWorker) {
  const listing = shallowRef<FolderListing | null>(null)
  const state = shallowRef<'unseen' | 'listing' | 'none' | 'listed' | 'failed'>('unseen')
  const problem = shallowRef<string | null>(null)
  const cards = shallowReactive(new Map<string, HangerCard>())
  const heaviest = shallowReactive(new Map<string, number | null>())
  const waiting = new Map<number, (reply: HangerReply | null) => void>()
  let revision = 0
  /** Counts rounds of checks; a round ends when another begins or nobody looks any more. */
  let round = 0
  let worker: HangersWorker | null = null

  function started(): HangersWorker {
    const one = start()
    const hand = (number: number, reply: HangerReply | null): void => {
      waiting.get(number)?.(reply)
      waiting.delete(number)
    }
    one.onmessage = ({ data }) => hand(data.revision, data)
    one.onerror = () => { for (const number of [...waiting.keys()]) hand(number, null) }
    return one
  }

  /** Null where the worker failed. */
  function ask(kind: HangerQuestion['kind'], text: string): Promise<HangerReply | null> {
    worker ??= started()
    revision += 1
    const mine = revision
    const answer = new Promise<HangerReply | null>((done) => { waiting.set(mine, done) })
    worker.postMessage({ kind, revision: mine, text, habits: { ...writingHabits() } })
    return answer
  }

  const unread = ({ code, detail }: FileProblem): HangerCard => unreadCard(fileOutcomeText({ code, deed: 'open', detail }))

  async function check(files: readonly FolderFile[], mine: number): Promise<void> {
    for (const file of files) {
      if (cards.has(keyOf(file))) continue
      const read = await platform.readListed(file.token)
      const reply = read.ok && round === mine ? await ask('hangerCard', read.text) : null
      if (round !== mine) return
      const card = reply?.kind === 'hangerCard' ? reply.card : unreadCard(UNCHECKED_TEXT)
      cards.set(keyOf(file), read.ok ? card : unread(read.problem))
    }
    for (const file of files) {
      if (heaviest.has(keyOf(file)) || cards.get(keyOf(file))?.verdict === null) continue
      const read = await platform.readListed(file.token)
      const reply = read.ok && round === mine ? await ask('hangerHeaviest', read.text) : null
      if (round !== mine) return
      heaviest.set(keyOf(file), reply?.kind === 'hangerHeaviest' ? reply.heaviest : null)
    }
  }

  /** Lists the folder and checks what is in it and was not checked yet. */
  async function look(): Promise<void> {
    round += 1
    const mine = round
    state.value = 'listing'
    const outcome = await platform.listFolder()
    if (round !== mine) return
    problem.value = outcome.ok ? null : folderProblemText(outcome.problem)
    listing.value = outcome.ok ? outcome.listing : null
    state.value = !outcome.ok ? 'failed' : outcome.listing === null ? 'none' : 'listed'
    if (outcome.ok && outcome.listing?.isCut === true) problem.value = cutFolderText(outcome.listing.files.length)
    await check(listing.value?.files ?? [], mine)
  }

  /** Nobody looks any more: what is being checked is the last. */
  const leave = (): void => { round += 1 }

  async function choose(): Promise<void> {
    const outcome = await platform.chooseFolder()
    if (!outcome.ok) problem.value = folderProblemText(outcome.problem)
    else if (outcome.folder !== null) await look()
  }

  return {
    canChoose: platform.canChooseFolder,
    folder: computed(() => listing.value?.folder.name ?? null),
    files: computed(() => listing.value?.files ?? []),
    checked: computed(() => (listing.value?.files ?? []).filter((file) => cards.has(keyOf(file))).length),
    /** How much is known by now: grows with each card and each heaviest pot. */
    known: computed(() => cards.size + heaviest.size),
    /** What is told of a file; null until it was checked. */
    cardOf: (file: FolderFile): HangerCard | null => cards.get(keyOf(file)) ?? null,
    /** Heaviest watered pot, kg; null where none can be told, undefined until it was looked for. */
    heaviestOf: (file: FolderFile): number | null | undefined => heaviest.get(keyOf(file)),
    state: computed(() => state.value),
    problem: computed(() => problem.value),
    look, leave, choose,
  }
}

const startWorker = (): HangersWorker => heard(new Worker(new URL('../workers/advice.worker.ts', import.meta.url), { type: 'module' }))

export const useHangers = defineStore('hangers', () => {
  const platform = inject(PLATFORM)
  if (platform === undefined) throw new Error('The app was started without a platform.')
  return createHangers(platform, startWorker)
})
