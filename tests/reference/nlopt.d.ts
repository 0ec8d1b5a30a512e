// nlopt-js brings no types; these are of the few parts used.
declare module 'nlopt-js' {
  type Value = (x: readonly number[], gradient: number[] | null) => number
  interface Optimiser {
    setMinObjective(f: Value, tolerance: number): void
    addInequalityConstraint(f: Value, tolerance: number): void
    setMaxeval(most: number): void
    optimize(start: readonly number[]): { readonly success: boolean; readonly x: readonly number[]; readonly value: number }
  }
  const nlopt: {
    readonly ready: Promise<void>
    readonly Optimize: new (algorithm: number, unknowns: number) => Optimiser
    readonly Algorithm: { readonly LD_SLSQP: number }
    readonly GC: { flush(): void }
  }
  export default nlopt
}
