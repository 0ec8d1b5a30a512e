// Finds a Chromium for the tests; run by itself it prints the path, or says what to install.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright'

const PLACES = {
  // The shell without a window paints in half the time.
  linux: ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome-stable', '/usr/bin/google-chrome', '/snap/bin/chromium'],
  darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium'],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => {
    const folder = process.env[name]
    return folder ? [join(folder, 'Google/Chrome/Application/chrome.exe'), join(folder, 'Chromium/Application/chrome.exe')] : []
  }),
}

const look = () => [...PLACES[process.platform] ?? [], chromium.executablePath()].find((path) => existsSync(path)) ?? null

function installOnDebian() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return
  const commands = [['update', '-qq'], ['install', '-y', '-qq', '--no-install-recommends', 'chromium-headless-shell']]
  for (const args of commands) {
    console.error(`No Chromium found; running apt-get ${args.join(' ')}`)
    const { status } = spawnSync('apt-get', args, { stdio: ['ignore', 2, 2], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
    if (status !== 0) return
  }
}

/**
 * Path of a Chromium that is installed, installing one where that is possible without asking anybody.
 * @returns {string}
 * @throws {Error} saying what to install
 */
export function findChromium() {
  const named = process.env.STRANDWISE_CHROMIUM
  if (named) {
    if (existsSync(named)) return named
    throw new Error(`STRANDWISE_CHROMIUM names ${named}, which does not exist.`)
  }
  const found = look()
  if (found) return found
  installOnDebian()
  const installed = look()
  if (installed) return installed
  throw new Error('The desktop tests need a browser: install Chromium or Google Chrome, or run "npx playwright install chromium", or name one in STRANDWISE_CHROMIUM.')
}

/** Switches a test browser is started with; the sandbox of Chromium refuses to work for root. */
export const CHROMIUM_SWITCHES = [
  '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run', '--disable-quic',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
]

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    console.log(findChromium())
  } catch (error) {
    console.error(error.message)
    process.exitCode = 1
  }
}
