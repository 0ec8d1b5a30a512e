/** What wheel, pointers and keys ask of a picture; lengths in px of the screen. */
export interface Hands {
  /** Whether all of the picture is seen, so that there is nothing to move. */
  readonly isWhole: () => boolean
  readonly magnify: (factor: number, clientX: number, clientY: number) => void
  /** Moves the window over the picture; false where it cannot go further. */
  readonly move: (dx: number, dy: number) => boolean
  readonly fit: () => void
  /** Whether the key meant something. */
  readonly key: (name: string) => boolean
}

/** A pointer that moved less was meant as a click, px. */
const STILL = 4
/** Pixels of a wheel that reports lines or pages. */
const LINE = 16
const PAGE = 400
/** How far one pixel of the wheel magnifies. */
const WHEEL = 0.0025

const CONTROLS = 'button, input, select, a, summary'

const isControl = ({ target }: Event): boolean => target instanceof Element && target.closest(CONTROLS) !== null

/** Listens on a sheet for what hands do to a picture; answers how to stop. A drag is not a click. */
export function listenToHands(sheet: HTMLElement, hands: Hands): () => void {
  const pointers = new Map<number, { x: number, y: number }>()
  let travelled = 0
  let dragged = false

  function onWheel(event: WheelEvent): void {
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? PAGE : 1
    const [dx, dy] = [event.deltaX * unit, event.deltaY * unit]
    if (event.ctrlKey || event.metaKey) hands.magnify(Math.exp(-Math.max(-120, Math.min(120, dy)) * WHEEL * (Math.abs(dy) < 30 ? 4 : 1)), event.clientX, event.clientY)
    else if (hands.isWhole() || !(event.shiftKey && dx === 0 ? hands.move(dy, 0) : hands.move(dx, dy))) return
    event.preventDefault()
  }

  function onDown(event: PointerEvent): void {
    if (event.button !== 0 || isControl(event)) return
    if (pointers.size === 0) {
      travelled = 0
      dragged = false
    }
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY })
  }

  function onMove(event: PointerEvent): void {
    const last = pointers.get(event.pointerId)
    if (last === undefined) return
    const other = [...pointers].find(([id]) => id !== event.pointerId)?.[1]
    const [dx, dy] = [event.clientX - last.x, event.clientY - last.y]
    travelled += Math.hypot(dx, dy)
    if (travelled >= STILL && !dragged && (other !== undefined || !hands.isWhole())) {
      dragged = true
      sheet.setPointerCapture(event.pointerId)
    }
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY })
    if (!dragged) return
    hands.move(other === undefined ? -dx : -dx / 2, other === undefined ? -dy : -dy / 2)
    if (other === undefined) return
    const before = Math.hypot(last.x - other.x, last.y - other.y)
    const now = Math.hypot(event.clientX - other.x, event.clientY - other.y)
    if (before > 0 && now > 0) hands.magnify(now / before, (event.clientX + other.x) / 2, (event.clientY + other.y) / 2)
  }

  const onUp = (event: PointerEvent): void => { pointers.delete(event.pointerId) }

  /** The click that ends a drag chooses nothing. */
  function onClick(event: MouseEvent): void {
    if (!dragged) return
    dragged = false
    event.stopPropagation()
  }

  const onDouble = (event: MouseEvent): void => { if (!isControl(event)) hands.fit() }

  function onKey(event: KeyboardEvent): void {
    if (event.target !== sheet || event.ctrlKey || event.metaKey || event.altKey) return
    if (hands.key(event.key)) event.preventDefault()
  }

  const leave = new AbortController()
  const { signal } = leave
  sheet.addEventListener('wheel', onWheel, { signal, passive: false })
  sheet.addEventListener('pointerdown', onDown, { signal })
  sheet.addEventListener('pointermove', onMove, { signal })
  sheet.addEventListener('pointerup', onUp, { signal })
  sheet.addEventListener('pointercancel', onUp, { signal })
  sheet.addEventListener('click', onClick, { signal, capture: true })
  sheet.addEventListener('dblclick', onDouble, { signal })
  sheet.addEventListener('keydown', onKey, { signal })
  return () => leave.abort()
}
