/** Seeded random numbers, so that the demo shop is the same shop every time. */

/** Uniform on [0, 1): mulberry32, a small public-domain generator; good enough to scatter weights. */
export function dice(seed: number) {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
  return {
    next,
    bytes: (n: number) => Uint8Array.from({ length: n }, () => Math.floor(next() * 256)),
    /** Normal with this mean and standard deviation (Box and Muller). */
    normal: (mean: number, sd: number) =>
      mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  }
}
export type Dice = ReturnType<typeof dice>
