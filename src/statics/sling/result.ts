import type { Newtons, Radians } from '../../quantity/si'

export type Vec3 = readonly [number, number, number]
/** Three rows of a rotation matrix. */
export type Rotation = readonly [Vec3, Vec3, Vec3]

/**
 * What may touch a wall: a horizontal circle of the pot (rim or base edge) with its centre on the pot's
 * axis at height z, or one of its corners. Pot frame, m.
 */
export type Contact =
  | { readonly type: 'circle'; readonly z: number; readonly r: number }
  | { readonly type: 'corner'; readonly at: Vec3 }

/** A wall n.x = d; the pot is on the side n.x <= d and is pushed back along -n. n need not be of unit length. */
export interface Wall {
  readonly n: Vec3
  readonly d: number
  readonly contacts: readonly Contact[]
}

/**
 * A rigid pot on elastic strands that can only pull. SI units: m, N, kg.
 * World frame with z upward; pot frame with its origin at the centre of the base and z along the axis.
 */
export interface SlingInput {
  /** Upper ends of the legs, world frame, m; at least three. */
  readonly A: readonly Vec3[]
  /** Lower ends of the legs, fixed to the pot, pot frame, m. */
  readonly B: readonly Vec3[]
  /** Lengths of the legs without load, m. */
  readonly L0: readonly number[]
  /** Axial stiffnesses of the legs, N: tension over strain. */
  readonly EA: readonly number[]
  readonly mass: number
  /** Centre of gravity, pot frame, m. */
  readonly cg: Vec3
  /** Length that turns rotations into displacements when stiffnesses are compared, m: about the pot's radius. */
  readonly ell: number
  /** Acceleration of free fall, m/s2. */
  readonly gravity: number
  readonly wall: Wall | null
}

export type SlingErrorCode =
  | 'TOO_FEW_LEGS'
  | 'NOT_FINITE'
  | 'BAD_MASS'
  | 'BAD_LENGTH'
  | 'ZERO_STIFFNESS'
  | 'ATTACHMENTS_COINCIDE'
  | 'ATTACHMENTS_COLLINEAR'
  | 'UNREACHABLE'

/** A position of balance, stable or not. */
export interface Balance {
  /** Tension of each leg, N. */
  readonly T: readonly Newtons[]
  /** Legs that carry less than 1e-9 of the weight. */
  readonly slack: readonly boolean[]
  /** Angle between the pot's axis and the vertical. */
  readonly tiltRadians: Radians
  /** Centre of gravity, world frame, m. */
  readonly cg: Vec3
  /** Turns pot-frame vectors into the world frame. */
  readonly R: Rotation
  /** Force of the wall on each contact, N; empty without a wall. */
  readonly wallN: readonly Newtons[]
  /**
   * Stiffnesses against small displacements of the centre of gravity and turns times ell, N/m, rising;
   * six, less one for each loaded wall contact. Negative: unstable.
   */
  readonly eigenvalues: readonly number[]
  /** The lowest of them that is not zero. */
  readonly eigMinNonzero: number
  /** How many are negative. */
  readonly negative: number
  /** The only zero one belongs to turning about a line through all hanging points: the vertical through a hook, or the pot's own axis where a round pot leans. */
  readonly zeroIsSymmetry: boolean
  readonly stable: boolean
}

/** Remainder of the equations: the greater of force over weight and moment over weight times ell. */
interface Effort {
  readonly residualRel: number
  readonly iterations: number
}

export type SlingRestStatus = 'OK' | 'OK_WITH_SLACK' | 'OK_NEUTRAL_TWIST' | 'LOST_SUPPORT'

/** A stable rest; with LOST_SUPPORT fewer than three legs carry in it. */
export interface SlingRest extends Balance, Effort {
  readonly status: SlingRestStatus
}

/** The upright position is not stable. `upright`: the balance that will not last, null if none was found near. */
export interface SlingUnstable extends Effort {
  readonly status: 'UNSTABLE'
  readonly stable: false
  readonly upright: Balance | null
}

/**
 * Why no balance was found. STEPS: the most steps were used up, with softened legs too. WALL: there is a
 * rest without the wall, but none was found against it. NUMBERS: they are too large or small to compute with.
 */
export type NotConvergedReason = 'STEPS' | 'WALL' | 'NUMBERS'

/** No balance was found; nothing may be concluded. `residualRel` is null if it could not be computed. */
export interface SlingNotConverged {
  readonly status: 'NOT_CONVERGED'
  readonly reason: NotConvergedReason
  readonly residualRel: number | null
  readonly iterations: number
}

/** The input cannot be a hanger. */
export interface SlingError {
  readonly status: 'ERROR'
  readonly error: SlingErrorCode
}

export type SlingResult = SlingRest | SlingUnstable | SlingNotConverged | SlingError
