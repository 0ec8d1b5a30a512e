import { value, type Value } from './basis'

/** How far a weight read off a kitchen scale may be out, kg. */
export const SCALE_STEP: Value = value(0.001, 'kg', 'common practice', 'kitchen scales step by a gram')

/** How far a length of cord laid out by hand may be out, as a share of it. */
export const LENGTH_DOUBT: Value = value(0.01, '1', 'common practice', 'a judgement: soft cord pulled straight, not stretched, along a tape')
