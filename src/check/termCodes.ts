/** Factors on a capacity. */
export const FACTOR_CODES = [
  'effectiveStrands', 'strandsAtWraps', 'wet', 'ageing', 'drainHole', 'duration', 'reserve', 'relaxation', 'atRest', 'forAMoment', 'scatter', 'wetService',
] as const
export type FactorCode = (typeof FACTOR_CODES)[number]

/** Every line that a worked sum may have; names in words/names.ts. */
export const TERM_CODES = [
  ...FACTOR_CODES,
  'demand', 'capacity', 'allowable', 'utilisation', 'holdsLimit',
  'pottedMass', 'hangerMass', 'gravity', 'caseFactor', 'gustSpeed', 'gustPressure', 'potInWind', 'leavesInWind', 'cordsInWind', 'gustForce', 'lightWeight', 'tugPull', 'weight', 'legs', 'legAngle', 'solvedTension', 'leastTension',
  'linearDensity', 'tenacity', 'diameter', 'breakByDiameter',
  'pullTests', 'meanPull', 'pullScatter', 'pullFactor', 'soakedOverDry', 'weighedPiece', 'weighedLength', 'scaleStep', 'lengthDoubt',
  'strandsPerLeg', 'strandsThatCarry', 'efficiency', 'reserveOf', 'durationSlope', 'loadTime', 'testTime',
  'frictionOnPot', 'frictionOnItself', 'turnAngle', 'knotPull', 'slipPull', 'turnIntoWraps', 'lowerPull', 'lowerRelief', 'wraps', 'wrapTension', 'testMass', 'testVolume', 'waterDensity',
  'wire', 'insideWidth', 'meanRadius', 'yieldStress', 'plasticMoment', 'lever', 'sidePull',
  'hookShare', 'rowShare', 'ringRise', 'ringBar', 'ringBending', 'ringSplitting', 'acrossStrength', 'acrossScatter', 'acrossLow',
  'stickDiameter', 'stickHollow', 'stickModulus', 'stickArea', 'stickInertia', 'stickSpan', 'stickStiffness', 'rupture', 'shearStrength', 'grainShare', 'lowShare', 'stickDivisor',
  'bendingStress', 'shearStress', 'momentShare', 'shearPeak', 'shearPart', 'thrustShare', 'topCordLength', 'hookHeight', 'loadOffset', 'bowingThrust', 'stressShare',
  'screwDiameter', 'penetration', 'gravityIndex', 'withdrawalConstant', 'ultimateConstant', 'impliedSafety', 'endGrain', 'endGrainAcross',
  'othersMass', 'placeLoad', 'pullOut', 'along', 'fixings', 'countedFixings', 'widestRadius', 'leanDrop', 'reach', 'screws', 'pivotRise', 'highestScrew', 'leverSquares', 'middleLever', 'middleSquares',
  'pullOutRating', 'shearShare', 'alongCapacity', 'plugHole', 'boardBetween', 'leverInAll', 'armThick', 'armHigh', 'endWeight', 'asidePull', 'asideDown', 'plateWide', 'proofMass', 'anchorDepth', 'coneConstant', 'concreteStrength', 'coneBound',
  'lateralConstant', 'acrossGrain', 'countedDiameter', 'overLimit', 'lateralDepth', 'rootDiameter', 'bendingYield', 'bearingConstant', 'bearingPower', 'bearingPerLength', 'yieldReduction',
  'knotsHeight', 'tiltByHand', 'gatheredStrands', 'bundlePacking', 'rowsApart', 'centreHeight', 'centreMargin', 'leaveHeight', 'slidingLimit', 'leaveRadius', 'baseRadius', 'freeLength', 'rise', 'slidingRatio', 'weightHeld', 'dropHeight', 'strain', 'lockedLimit', 'seatOffset', 'frictionShare', 'behindPot', 'cornerPull', 'knotLoad', 'knotSpacing', 'firstKnots', 'widestRow',
] as const
export type TermCode = (typeof TERM_CODES)[number]
