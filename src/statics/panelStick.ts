import { metres, type Metres, type Newtons } from '../quantity/si'
import type { PointLoad } from './beam'
import { panel, type Panel, type PanelInput, type PanelOutcome } from './panel'
import { wallHook, type NoDrop, type WallHook } from './wallHook'

/**
 * The strands' pulls as loads on the panel's stick where they are, each straight above its place at the panel's
 * edge; `length`: of the stick, whose middle is above the pot's.
 * @example onStick([{ across: metres(-0.1), down: newtons(7), out: newtons(1), aside: newtons(2) }], metres(0.5)) // [{ at: 0.15, force: 7 }]
 */
export const onStick = (edge: Panel['edge'], length: Metres): readonly PointLoad[] => edge.map(({ across, down }) => ({ at: metres(length / 2 + across), force: down }))

/** Shares of the weight on the front strands as drawn, and with them longer and shorter; null where there is no rest. */
export interface FrontShares {
  readonly drawn: number | null
  readonly longer: number | null
  readonly shorter: number | null
}

/** How the share moves where the front strands are tied longer or shorter by `tolerance` (statics leaves it open, stiffness and lengths decide). */
export function frontShares(input: PanelInput, tolerance: Metres): FrontShares {
  const shareAt = (longer: number): number | null => {
    const found: PanelOutcome = panel({ ...input, frontLonger: metres(input.frontLonger + longer) })
    return found.ok ? found.frontShare : null
  }
  return { drawn: shareAt(0), longer: shareAt(tolerance), shorter: shareAt(0 - tolerance) }
}

export interface PanelLeanInput {
  readonly weight: Newtons
  /** From the wall: the pot's centre of gravity, and the place on the fixing where the panel hangs, m. */
  readonly centreFromWall: Metres
  readonly projection: Metres
  /** Height of the fixing above the place where the pot touches the wall, and above the panel's lower edge, m. */
  readonly drop: Metres
  readonly edgeBelow: Metres
}

/** The fixing's forces, and how far the panel's lower edge would stand from the wall if it hung as freely as a chain. */
export interface PanelLean {
  readonly ok: true
  readonly fixing: WallHook
  readonly edgeFromWall: Metres
}

/**
 * The whole planter leaning from its fixing: H = W e / L, as wallHook(), and the line of pull from the fixing on which
 * a free edge would lie. The panel's own weight is left out.
 * @example panelLean({ weight: newtons(60), centreFromWall: metres(0.11), projection: metres(0.02), drop: metres(0.45), edgeBelow: metres(0.25) }).edgeFromWall // 0.070
 */
export function panelLean({ weight, centreFromWall, projection, drop, edgeBelow }: PanelLeanInput): PanelLean | NoDrop {
  const fixing = wallHook({ weight, centreFromWall, projection, drop })
  if (!fixing.ok) return fixing
  return { ok: true, fixing, edgeFromWall: metres(projection + edgeBelow * Math.tan(fixing.angle)) }
}
