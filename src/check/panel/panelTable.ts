import type { PanelShare, Solved } from '../solved'

/** One way of tying a wall planter, with the push of the wall in all; shares of the weight. */
export type PanelRow = PanelShare & { readonly wall: number | null }

/** Who bears the weight just watered as drawn, and with the strands in front longer and shorter; none of any other hanger. */
export const panelTable = ({ panel }: Pick<Solved, 'panel'>): readonly PanelRow[] =>
  (panel?.shares ?? []).map((share) => ({ ...share, wall: share.wallAtRim === null || share.wallAtBase === null ? null : share.wallAtRim + share.wallAtBase }))
