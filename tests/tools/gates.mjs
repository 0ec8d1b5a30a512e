// `npm test`: runs the gates, or those that are named, and closes with the line `N passed, N failed`.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { root } from '../../electron/launch/places.mjs'
import { runNode } from '../../electron/launch/run.mjs'
import { ensureBuilt } from '../../electron/launch/setUp.mjs'
import { countOf, readReport, sum } from './counts.mjs'

const reports = mkdtempSync(join(tmpdir(), 'strandwise-reports-'))
const reportOf = (name) => join(reports, `${name}.json`)
const installed = (script) => join(root, 'node_modules', script)

const single = (script, args) => ({
  run: (stdio) => runNode(script, args, { cwd: root, stdio }),
  count: (code) => ({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 }),
})

const gates = {
  lint: single(installed('eslint/bin/eslint.js'), ['-c', 'tests/tools/eslint.config.js', '.', '--max-warnings', '0']),
  imports: single(join(root, 'tests/tools/cycles.mjs'), []),
  // The native compiler is seven times as fast, but knows nothing of Vue's files.
  types: single(installed('typescript-native/bin/tsc'), ['-b', 'src', 'src/cli', 'electron', 'tests']),
  // The tests' configuration takes in the whole renderer: the core behind both is read once.
  vueTypes: single(installed('vue-tsc/bin/vue-tsc.js'), ['-b', 'tests/unit/renderer']),
  build: {
    run: async () => ({ code: await ensureBuilt() ? 0 : 1, output: '' }),
    count: (code) => ({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 }),
  },
  unit: {
    run: (stdio) => runNode(installed('vitest/vitest.mjs'), [
      'run', '-c', 'tests/tools/vitest.config.ts', '--allowOnly=false', '--reporter=default', '--reporter=json', `--outputFile.json=${reportOf('unit')}`,
    ], { cwd: root, stdio }),
    count: (code) => countOf(code, readReport('vitest', reportOf('unit'))),
  },
  desktop: {
    run: (stdio) => runNode(installed('playwright/cli.js'), ['test', '-c', 'tests/tools/playwright.config.ts', '--reporter=list,json'], {
      cwd: root, stdio, env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_FILE: reportOf('desktop') },
    }),
    count: (code) => countOf(code, readReport('playwright', reportOf('desktop'))),
  },
}

// Two lanes for two cores. The first speaks as it goes; the second is read out when the first has come
// to the end of a gate, so that their lines do not mix.
const LANES = [['build', 'unit', 'desktop'], ['lint', 'imports', 'types', 'vueTypes']]
const results = new Map()

async function runGate(name, stdio) {
  const began = performance.now()
  const { code, output } = await gates[name].run(stdio)
  const result = { ...gates[name].count(code), output, seconds: (performance.now() - began) / 1000 }
  results.set(name, result)
  return result
}

async function runQuietly(names, speak) {
  for (const name of names) {
    const { output, failed } = await runGate(name, ['ignore', 'pipe', 'pipe'])
    speak(`\n--- ${name}${failed ? ' failed' : ''}\n${output}`)
  }
}

async function runAloud(names, flush) {
  for (const name of names) {
    console.log(`\n--- ${name}`)
    await runGate(name, ['ignore', 'inherit', 'inherit'])
    flush()
  }
}

// Whoever interrupts wants the rest of the gates no more.
process.once('SIGINT', () => process.exit(130))

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !Object.hasOwn(gates, name))
if (unknown.length) {
  console.error(`No such gate: ${unknown.join(', ')}. The gates are ${Object.keys(gates).join(', ')}.`)
  results.set('unknown', { passed: 0, failed: 1, seconds: 0 })
} else {
  const chosen = new Set(asked.length ? asked : Object.keys(gates))
  if (chosen.has('unit') || chosen.has('desktop')) chosen.add('build')
  const [aloud, quiet] = LANES.map((lane) => lane.filter((name) => chosen.has(name)))
  const waiting = []
  const flush = () => console.log(waiting.splice(0).join(''))
  await Promise.all([runAloud(aloud, flush), runQuietly(quiet, (text) => waiting.push(text))])
  flush()
}
rmSync(reports, { recursive: true, force: true })

for (const [name, { passed, failed, seconds }] of results) {
  console.log(`${name.padEnd(8)} ${String(passed).padStart(5)} passed ${String(failed).padStart(4)} failed ${seconds.toFixed(1).padStart(7)} s`)
}
const total = sum([...results.values()])
console.log(`${total.passed} passed, ${total.failed} failed`)
process.exitCode = total.failed ? 1 : 0
