/** Ticks in as many decimals as it takes to tell each one truly. */
import { showNumber } from '../../words/format'

const FINEST = 6

export function tickTexts(ticks: readonly number[]): readonly string[] {
  const told = (decimals: number) => ticks.every((tick) => Math.abs(tick - Number(tick.toFixed(decimals))) < 1e-9)
  let decimals = 0
  while (decimals < FINEST && !told(decimals)) decimals += 1
  return ticks.map((tick) => showNumber(tick, decimals))
}
