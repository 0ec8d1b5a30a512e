declare module 'jstat' {
  const jStat: {
    readonly studentt: { readonly inv: (probability: number, freedom: number) => number }
    readonly normal: {
      readonly inv: (probability: number, mean: number, deviation: number) => number
      readonly cdf: (x: number, mean: number, deviation: number) => number
      readonly pdf: (x: number, mean: number, deviation: number) => number
    }
  }
  export default jStat
}
