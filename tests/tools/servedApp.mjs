import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { chromium } from 'playwright'
import { root } from '../../electron/launch/places.mjs'
import { CHROMIUM_SWITCHES, findChromium } from './chromium.mjs'

async function reachable(address) {
  for (let tries = 0; tries < 300; tries++) {
    if (await fetch(address).then(({ ok }) => ok, () => false)) return
    await new Promise((done) => { setTimeout(done, 100) })
  }
  throw new Error('The app was not served.')
}

/** The browser edition as built, served on a port of its own, and a Chromium to look at it with; `close` ends both. */
export async function servedApp() {
  const port = String(20_000 + process.pid % 10_000)
  const address = `http://127.0.0.1:${port}/`
  const server = spawn(process.execPath, [join(root, 'electron/launch.mjs'), 'start', '--browser'], { cwd: root, env: { ...process.env, PORT: port }, stdio: 'ignore' })
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_SWITCHES })
  const close = async () => {
    await browser.close()
    server.kill()
  }
  await reachable(address).catch(async (error) => {
    await close()
    throw error
  })
  return { address, browser, close }
}
