import type { WoodCode } from '../catalogue/woods'

/** What the woods of the table are called. */
export const WOOD_NAMES: Readonly<Record<WoodCode, string>> = {
  yellowBirch: 'yellow birch', paperBirch: 'paper birch', sweetBirch: 'sweet birch', sugarMaple: 'sugar maple (hard maple)', redMaple: 'red maple (soft maple)',
  northernRedOak: 'northern red oak', southernRedOak: 'southern red oak', whiteOak: 'white oak', americanBeech: 'American beech', whiteAsh: 'white ash',
  yellowPoplar: 'yellow poplar (tulipwood)', basswood: 'basswood (lime)', quakingAspen: 'quaking aspen', blackWalnut: 'black walnut', shagbarkHickory: 'shagbark hickory',
  easternWhitePine: 'eastern white pine', loblollyPine: 'loblolly pine', longleafPine: 'longleaf pine', ponderosaPine: 'ponderosa pine', douglasFir: 'Douglas-fir, coast',
  sitkaSpruce: 'Sitka spruce', whiteSpruce: 'white spruce', engelmannSpruce: 'Engelmann spruce', westernRedcedar: 'western redcedar',
}
