import { aboveView, frontView, sideView, type CaseCode, type CheckResult, type Drawing } from '#core'

/** From where the hanger can be looked at. */
export type ViewCode = 'front' | 'side' | 'above'

/** What is laid on the sheet: one view by itself, or together as many as there is room for. */
export const VIEW_CHOICES = ['together', 'front', 'side', 'above'] as const

export type ViewChoice = (typeof VIEW_CHOICES)[number]

/** Draws one view. */
export const VIEWS: Readonly<Record<ViewCode, (check: CheckResult, situation: CaseCode) => Drawing>> = {
  front: frontView,
  side: sideView,
  above: aboveView,
}

/** A sheet at least this wide over its height, and this wide, px, has room for the side view beside the front. */
const WIDE = 1.15
const ROOMY = 640

/** The views a sheet of this size shows, the leading one first. */
export function viewsShown(choice: ViewChoice, frame: { readonly width: number, readonly height: number }): readonly ViewCode[] {
  if (choice !== 'together') return [choice]
  return frame.width >= ROOMY && frame.width >= WIDE * frame.height ? ['front', 'side', 'above'] : ['front', 'above']
}
