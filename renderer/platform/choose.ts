import { browserPlatform } from './browser'
import { desktopPlatform } from './desktop'
import type { Platform } from './platform'

/** Whatever this page runs in. The only place that asks. */
export const platform: Platform = window.strandwise ? desktopPlatform(window.strandwise) : browserPlatform()
