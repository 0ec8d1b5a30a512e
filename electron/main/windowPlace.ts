import type { BrowserWindow, Rectangle } from 'electron'
import { readState, writeState } from './files/stateFile'

/** Where a window opens: bounds in screen pixels, without a place where the system is to choose one. */
export interface WindowPlace {
  readonly bounds: { readonly width: number, readonly height: number, readonly x?: number, readonly y?: number }
  readonly maximized: boolean
}

/** Smallest size the page is laid out for. */
export const SMALLEST = { minWidth: 640, minHeight: 480 }

const USUAL: WindowPlace = { bounds: { width: 1240, height: 860 }, maximized: false }

/** How much of a remembered window must lie on a screen for it to be found again, pixels. */
const VISIBLE = 100

const isBounds = (value: unknown): value is Rectangle =>
  typeof value === 'object' && value !== null
  && ['x', 'y', 'width', 'height'].every((key) => Number.isSafeInteger((value as Record<string, unknown>)[key]))

function overlaps(a: Rectangle, b: Rectangle): boolean {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return across >= VISIBLE && down >= VISIBLE
}

/**
 * Where the window was when it was last closed, unless no screen shows that place any more.
 *
 * @param screens work areas of the screens there are now
 */
export function rememberedPlace(stateFile: string, screens: readonly Rectangle[]): WindowPlace {
  const stored = readState(stateFile)
  if (typeof stored !== 'object' || stored === null || !('bounds' in stored) || !isBounds(stored.bounds)) return USUAL
  const { bounds } = stored
  const maximized = 'maximized' in stored && stored.maximized === true
  const size = { width: Math.max(bounds.width, SMALLEST.minWidth), height: Math.max(bounds.height, SMALLEST.minHeight) }
  return screens.some((screen) => overlaps(bounds, screen))
    ? { bounds: { x: bounds.x, y: bounds.y, ...size }, maximized }
    : { bounds: USUAL.bounds, maximized }
}

export function rememberPlace(stateFile: string, window: BrowserWindow): void {
  writeState(stateFile, { bounds: window.getNormalBounds(), maximized: window.isMaximized() })
}
