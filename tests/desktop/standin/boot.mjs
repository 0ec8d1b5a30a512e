/*
 * A stand-in for Electron's executable, for machines on which the real runtime cannot be fetched or has
 * no screen. The app's built main process runs in plain Node, its pages in a headless Chromium, its built
 * preload in an isolated world of those pages; `electron` is answered by the modules of this folder.
 * Playwright's own `_electron.launch` drives it as it drives the real one.
 *
 * It has been written from the documentation and the type declarations and was never compared with the
 * real thing, so a passing test says: main process, preload and page agree with each other and with what
 * Electron is documented to do. It does NOT represent
 *   - the sandbox of the operating system, fuses, packaging (`isPackaged` is false), crashes, GPU;
 *   - how native menus, roles, accelerators and dialogs look and behave: a test answers the dialogs;
 *   - the page's own origin: Chromium is told https://app.strandwise-app.standin for strandwise-app://app,
 *     and only the main process hears the true name; `standard`, `secure` and the like are not looked at;
 *   - permission and window-open handlers as a conversation: they are asked once, before there is a page,
 *     and Chromium is set to their answers; links with a target, and the other handlers, ask nobody;
 *   - messages from frames in a page (the preload runs in the top frame only), redirects, webviews,
 *     downloads;
 *   - values on the bridge other than JSON's, undefined and functions: they are refused;
 *   - Electron's versions of Chromium and Node, second instances, file associations, windows' places.
 */
import { createRequire, Module, register } from 'node:module'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import * as electron from './electron.mjs'
import { announceReady, describeApp } from './app.mjs'
import { startChromium } from './chromium.mjs'

register('./hooks.mjs', import.meta.url)
const load = Module._load
Module._load = (request, ...rest) => request === 'electron' ? electron : load(request, ...rest)

// As with Electron, argv has the executable first and then what it was given.
process.argv.splice(1, 1)
const preloads = []
let folder = null
for (let index = 1; index < process.argv.length; index += 1) {
  const argument = process.argv[index]
  if (argument === '-r') preloads.push(process.argv[index += 1])
  else if (!argument.startsWith('-')) folder ??= resolve(argument)
}

const require = createRequire(import.meta.url)
const description = require(resolve(folder, 'package.json'))
Object.defineProperty(process.versions, 'electron', { value: '0.0.0-stand-in' })
process.type = 'browser'
describeApp({ folder, name: description.productName ?? description.name, version: description.version })
preloads.forEach((path) => require(resolve(path)))
await import(pathToFileURL(resolve(folder, description.main)).href)
await startChromium({ profile: electron.app.getPath('sessionData'), switches: electron.app.commandLine.all(), onExit: () => process.exit() })
announceReady()
