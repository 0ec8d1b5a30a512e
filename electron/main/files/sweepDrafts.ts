import { lstat, readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'

/** Names that only a writing of ours gives: its draft, and the link that says whose turn it is. */
const DRAFT = /^\.strandwise-([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\.tmp|[0-9a-f]{16}\.lock)$/

/** After this long no writing is still at it, ms. */
const STALE = 3_600_000

/** Takes away what writings that were cut short left in a folder. What cannot be taken away stays. */
export async function sweepDrafts(folder: string, now: number): Promise<void> {
  const names = await readdir(folder).catch((): string[] => [])
  for (const name of names.filter((one) => DRAFT.test(one))) {
    const path = join(folder, name)
    const about = await lstat(path).catch(() => null)
    if (about?.isDirectory() === false && now - about.mtimeMs > STALE) await rm(path, { force: true }).catch(() => undefined)
  }
}
