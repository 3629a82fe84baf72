/** Something measured on its own, held to numbers that do not depend on the machine where it can be, and to time where not. */
export interface Measure {
  readonly name: string
  readonly take: () => Measured | Promise<Measured>
}
export interface Measured {
  /** The figures, as a line to print. */
  readonly said: string
  /** What is over its limit; nothing when all holds. */
  readonly over: readonly string[]
}

/** The figure against its limit, for `over`. */
export const overLimit = (what: string, is: number, atMost: number): string[] =>
  is <= atMost ? [] : [`${what} ${is.toPrecision(4)}, at most ${atMost}`]
