import type { SlingResult } from '../statics/sling/result'

const degrees = (radians: number): number => (radians * 180) / Math.PI

/** The answer of the sling solver with the keys and units of the command line: N, m, degrees, N/m. */
export function slingJson(result: SlingResult): object {
  if (result.status === 'ERROR') return { status: 'ERROR', error: result.error, T: null, slack: null, tilt_deg: null, cg: null, stable: null, residual_rel: null }
  return result
}
void degrees
