import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const root = join(import.meta.dirname, '../../..')
/** The built app, which starts sooner; before it is built the core as made plain for these tests. */
const built = join(root, 'out/main/cli.js')
const program = existsSync(built) ? built : join(process.env['STRANDWISE_BUILT_CORE'] ?? '', 'cli/main.mjs')
const demos = join(root, 'src/hanger/demos')
const files = ['fern-over-the-sideboard', 'order-for-a-rented-flat', 'spider-plant-on-the-study-wall'].map((name) => join(demos, `${name}.strandwise`))

/** What the program answers, in a process of its own; exit 1 only says that something fails. */
function answer(args: readonly string[], node: readonly string[], env: NodeJS.ProcessEnv): readonly string[] {
  const run = (): string => execFileSync(process.execPath, [...node, program, ...args], { encoding: 'utf8', maxBuffer: 1e8, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] })
  try {
    return run().trim().split('\n')
  } catch (error) {
    const { status, stdout } = error as { readonly status: number; readonly stdout: string }
    if (status !== 1) throw error
    return stdout.trim().split('\n')
  }
}

// In another language and in the other order, where every search starts from what another hanger left.
test('demos are answered to the last digit alike in another process, order and language', () => {
  const there = answer(['check', ...files, '--json'], [], { LC_ALL: 'C' })
  const again = answer(['check', ...[...files].reverse(), '--json'], ['--hash-seed=7'], { LC_ALL: 'tr_TR.UTF-8' })
  expect(there).toHaveLength(files.length)
  expect([...again].reverse()).toEqual(there)
})

test('chance by one seed is alike too', () => {
  const args = ['chance', files[0] ?? '', '--samples', '40', '--seed', '11', '--json']
  expect(answer(args, ['--hash-seed=7'], { LC_ALL: 'tr_TR.UTF-8' })).toEqual(answer(args, [], { LC_ALL: 'C' }))
})
