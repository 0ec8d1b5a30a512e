/** Supports that nothing is hung from, whatever the numbers say. */
export const REFUSED_SUPPORTS = [
  'ceilingTileOrGrid', 'plasterboardCeiling', 'lightingBox', 'sprinkler', 'gasOrHeatingPipe', 'duct', 'furringOrResilientChannel', 'chipboard', 'trim',
  'tensionRod', 'curtainRod', 'showerRod', 'towelRod', 'postTensionedSlab', 'unknownSupport',
] as const
export type RefusedSupport = (typeof REFUSED_SUPPORTS)[number]

/** Fixings that are not trusted with a pot for good, each in the use that is refused. */
export const REFUSED_FIXINGS = [
  'adhesiveHook', 'magneticHook', 'resinAnchorOverhead', 'plasticPlugOverhead', 'screwInEndGrain', 'nailInEndGrain', 'smoothNailPulledOut', 'unweldedRingOverPeople', 'openHookOverPeople',
] as const
export type RefusedFixing = (typeof REFUSED_FIXINGS)[number]

export type Refusal = RefusedSupport | RefusedFixing

/**
 * What lifts a refusal, where anything does: `ratedForIt` the maker's own rating for this very use,
 * `bracketRated` a rating of the rod's bracket, `scanned` the slab scanned by someone who may drill it,
 * `foundOut` knowing what it is; null: nothing.
 */
export const REFUSAL_LIFTED_BY: Readonly<Record<Refusal, 'ratedForIt' | 'bracketRated' | 'scanned' | 'foundOut' | null>> = {
  ceilingTileOrGrid: null, plasterboardCeiling: null, lightingBox: null, sprinkler: null, gasOrHeatingPipe: null, duct: null, furringOrResilientChannel: null, chipboard: null, trim: null,
  tensionRod: null, curtainRod: 'bracketRated', showerRod: 'bracketRated', towelRod: 'bracketRated', postTensionedSlab: 'scanned', unknownSupport: 'foundOut',
  adhesiveHook: null, magneticHook: null, resinAnchorOverhead: null, plasticPlugOverhead: 'ratedForIt', screwInEndGrain: null, nailInEndGrain: null, smoothNailPulledOut: null,
  unweldedRingOverPeople: null, openHookOverPeople: null,
}
