import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'
import { build } from 'vite'

const root = resolve(import.meta.dirname, '../..')
const core = join(root, 'src')
const cache = join(root, 'node_modules/.cache')
/** Each project loads the configuration anew, in one process. */
const PLACE = 'STRANDWISE_BUILT_CORE'

/** Each module by itself, as its neighbours' neighbour: put together they would gain exports of one another. */
const eachByItself = {
  name: 'each-by-itself',
  resolveId: (source) => (/^\.{1,2}\/[^?]+$/.test(source) ? { id: `${source}.mjs`, external: true } : null),
}

async function buildInto(folder) {
  const modules = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts')).map((name) => name.slice(0, -'.ts'.length))
  await build({
    root, configFile: false, logLevel: 'error', plugins: [eachByItself],
    build: {
      outDir: folder, emptyOutDir: false, minify: false, target: 'node20', ssr: true,
      rolldownOptions: { input: Object.fromEntries(modules.map((name) => [name, join(core, `${name}.ts`)])), output: { entryFileNames: '[name].mjs' } },
    },
  })
}

/**
 * The core as tests run it once through: every module made plain JavaScript at the start, which Node then loads by
 * itself. The runner would make each anew for every project and hand it over to each worker, which took longer than most tests.
 * @returns {Promise<import('vite').Plugin | null>} null where the tests are watched, and follow each change, or where their coverage is asked for
 */
export async function builtCore() {
  if (process.argv.includes('--coverage') || !process.argv.some((word) => ['run', '--run', 'bench'].includes(word))) return null
  if (process.env[PLACE] === undefined) {
    mkdirSync(cache, { recursive: true })
    const folder = process.env[PLACE] = mkdtempSync(join(cache, 'core-'))
    process.once('exit', () => { rmSync(folder, { recursive: true, force: true }) })
    await buildInto(folder)
  }
  const built = process.env[PLACE]
  return {
    name: 'built-core',
    enforce: 'pre',
    async resolveId(source, importer) {
      const found = await this.resolve(source, importer, { skipSelf: true })
      if (!found?.id.startsWith(core) || !found.id.endsWith('.ts')) return null
      return { id: join(built, relative(core, found.id)).replace(/\.ts$/, '.mjs'), external: true }
    },
  }
}
