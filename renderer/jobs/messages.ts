import type { WritingHabits } from '#core'
import type { JobName } from './jobs'

/** To the worker. Several jobs may run; each is called off by its number. */
export type JobQuestion =
  | { readonly kind: 'job', readonly id: number, readonly name: JobName, readonly asked: unknown, readonly habits: WritingHabits }
  | { readonly kind: 'callOff', readonly id: number }

/** From the worker. Steps that came close together come together. */
export type JobReply =
  | { readonly kind: 'steps', readonly id: number, readonly steps: readonly unknown[] }
  | { readonly kind: 'answer', readonly id: number, readonly answer: unknown }
  | { readonly kind: 'failed', readonly id: number, readonly detail: string }
