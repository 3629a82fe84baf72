/** `count` evenly spaced numbers from `from` to `to`, both included. */
export const sweep = (from: number, to: number, count = 41): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))
