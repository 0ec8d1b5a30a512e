/** What the weight is made of; names in words/names.ts. `weighed`: pot, mix and plant as they stood on the scale. */
export const WEIGHT_PARTS = ['weighed', 'pot', 'layer', 'mix', 'topping', 'plant', 'rain', 'reservoir', 'standingWater', 'saucer', 'coverPot', 'hanger'] as const
export type WeightPart = (typeof WEIGHT_PARTS)[number]
