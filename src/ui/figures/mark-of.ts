/** How a figure is marked and written, for HTML and SVG alike: the number in full beside what is shown of it. */
import { inUnit } from '../../core/quantity'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import { showNumber } from '../words/format'
import type { UnitSystem } from '../words/unit-systems'
import { inSystem } from '../words/unit-systems'
import { unitSuffix } from '../words/unit-words'

export interface Mark {
  /** Spread onto the element that holds `text`. */
  readonly attributes: {
    readonly 'data-figure': string
    readonly 'data-value': number
    readonly 'data-unit': string
    readonly 'data-decimals': number
  }
  readonly text: string
  /** Space and unit. */
  readonly suffix: string
}

export function markOf<D extends Dimension>(
  name: string,
  of: Quantity<D>,
  unit: UnitOf<D>,
  decimals: number,
  system: UnitSystem,
): Mark {
  const shown = inSystem(unit, decimals, system)
  const n = inUnit(of, shown.unit)
  return {
    attributes: { 'data-figure': name, 'data-value': n, 'data-unit': shown.unit, 'data-decimals': shown.decimals },
    text: showNumber(n, shown.decimals),
    suffix: unitSuffix(shown.unit),
  }
}
