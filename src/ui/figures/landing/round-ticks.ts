/**
 * Round numbers between two ends, about `count` of them, a step of 1, 2 or 5 times a power of ten apart. The landing stands
 * on every page of a job and needs no more of a chart's scale than this; the library's would weigh 9 kB.
 */
export function roundTicks(low: number, high: number, count: number): readonly number[] {
  const rough = (high - low) / count
  if (!(rough > 0) || !Number.isFinite(rough)) return []
  const power = 10 ** Math.floor(Math.log10(rough))
  const share = rough / power // 1 to 10; the nearest of the round ones, by ratio
  const step = power * (share < Math.sqrt(2) ? 1 : share < Math.sqrt(10) ? 2 : share < Math.sqrt(50) ? 5 : 10)
  const first = Math.ceil(low / step)
  const decimals = Math.max(0, -Math.floor(Math.log10(step)))
  return Array.from({ length: Math.floor(high / step) - first + 1 }, (_, i) =>
    Number(((first + i) * step).toFixed(decimals)),
  )
}
