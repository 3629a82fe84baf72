/** The parts of jstat (an oracle, in tests only) that the tests call; the package ships no types. */
declare module 'jstat' {
  interface Distribution<A extends number[]> {
    cdf(x: number, ...parameters: A): number
    inv(p: number, ...parameters: A): number
  }
  export const jStat: {
    readonly normal: Distribution<[mean: number, sd: number]>
    readonly studentt: Distribution<[degrees: number]>
    readonly chisquare: Distribution<[degrees: number]>
    gammaln(x: number): number
    ibeta(x: number, a: number, b: number): number
  }
}
