import type { Balance, SlingResult } from '../statics/sling/result'

const degrees = (radians: number): number => (radians * 180) / Math.PI

const balanceJson = (balance: Balance): object => ({
  T: balance.T,
  slack: balance.slack,
  tilt_deg: degrees(balance.tiltRadians),
  cg: balance.cg,
  wall_N: balance.wallN,
  eig_min_nonzero: balance.eigMinNonzero,
  negative: balance.negative,
  zero_is_symmetry: balance.zeroIsSymmetry,
})

const NOTHING = {
  T: null, slack: null, tilt_deg: null, cg: null, wall_N: null, eig_min_nonzero: null, negative: null, zero_is_symmetry: null,
  stable: null, upright: null, error: null, residual_rel: null,
}

/** The answer of the sling solver with the keys and units of the command line: N, m, degrees, N/m; null where there is none. */
export function slingJson(result: SlingResult): object {
  switch (result.status) {
    case 'ERROR': return { ...NOTHING, status: result.status, error: result.error }
    case 'NOT_CONVERGED': return { ...NOTHING, status: result.status, residual_rel: result.residualRel }
    case 'UNSTABLE': return { ...NOTHING, status: result.status, stable: false, upright: result.upright === null ? null : balanceJson(result.upright), residual_rel: result.residualRel }
    case 'OK': case 'OK_WITH_SLACK': case 'OK_NEUTRAL_TWIST': case 'LOST_SUPPORT': return { ...NOTHING, ...balanceJson(result), status: result.status, stable: result.stable, residual_rel: result.residualRel }
  }
}
