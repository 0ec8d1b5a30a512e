import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { lutimes, readdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { build } from 'vite'
import { describe, expect, test } from 'vitest'
import { writeAtomic } from '../../../../../electron/main/files/writeAtomic'
import { temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
/** How often the process is killed; each time it saves as fast as it can until then. */
const KILLS = Number(process.env['STRANDWISE_KILLS'] ?? 12)
const LONGEST = 60
/** Larger than what the disk writes in one piece. */
const LINES = 4000

const source = join(import.meta.dirname, '../../../../../electron/main/files/writeAtomic.ts')

/** Each save is of other content and length, every line of it telling which save it is. */
const SAVER = `
import { writeAtomic } from './writeAtomic.mjs'
const [file, from] = process.argv.slice(2)
for (let n = Number(from); ; n++) {
  await writeAtomic(file, new TextEncoder().encode(Array.from({ length: ${LINES} + n % 7 }, () => 'save ' + n + '\\n').join('')), { backup: true })
  process.stdout.write(n + '\\n')
}
`

/** Which save a file holds; null where it is not one of them, whole. */
function saveOf(text: string): number | null {
  const n = Number(/^save (\d+)\n/.exec(text)?.[1] ?? NaN)
  return text === `save ${n}\n`.repeat(LINES + (n % 7)) ? n : null
}

describe.runIf(process.platform !== 'win32')('killed at any moment while saving', () => {
  test('the file is whole, and of the save last told of or the one after', async () => {
    await build({ configFile: false, logLevel: 'silent', build: { ssr: source, outDir: folder.path, emptyOutDir: false, rollupOptions: { output: { entryFileNames: 'writeAtomic.mjs' } } } })
    await writeFile(folder.file('saver.mjs'), SAVER)
    const file = folder.file('fern.strandwise')
    let next = 1
    for (let kill = 0; kill < KILLS; kill++) {
      const saver = spawn(process.execPath, [folder.file('saver.mjs'), file, String(next)], { stdio: ['ignore', 'pipe', 'inherit'] })
      let told = ''
      saver.stdout.setEncoding('utf8').on('data', (more: string) => { told += more })
      await once(saver.stdout, 'data')
      // The wait need not be had again: whatever the moment, the file must be whole.
      await new Promise((done) => { setTimeout(done, Math.random() * LONGEST) })
      saver.kill('SIGKILL')
      await once(saver, 'close')
      const last = Number(told.trimEnd().split('\n').at(-1))
      const found = saveOf(await readFile(file, 'utf8'))
      expect([last, last + 1]).toContain(found)
      expect(saveOf(await readFile(`${file}~`, 'utf8').catch(() => 'save 1\n'.repeat(LINES + 1))), 'the copy kept of the one before').not.toBeNull()
      next = last + 2
    }
    // Counted on by two for each, though it be killed in its first save; on a slow disk few come on top.
    expect(next, 'saves made').toBeGreaterThan(KILLS * 2 + KILLS / 3)
  })
})

test('what a killed save left behind is taken away by a later one, once it is surely of no use', async () => {
  const draft = (letter: string): string => `.strandwise-${letter.repeat(8)}-1111-4111-8111-111111111111.tmp`
  await writeFile(folder.file(draft('a')), 'old')
  await writeFile(folder.file(draft('b')), 'new')
  await writeFile(folder.file('.strandwise-notes.tmp'), 'not ours')
  await symlink('1@another-machine@x', folder.file(`.strandwise-${'a'.repeat(16)}.lock`))
  for (const name of [draft('a'), '.strandwise-notes.tmp', `.strandwise-${'a'.repeat(16)}.lock`]) await lutimes(folder.file(name), 1_700_000_000, 1_700_000_000)
  await writeAtomic(folder.file('fern'), new Uint8Array(3), { backup: false })
  expect((await readdir(folder.path)).sort()).toEqual(['.strandwise-notes.tmp', draft('b'), 'fern'].sort())
})
