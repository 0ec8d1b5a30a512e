import type { LinkCode, LinkResult } from './linkResult'
import { connectorLink } from './links/connectorLink'
import { bracketLink } from './links/bracketLink'
import { cradleLink } from './links/cradleLink'
import { fixingLink } from './links/fixingLink'
import { gatheringGripLink } from './links/gatheringGripLink'
import { gatheringTurnLink } from './links/gatheringTurnLink'
import { hookLink } from './links/hookLink'
import { hookShankLink } from './links/hookShankLink'
import { legLink } from './links/legLink'
import { loadLink } from './links/loadLink'
import { panelLegLink } from './links/panel/panelLegLink'
import { panelSeatLink } from './links/panel/panelSeatLink'
import { panelTurnLink } from './links/panel/panelTurnLink'
import { pinLink } from './links/pinLink'
import { ringCordLink } from './links/ringCordLink'
import { ringLink } from './links/ringLink'
import { seatLink } from './links/seatLink'
import { stickLink } from './links/stickLink'
import { topCordLink } from './links/topCordLink'
import { wrapHoopLink } from './links/wrapHoopLink'
import type { Solved } from './solved'
import { ofEachTier, seatOfEachTier } from './tiers/tierLinks'

const isPanel = ({ geometry }: Solved): boolean => geometry.panel !== null

/** Every link of the load path, from the building down to the pot, with the function that checks it. */
export const LOAD_PATH: Readonly<Record<LinkCode, (solved: Solved) => readonly LinkResult[]>> = {
  fixing: fixingLink,
  bracket: bracketLink,
  pin: pinLink,
  hook: hookLink,
  hookShank: hookShankLink,
  connector: connectorLink,
  topCord: topCordLink,
  stick: stickLink,
  ringCord: ringCordLink,
  ring: ringLink,
  leg: ofEachTier((solved) => (isPanel(solved) ? panelLegLink : legLink)(solved)),
  cradle: ofEachTier(cradleLink),
  seat: seatOfEachTier((solved) => (isPanel(solved) ? panelSeatLink : seatLink)(solved)),
  gatheringTurn: ofEachTier((solved) => (isPanel(solved) ? panelTurnLink : gatheringTurnLink)(solved)),
  wrapHoop: ofEachTier(wrapHoopLink),
  gatheringGrip: ofEachTier(gatheringGripLink),
  load: loadLink,
}
