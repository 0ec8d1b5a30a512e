import { EventEmitter } from 'node:events'
import { send } from './chromium.mjs'

// Electron's names of permissions, and the web's.
const PERMISSIONS = { geolocation: ['geolocation'], notifications: ['notifications'], media: ['camera', 'microphone'], midi: ['midi'], 'clipboard-read': ['clipboard-read'] }

const schemes = new Map()
let mayUse = () => true
let beforeRequest = (_details, answer) => answer({})

export const protocol = {
  registerSchemesAsPrivileged: () => undefined,
  handle: (scheme, handler) => { schemes.set(scheme, handler) },
  isProtocolHandled: (scheme) => schemes.has(scheme),
}

const kept = () => undefined

export const session = {
  defaultSession: Object.assign(new EventEmitter(), {
    setPermissionCheckHandler: (handler) => { mayUse = handler },
    setPermissionRequestHandler: kept,
    setDevicePermissionHandler: kept,
    setSpellCheckerEnabled: kept,
    webRequest: { onBeforeRequest: (listener) => { beforeRequest = listener } },
  }),
}

/** Asks the app's check handler about each permission, and sets Chromium to its answers. */
export const applyPermissions = (contents) => Promise.all(Object.entries(PERMISSIONS).flatMap(([asked, names]) => {
  const setting = mayUse(contents, asked, '', {}) ? 'granted' : 'denied'
  return names.map((name) => send('Browser.setPermission', { permission: { name }, setting }))
}))

/** Whether the app lets a request be made. */
export const isRequestAllowed = (url) => new Promise((resolve) => {
  beforeRequest({ url }, ({ cancel = false }) => resolve(!cancel))
})

/** The app's own answer to a request, or null for a scheme it does not handle. */
export function answerRequest(address, request) {
  const handler = schemes.get(address.slice(0, address.indexOf(':')))
  return handler ? handler(new Request(address, { method: request.method, headers: request.headers })) : null
}
