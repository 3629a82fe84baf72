/** What every marked figure of a build's page and of a part's page must be, worked out by the core from the exported record. */
import type { ArrowBuilt } from '@/domain/bench/built'
import { planAndBuilt } from '@/domain/book/plan-and-built'
import type { Sheet } from '@/domain/sheet/sheet'
import type { Lot } from '@/domain/stock/lot'
import { lotExpectation } from '@/domain/stock/lot-expectation'
import { lotStatistics } from '@/domain/stock/lot-statistics'
import type { LotView } from '@/domain/stock/lot-view'
import type { Part } from '@/domain/stock/part'
import { adder } from './figure-adder'
import type { ExpectedFigures } from './figure-adder'

/** A build in the Book: what was planned of each data point, and how far off the arrows are in the mean. */
export function buildFigures(sheet: Sheet, arrows: readonly ArrowBuilt[]): ExpectedFigures {
  const accepted = arrows.filter(({ outcome }) => outcome === 'accepted')
  return new Map(
    planAndBuilt(sheet, accepted).flatMap(({ point, planned, half, off }) =>
      [
        [`book.${point}.planned`, planned] as const,
        [`book.${point}.half`, half] as const,
        [`book.${point}.off`, off] as const,
      ].flatMap(([name, value]) => (value === undefined ? [] : [[name, [value]] as const])),
    ),
  )
}

/** A part's page: what the next piece of each lot should weigh, and what those on the scale came to. */
export function lotFigures(part: Part, lots: readonly (readonly [Lot, LotView | undefined])[]): ExpectedFigures {
  const figures: ExpectedFigures = new Map()
  const add = adder(figures)
  for (const [lot, view] of lots) {
    const name = `lot.${lot.code}`
    const expected = lotExpectation(part, view)
    if (expected.ok) add.of(`${name}.expected`, expected.value.estimate, 'gr')
    const { statistics, keeps } = lotStatistics(part, view ?? { weighed: [] })
    if (statistics.ok) {
      add.one(`${name}.mean`, statistics.value.mean, 'gr')
      add.one(`${name}.spread`, statistics.value.spread, 'gr')
      if (statistics.value.sd !== undefined) add.one(`${name}.sd`, statistics.value.sd, 'gr')
    }
    if (keeps?.ok) add.of(`${name}.cpk`, { min: keeps.value.cpkLow, max: keeps.value.cpkHigh }, '1')
  }
  return figures
}
