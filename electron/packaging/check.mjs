// Checks how the app is packed, as far as can be done without Electron's runtime: the configuration against its schema,
// what goes into the package, and that the packed command line runs by itself. `node electron/packaging/check.mjs`
import { spawnSync } from 'node:child_process'
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const here = import.meta.dirname
const root = join(here, '../..')
const scratch = mkdtempSync(join(tmpdir(), 'strandwise-packaging-'))
const failed = []

const say = (text) => { console.log(text) }
const check = (what, holds, detail = '') => {
  say(`${holds ? 'ok    ' : 'FAILED'} ${what}${holds || detail === '' ? '' : `: ${detail}`}`)
  if (!holds) failed.push(what)
}
function run(command, args, options = {}) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { encoding: 'utf8', ...options })
  return { code: status ?? 1, out: stdout ?? '', err: `${stderr ?? ''}${error?.message ?? ''}` }
}

/** Must be off or on in what is handed to others, and why is said in the configuration. */
const FUSES = {
  runAsNode: false,
  enableNodeOptionsEnvironmentVariable: false,
  enableNodeCliInspectArguments: false,
  onlyLoadAppFromAsar: true,
  enableEmbeddedAsarIntegrityValidation: true,
  grantFileProtocolExtraPrivileges: false,
  enableCookieEncryption: true,
}

try {
  // Its packages stay out of the project.
  const tools = join(scratch, 'tools')
  for (const name of ['package.json', 'package-lock.json', '.npmrc']) cpSync(join(here, name), join(tools, name))
  const set = run('npm', ['ci', '--ignore-scripts'], { cwd: tools })
  if (set.code !== 0) throw new Error(`Its packages could not be installed: ${set.err}`)
  const require = createRequire(join(tools, 'package.json'))
  const { validateConfiguration } = require('app-builder-lib/out/util/config/config.js')
  const { DebugLogger } = require('builder-util')
  const yaml = require('js-yaml')
  const asar = require('@electron/asar')
  const read = () => yaml.load(readFileSync(join(here, 'electron-builder.yml'), 'utf8'))
  const isValid = (configuration) => validateConfiguration(configuration, new DebugLogger(false)).then(() => '', (error) => error.message)

  const complaint = await isValid(read())
  check('the configuration agrees with its schema', complaint === '', complaint)
  check('a configuration with a wrong key would not', (await isValid({ ...read(), asarr: true })) !== '')
  const { electronFuses } = read()
  for (const [fuse, wanted] of Object.entries(FUSES)) check(`fuse ${fuse} is ${wanted ? 'on' : 'off'}`, electronFuses[fuse] === wanted)

  const built = run(process.execPath, [join(root, 'electron/launch.mjs'), 'build'])
  check('the app builds', built.code === 0, built.err)

  // A runtime that is none: enough to pack around, though its fuses cannot be set.
  const runtime = join(scratch, 'runtime')
  mkdirSync(join(runtime, 'locales'), { recursive: true })
  for (const language of ['en-US', 'de']) writeFileSync(join(runtime, `locales/${language}.pak`), '')
  writeFileSync(join(runtime, 'electron'), '#!/bin/sh\nexit 0\n')
  chmodSync(join(runtime, 'electron'), 0o755)
  writeFileSync(join(runtime, 'LICENSE'), '')
  writeFileSync(join(runtime, 'version'), JSON.parse(readFileSync(join(root, 'node_modules/electron/package.json'), 'utf8')).version)
  const app = join(scratch, 'app')
  for (const part of ['out', 'package.json', 'node_modules/electron/package.json']) cpSync(join(root, part), join(app, part), { recursive: true })
  const bare = { ...read(), electronDist: runtime, directories: { output: join(scratch, 'dist') } }
  delete bare.electronFuses
  writeFileSync(join(scratch, 'bare.yml'), yaml.dump(bare))
  const packed = run(process.execPath, [require.resolve('electron-builder/cli.js'), '--dir', '--linux', '--projectDir', app, '-c', join(scratch, 'bare.yml')])
  check('an unpacked app is made around a stand-in runtime', packed.code === 0, packed.out.slice(-2000) + packed.err)

  const archive = join(scratch, 'dist/linux-unpacked/resources/app.asar')
  const names = asar.listPackage(archive).map((name) => name.replaceAll('\\', '/'))
  const stray = names.filter((name) => name !== '/package.json' && name !== '/out' && !name.startsWith('/out/'))
  check('nothing goes along but the bundles and package.json', stray.length === 0, stray.join(', '))
  check('no source maps go along', !names.some((name) => name.endsWith('.map')))
  for (const name of ['/out/main/index.js', '/out/main/cli.js', '/out/main/batchWorker.js', '/out/preload/preload.cjs', '/out/renderer/index.html']) check(`${name} is there`, names.includes(name))

  const unpacked = join(scratch, 'unpacked')
  asar.extractAll(archive, unpacked)
  const schema = run(process.execPath, [join(unpacked, 'out/main/cli.js'), 'schema'], { cwd: scratch })
  check('the packed command line runs with no package beside it', schema.code === 0 && schema.out.includes('strandwise-hanger'), schema.err)
} catch (error) {
  check('the check itself', false, error instanceof Error ? error.message : String(error))
} finally {
  rmSync(scratch, { recursive: true, force: true })
}
say(failed.length === 0 ? 'Packing is as it should be; Electron’s own runtime was not tried.' : `${failed.length} failed.`)
process.exitCode = failed.length === 0 ? 0 : 1
