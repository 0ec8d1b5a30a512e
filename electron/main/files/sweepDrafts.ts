import { readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'

/** Names that only a writing of ours gives. */
const DRAFT = /^\.strandwise-[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\.tmp$/

/** After this long no writing is still at it, ms. */
const STALE = 3_600_000

/** Takes away what writings that were cut short left in a folder. What cannot be taken away stays. */
export async function sweepDrafts(folder: string, now: number): Promise<void> {
  const names = await readdir(folder).catch((): string[] => [])
  for (const name of names.filter((one) => DRAFT.test(one))) {
    const path = join(folder, name)
    const about = await stat(path).catch(() => null)
    if (about?.isFile() === true && now - about.mtimeMs > STALE) await rm(path, { force: true }).catch(() => undefined)
  }
}
