import { computed, onBeforeUnmount, onMounted, shallowRef, watch, type ComputedRef, type ShallowRef } from 'vue'
import type { Box } from './box'
import { gazeShowing, heldGaze, magnifiedGaze, movedGaze, wholeGaze, windowOf, type Gaze, type Spot } from './gaze'
import { listenToHands } from './hands'

/** Largest magnification, px for each millimetre drawn: knots and wires as large as in the hand, twice over. */
const MOST = 8

/** How much one press of a button or key magnifies, and what share of the window an arrow key moves. */
const STEP = 1.4
const STRIDE = 0.12

/**
 * Looking closer at a picture on a sheet: with Ctrl and the wheel or by pinching at the spot, by dragging, by keys
 * and buttons; a double click shows all of it. While all is seen the wheel is left to the page.
 *
 * @param whole all of the picture, of the sheet's shape, mm
 * @param scale pixels for each millimetre when all of it is seen
 */
export function useGaze(sheet: Readonly<ShallowRef<HTMLElement | null>>, whole: ComputedRef<Box>, scale: ComputedRef<number>) {
  const asked = shallowRef<Gaze | null>(null)
  const most = computed(() => Math.max(4, MOST / scale.value))
  const gaze = computed(() => (asked.value === null ? wholeGaze(whole.value) : heldGaze(asked.value, whole.value, most.value)))
  const shown = computed(() => windowOf(gaze.value, whole.value))
  const isWhole = computed(() => gaze.value.magnified === 1)

  const set = (next: Gaze): void => { asked.value = next.magnified === 1 ? null : next }
  const middle = (): Spot => ({ x: gaze.value.x, y: gaze.value.y })
  const magnify = (factor: number, spot: Spot): void => set(magnifiedGaze(gaze.value, factor, spot, whole.value, most.value))
  const fit = (): void => { asked.value = null }
  /** Moves the window; false where it is at the edge already. */
  function move(dx: number, dy: number): boolean {
    const before = gaze.value
    set(movedGaze(before, dx, dy, whole.value, most.value))
    return gaze.value.x !== before.x || gaze.value.y !== before.y
  }

  /** The spot of the picture under a point of the window. */
  function spotAt(clientX: number, clientY: number): Spot {
    const box = sheet.value?.getBoundingClientRect()
    if (box === undefined || box.width === 0 || box.height === 0) return middle()
    const { x, y, width, height } = shown.value
    return { x: x + ((clientX - box.left) / box.width) * width, y: y + ((clientY - box.top) / box.height) * height }
  }
  const perPixel = (): number => shown.value.width / Math.max(1, sheet.value?.getBoundingClientRect().width ?? 1)

  const keys: Readonly<Record<string, () => boolean>> = {
    '+': () => { magnify(STEP, middle()); return true },
    '=': () => { magnify(STEP, middle()); return true },
    '-': () => { magnify(1 / STEP, middle()); return true },
    '0': () => { fit(); return true },
    ArrowLeft: () => move(-STRIDE * shown.value.width, 0),
    ArrowRight: () => move(STRIDE * shown.value.width, 0),
    ArrowUp: () => move(0, -STRIDE * shown.value.height),
    ArrowDown: () => move(0, STRIDE * shown.value.height),
  }

  let deaf: (() => void) | null = null
  onMounted(() => {
    if (sheet.value === null) return
    deaf = listenToHands(sheet.value, {
      isWhole: () => isWhole.value,
      magnify: (factor, clientX, clientY) => magnify(factor, spotAt(clientX, clientY)),
      move: (dx, dy) => move(dx * perPixel(), dy * perPixel()),
      fit,
      key: (name) => keys[name]?.() ?? false,
    })
  })
  onBeforeUnmount(() => deaf?.())
  // Another picture is looked at as a whole first; the same one, changed, from where it was looked at.
  const restartOn = (other: () => unknown): void => { watch(other, fit) }

  return {
    shown, isWhole, fit, restartOn,
    isClosest: computed(() => gaze.value.magnified >= most.value),
    closer: () => magnify(STEP, middle()),
    further: () => magnify(1 / STEP, middle()),
    /** Moves the window until a spot is seen. */
    bring: (spot: Spot) => set(gazeShowing(gaze.value, spot, 0.1, whole.value, most.value)),
  }
}
