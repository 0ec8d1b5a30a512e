// The one way in: `start`, `test`, `cli`, `bench`, `coverage`, `fuzz`, `longuse`, `mutants`, `build` and `install`, each after whatever setting up it needs.
import { join } from 'node:path'
import { output, root } from './launch/places.mjs'
import { runNode } from './launch/run.mjs'
import { say } from './launch/say.mjs'
import { ensureBuilt, ensureInstalled } from './launch/setUp.mjs'
import { start } from './launch/start.mjs'

// npm moves to the project's folder and leaves the user's own in INIT_CWD; paths on the command line
// are meant from there.
const movedByNpm = process.env.npm_package_json === join(root, 'package.json') && process.cwd() === root
const userFolder = (movedByNpm && process.env.INIT_CWD) || process.cwd()

const ready = async () => await ensureInstalled() && await ensureBuilt()

const inRoot = async (script, args, env = {}) =>
  (await runNode(join(root, script), args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } })).code
const vitest = ([verb, ...args], env) => inRoot('node_modules/vitest/vitest.mjs', [verb, '-c', 'tests/tools/vitest.config.ts', ...args], env)

const modes = {
  install: async () => await ensureInstalled() ? 0 : 1,
  build: async () => await ready() ? 0 : 1,
  start: async (args) => await ready() ? start(args, userFolder) : 1,
  cli: async (args) =>
    await ready() ? (await runNode(join(output, 'main/cli.js'), args, { cwd: userFolder, stdio: 'inherit' })).code : 2,
  test: async (args) => {
    if (await ensureInstalled()) return inRoot('tests/tools/gates.mjs', args)
    console.log('0 passed, 1 failed')
    return 1
  },
  bench: async (args) => {
    if (!await ready()) return 1
    const core = args[0] === 'window' ? 0 : await vitest(['bench', '--run', ...args])
    const window = args.length === 0 || args[0] === 'window' ? await inRoot('tests/bench/window.mjs', []) : 0
    return core || window
  },
  coverage: async () => await ensureInstalled() ? vitest(['run', '--coverage', '--project', 'core']) : 1,
  fuzz: async ([tries = '1000000', seed = '1']) => await ensureInstalled()
    ? vitest(['run', '--testTimeout', '0', 'tests/fuzz'], { STRANDWISE_FUZZ_TRIES: tries, STRANDWISE_FUZZ_SEED: seed })
    : 1,
  longuse: async (args) => await ready() ? inRoot('tests/long/editing.mjs', args) : 1,
  mutants: async (args) => await ensureInstalled() ? inRoot('tests/mutation/run.mjs', args) : 1,
}

const [mode = '', ...args] = process.argv.slice(2)
if (Object.hasOwn(modes, mode)) process.exitCode = await modes[mode](args)
else {
  say(`Usage: node electron/launch.mjs ${Object.keys(modes).join('|')} …`)
  process.exitCode = 2
}
