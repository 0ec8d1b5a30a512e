// The one way in: `start`, `test`, `cli`, `bench`, `fuzz`, `build` and `install`, each after whatever setting up it needs.
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

const modes = {
  install: async () => await ensureInstalled() ? 0 : 1,
  build: async () => await ready() ? 0 : 1,
  start: async (args) => await ready() ? start(args, userFolder) : 1,
  cli: async (args) =>
    await ready() ? (await runNode(join(output, 'main/cli.js'), args, { cwd: userFolder, stdio: 'inherit' })).code : 2,
  test: async (args) => {
    if (await ensureInstalled()) return (await runNode(join(root, 'tests/tools/gates.mjs'), args, { cwd: root, stdio: 'inherit' })).code
    console.log('0 passed, 1 failed')
    return 1
  },
  bench: async (args) => {
    const vitest = ['bench', '--run', '-c', 'tests/tools/vitest.config.ts', ...args]
    return await ensureInstalled() ? (await runNode(join(root, 'node_modules/vitest/vitest.mjs'), vitest, { cwd: root, stdio: 'inherit' })).code : 1
  },
  fuzz: async ([tries = '1000000', seed = '1']) => {
    const vitest = ['run', '-c', 'tests/tools/vitest.config.ts', '--testTimeout', '0', 'tests/fuzz']
    const env = { ...process.env, STRANDWISE_FUZZ_TRIES: tries, STRANDWISE_FUZZ_SEED: seed }
    return await ensureInstalled() ? (await runNode(join(root, 'node_modules/vitest/vitest.mjs'), vitest, { cwd: root, stdio: 'inherit', env })).code : 1
  },
}

const [mode = '', ...args] = process.argv.slice(2)
if (Object.hasOwn(modes, mode)) process.exitCode = await modes[mode](args)
else {
  say(`Usage: node electron/launch.mjs ${Object.keys(modes).join('|')} …`)
  process.exitCode = 2
}
