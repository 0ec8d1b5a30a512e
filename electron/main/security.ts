import type { App, Session } from 'electron'
import { SCHEME } from './origin'

interface Preventable {
  preventDefault(): void
}

const refuse = (event: Preventable): void => { event.preventDefault() }

/** Schemes of which nothing leaves the process. */
const HARMLESS = new Set([`${SCHEME}:`, 'blob:', 'data:'])

/** Whether a request may be made at all: nothing in the app needs a network. */
export function isRequestAllowed(address: string, developing: boolean): boolean {
  const scheme = address.slice(0, address.indexOf(':') + 1).toLowerCase()
  return HARMLESS.has(scheme) || (developing && scheme === 'devtools:')
}

/** Keeps Chromium's own services off the network; to be called before the app is ready. */
export function cutOff(app: App): void {
  app.commandLine.appendSwitch('host-resolver-rules', 'MAP * ~NOTFOUND')
  app.commandLine.appendSwitch('disable-background-networking')
  app.commandLine.appendSwitch('disable-component-update')
}

/**
 * Takes from every page, now and later, whatever the app has no use for: going elsewhere, opening
 * windows, embedding pages, permissions, devices, downloads, requests. To be called before the first window.
 */
export function lockDown(app: App, session: Session): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', refuse)
    contents.on('will-redirect', refuse)
    contents.on('will-frame-navigate', refuse)
    contents.on('will-attach-webview', refuse)
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
    contents.setWebRTCIPHandlingPolicy('disable_non_proxied_udp')
  })
  session.setPermissionRequestHandler((_contents, _permission, answer) => { answer(false) })
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
  session.setSpellCheckerEnabled(false) // it would fetch dictionaries
  session.on('will-download', refuse)
  session.webRequest.onBeforeRequest(({ url }, answer) => { answer({ cancel: !isRequestAllowed(url, !app.isPackaged) }) })
}
