import type { SlingErrorCode, SlingInput, Vec3 } from './result'

const LEAST_LEGS = 3
/** Attachments closer to one point or one line than this share of their spread carry no load there. */
const COLLINEAR_SHARE = 1e-7

function distance(a: Vec3, b: Vec3): number {
  const x = a[0] - b[0]
  const y = a[1] - b[1]
  const z = a[2] - b[2]
  return Math.sqrt(x * x + y * y + z * z)
}

const finite = (v: Vec3): boolean => Number.isFinite(v[0]) && Number.isFinite(v[1]) && Number.isFinite(v[2])

/** The first reason why the input cannot be a hanger, or null. */
export function slingError(input: SlingInput): SlingErrorCode | null {
  const { A, B, L0, EA, mass, gravity, ell, wall } = input
  if (A.length < LEAST_LEGS) return 'TOO_FEW_LEGS'
  if (!everyNumberGiven(input)) return 'NOT_FINITE'
  if (!(mass > 0) || !(gravity > 0)) return 'BAD_MASS'
  if (!(ell > 0) || !L0.every((length) => length > 0)) return 'BAD_LENGTH'
  if (wall && (!(Math.hypot(...wall.n) > 0) || wall.contacts.some((c) => c.type === 'circle' && c.r < 0))) return 'BAD_LENGTH'
  if (!EA.every((stiffness) => stiffness > 0)) return 'ZERO_STIFFNESS'
  return attachmentError(B) ?? (reachable(A, B, L0) ? null : 'UNREACHABLE')
}

function everyNumberGiven({ A, B, L0, EA, mass, cg, ell, gravity, wall }: SlingInput): boolean {
  const legs = A.length
  return (
    B.length === legs && L0.length === legs && EA.length === legs &&
    A.every(finite) && B.every(finite) && L0.every(Number.isFinite) && EA.every(Number.isFinite) &&
    Number.isFinite(mass) && Number.isFinite(ell) && Number.isFinite(gravity) && finite(cg) &&
    (wall === null || (finite(wall.n) && Number.isFinite(wall.d) && wall.contacts.every((c) => (c.type === 'circle' ? Number.isFinite(c.z) && Number.isFinite(c.r) : finite(c.at)))))
  )
}

function attachmentError(B: readonly Vec3[]): SlingErrorCode | null {
  const first = B[0]!
  let far = first
  for (const point of B) if (distance(first, point) > distance(first, far)) far = point
  const spread = distance(first, far)
  if (!(spread > 0)) return 'ATTACHMENTS_COINCIDE'
  const along = [(far[0] - first[0]) / spread, (far[1] - first[1]) / spread, (far[2] - first[2]) / spread] as const
  for (const point of B) {
    const x = point[0] - first[0]
    const y = point[1] - first[1]
    const z = point[2] - first[2]
    const off = Math.hypot(y * along[2] - z * along[1], z * along[0] - x * along[2], x * along[1] - y * along[0])
    if (off > COLLINEAR_SHARE * spread) return null
  }
  return 'ATTACHMENTS_COLLINEAR'
}

/** Whether each two legs can meet through the pot: |Ai - Aj| <= Li + Lj + |Bi - Bj|. */
function reachable(A: readonly Vec3[], B: readonly Vec3[], L0: readonly number[]): boolean {
  for (let i = 1; i < A.length; i++) {
    for (let j = 0; j < i; j++) {
      if (distance(A[i]!, A[j]!) > L0[i]! + L0[j]! + distance(B[i]!, B[j]!)) return false
    }
  }
  return true
}
