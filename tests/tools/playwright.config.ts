import { resolve } from 'node:path'
import { defineConfig } from 'playwright/test'
import { CHROMIUM_SWITCHES, findChromium } from './chromium.mjs'
import { chooseRuntime } from './runtime.mjs'

chooseRuntime()

const root = resolve(import.meta.dirname, '../..')
// Two runs on one machine must not meet on one port; the workers inherit the first process's choice.
const port = process.env['STRANDWISE_TEST_PORT'] ??= String(20_000 + process.pid % 10_000)
const address = `http://127.0.0.1:${port}/`

export default defineConfig({
  testDir: resolve(root, 'tests/desktop'),
  outputDir: resolve(root, 'test-results'),
  forbidOnly: true,
  // Every test finds the page emptied, storage and all, as a new one; a page begun anew takes twice the work.
  // Numbers are written as the system's region writes them: British ones in both units.
  use: { reuseContext: true, locale: 'en-GB' },
  // A slow machine is no failure: nothing here is a timed test.
  timeout: 60_000,
  expect: { timeout: 15_000 },
  fullyParallel: false,
  workers: 2,
  reporter: 'list',
  projects: [
    { name: 'desktop', testMatch: '*.desktop.spec.ts' },
    {
      name: 'browser',
      testMatch: '*.browser.spec.ts',
      use: { baseURL: address, launchOptions: { executablePath: findChromium(), args: CHROMIUM_SWITCHES } },
    },
  ],
  webServer: {
    command: `"${process.execPath}" electron/launch.mjs start --browser`,
    cwd: root,
    env: { PORT: port },
    url: address,
    stdout: 'ignore',
    timeout: 60_000,
  },
})
