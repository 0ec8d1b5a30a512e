const KEY = 'strandwise.hangers.view'

export type HangersView = 'list' | 'table'

/** How hangers were looked at last; `storageOf` may throw. */
export function keptView(storageOf: () => Pick<Storage, 'getItem'>): HangersView {
  try {
    return storageOf().getItem(KEY) === 'table' ? 'table' : 'list'
  } catch {
    return 'list' // nothing is kept here for anyone
  }
}

export function keepView(storageOf: () => Pick<Storage, 'setItem'>, view: HangersView): void {
  try {
    storageOf().setItem(KEY, view)
  } catch {
    // Then it is a list the next time.
  }
}
