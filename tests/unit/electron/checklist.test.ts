import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import security from '../../../electron/contentSecurityPolicy.json'
import { SCHEME, START_ADDRESS } from '../../../electron/main/origin'

// The items of Electron's own security checklist (Electron documentation, “Security”), one test each: what
// can be seen in the sources is looked for here, what shows only in the running app names the test that holds it.

const root = join(import.meta.dirname, '../../..')
const sources = readdirSync(join(root, 'electron'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(join(root, 'electron', name), 'utf8'))
const all = sources.join('\n')
const mentions = (pattern: RegExp): boolean => pattern.test(all)
const window = readFileSync(join(root, 'electron/main/mainWindow.ts'), 'utf8')

/** That a test of this name stands in a file of tests. */
function isHeldBy(file: string, title: string): void {
  expect(existsSync(join(root, 'tests', file)), file).toBe(true)
  expect(readFileSync(join(root, 'tests', file), 'utf8')).toContain(title)
}
const POLICY = 'desktop/policy.desktop.spec.ts'

describe('Electron’s security checklist', () => {
  test('1 only secure content is loaded: our own pages, by our own scheme, and no request leaves the app', () => {
    expect(START_ADDRESS.startsWith(`${SCHEME}://`)).toBe(true)
    expect(all.match(/\.loadURL\(/g)).toHaveLength(1)
    expect(mentions(/\.loadFile\(|http:\/\//)).toBe(false)
    isHeldBy(POLICY, 'no request leaves the app')
  })
  test('2 no Node in pages, frames or workers', () => {
    expect(window).toMatch(/nodeIntegration: false/)
    expect(window).toMatch(/nodeIntegrationInWorker: false/)
    expect(window).toMatch(/nodeIntegrationInSubFrames: false/)
    expect(mentions(/nodeIntegration\w*: true/)).toBe(false)
    isHeldBy('desktop/bridge.desktop.spec.ts', 'and nothing of Node')
  })
  test('3 the page’s world and the preload’s are apart', () => {
    expect(window).toMatch(/contextIsolation: true/)
    isHeldBy('desktop/bridge.desktop.spec.ts', 'one frozen method for each intention')
  })
  test('4 every process of a page is in the sandbox', () => {
    expect(window).toMatch(/sandbox: true/)
    expect(readFileSync(join(root, 'electron/main/index.ts'), 'utf8')).toMatch(/app\.enableSandbox\(\)/)
    expect(mentions(/no-sandbox/)).toBe(false)
  })
  test('5 permissions are refused, asked for and looked up', () => {
    expect(mentions(/setPermissionRequestHandler/) && mentions(/setPermissionCheckHandler/) && mentions(/setDevicePermissionHandler/)).toBe(true)
    isHeldBy(POLICY, 'the page is granted no permission')
  })
  test('6 the same-origin policy stands', () => {
    expect(window).toMatch(/webSecurity: true/)
    expect(mentions(/webSecurity: false/)).toBe(false)
  })
  test('7 a content security policy that lets in nothing but our own, and no code from strings', () => {
    expect(security.policy).toMatch(/^default-src 'none'/)
    expect(security.policy).not.toMatch(/unsafe|https?:|\*/)
    isHeldBy(POLICY, 'the page may run, fetch and frame nothing but its own')
  })
  test('8 no insecure content beside secure', () => { expect(mentions(/allowRunningInsecureContent/)).toBe(false) })
  test('9 no experimental features of Chromium', () => { expect(mentions(/experimentalFeatures/)).toBe(false) })
  test('10 no features of Blink switched on', () => { expect(mentions(/enableBlinkFeatures|enable-blink-features/)).toBe(false) })
  test('11 and 12 no page within a page: there are no webviews, and one could not be attached', () => {
    expect(window).toMatch(/webviewTag: false/)
    expect(mentions(/will-attach-webview', refuse/)).toBe(true)
    expect(mentions(/allowpopups/)).toBe(false)
  })
  test('13 the page goes nowhere', () => {
    for (const event of ['will-navigate', 'will-redirect', 'will-frame-navigate']) expect(all).toContain(`'${event}', refuse`)
    isHeldBy(POLICY, 'the page goes nowhere and opens no windows')
  })
  test('14 no new windows', () => { expect(all).toMatch(/setWindowOpenHandler\(\(\) => \(\{ action: 'deny' \}\)\)/) })
  test('15 nothing is handed to other programs', () => { expect(mentions(/openExternal|import [^\n]*\bshell\b[^\n]*'electron'/)).toBe(false) })
  test('16 a current Electron, pinned to the version', () => {
    const { devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { devDependencies: Record<string, string> }
    expect(devDependencies['electron']).toMatch(/^\d+\.\d+\.\d+$/)
  })
  test('17 whoever asks the main process is looked at first, in one place', () => {
    expect(sources.filter((source) => /ipcMain\.(on|once|handle)\b|\bipc\.(on|once|handle)\(/.test(source))).toHaveLength(1)
    isHeldBy('unit/electron/main/answerRequests.test.ts', 'a stranger is refused before anything is done')
    isHeldBy('desktop/bridge.desktop.spec.ts', 'another window gets no answer')
  })
  test('18 no file:// but a scheme of our own', () => {
    expect(mentions(/['"`]file:/)).toBe(false)
    isHeldBy('unit/electron/main/servePages.test.ts', 'nothing can be sent')
  })
  test('19 the fuses are set where the app is packed', () => {
    const configuration = readFileSync(join(root, 'electron/packaging/electron-builder.yml'), 'utf8')
    for (const fuse of ['runAsNode', 'enableNodeOptionsEnvironmentVariable', 'enableNodeCliInspectArguments', 'grantFileProtocolExtraPrivileges']) expect(configuration).toContain(`${fuse}: false`)
    for (const fuse of ['onlyLoadAppFromAsar', 'enableEmbeddedAsarIntegrityValidation', 'enableCookieEncryption']) expect(configuration).toContain(`${fuse}: true`)
  })
  test('20 the page gets methods, never Electron’s own objects or events', () => {
    const preload = readFileSync(join(root, 'electron/preload/index.ts'), 'utf8')
    expect(preload.match(/exposeInMainWorld/g)).toHaveLength(1)
    isHeldBy('unit/electron/preload/bridge.test.ts', 'never the event itself')
    isHeldBy('desktop/bridge.desktop.spec.ts', 'one frozen method for each intention')
  })
})
