import { join } from 'node:path'
import { hasDisplay, obtainRuntime, openDesktop } from './desktop.mjs'
import { output } from './places.mjs'
import { serve } from './server.mjs'

const USUAL_PORT = 4173

async function serveBrowserEdition(why) {
  const asked = Number(process.env.PORT ?? USUAL_PORT)
  const { port, close } = await serve(join(output, 'renderer'), Number.isInteger(asked) && asked >= 0 && asked < 65_536 ? asked : USUAL_PORT)
  console.log(`${why} http://127.0.0.1:${port}/ (Ctrl+C ends it)`)
  return new Promise((done) => {
    const stop = () => close().then(() => done(0))
    process.once('SIGINT', stop).once('SIGTERM', stop)
  })
}

/**
 * Opens Strandwise in a window of its own, or serves the same pages to the browser where that cannot be.
 * @param {readonly string[]} args
 * @param {string} cwd
 * @returns {Promise<number>} exit code
 */
export async function start(args, cwd) {
  if (args.includes('--browser')) return serveBrowserEdition('Strandwise for the browser:')
  if (!hasDisplay()) return serveBrowserEdition('There is no screen for a window, so here is Strandwise for the browser:')
  const runtime = await obtainRuntime()
  if (!runtime) return serveBrowserEdition('The Electron runtime cannot be had, so here is Strandwise for the browser:')
  const { code, shown } = await openDesktop(runtime, args, cwd)
  if (code === 0 || shown) return code
  return serveBrowserEdition('Electron ended without a window, so here is Strandwise for the browser:')
}
