/** Trade and metric view: which unit stands in for which, and with how many decimals more or less. */
import type { EntryUnit } from '../../domain/entry/unit-names'

export type UnitSystem = 'trade' | 'metric'

/** trade unit → its metric stand-in and the change in decimals that keeps about the same fineness. */
const METRIC: Partial<Record<EntryUnit, readonly [EntryUnit, number]>> = {
  gr: ['g', 1],
  lb: ['kg', 1],
  in: ['mm', -1],
  ft: ['m', 1],
  yd: ['m', 0],
  'ft/s': ['m/s', 0],
  ft·lbf: ['J', 0],
  'slug·ft/s': ['kg·m/s', -1],
  lbf: ['N', -1],
  'lbf·in²': ['N·m²', 2],
  'gr/in': ['g/m', -1],
  'gr/lb': ['g/N', 2],
  '°F': ['°C', 0],
}

export interface ShownUnit<U extends EntryUnit = EntryUnit> {
  readonly unit: U
  readonly decimals: number
}

/** The unit a figure is shown in; what has no stand-in (degrees, percent, thousandths of spine) stays. */
export function inSystem<U extends EntryUnit>(unit: U, decimals: number, system: UnitSystem): ShownUnit<U> {
  const metric = METRIC[unit]
  if (system === 'trade' || metric === undefined) return { unit, decimals }
  return { unit: metric[0] as U, decimals: Math.max(0, decimals + metric[1]) }
}

/** The same unit's stand-in in the other system, for a working that lists both. */
export function counterpart(unit: EntryUnit): EntryUnit | undefined {
  const metric = METRIC[unit]
  if (metric !== undefined) return metric[0]
  const trade = Object.entries(METRIC).find(([, [other]]) => other === unit)
  return trade?.[0] as EntryUnit | undefined
}
