import { checkVariants, chooseSizes, inputLines, sampleHangers, utilisationMap } from '#core'

/** A job of many checks: takes what is asked, hands over steps, returns the answer. */
type AnyJob = (asked: never) => Generator<unknown, unknown, void>

/** The jobs a worker can be asked to do; each is a generator of the core, so that it can be stopped between two steps. */
export const JOBS = {
  checkVariants,
  chooseSizes,
  inputLines,
  sampleHangers,
  utilisationMap,
} satisfies Readonly<Record<string, AnyJob>>

export type JobName = keyof typeof JOBS
export type Asked<Name extends JobName> = Parameters<(typeof JOBS)[Name]>[0]
export type Step<Name extends JobName> = ReturnType<(typeof JOBS)[Name]> extends Generator<infer S, unknown, void> ? S : never
export type Answered<Name extends JobName> = ReturnType<(typeof JOBS)[Name]> extends Generator<unknown, infer A, void> ? A : never
