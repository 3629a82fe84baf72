/** An arrow that came back on the scale: the bench's own taking of a reading, with its questions about a slip. */
import { useState } from 'react'
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import { benchScale } from '../../domain/bench/bench-scale'
import type { Reading } from '../../domain/bench/reading'
import { takeReading } from '../../domain/bench/take-reading'
import { takingAt } from '../../domain/bench/taking-at'
import type { Sheet } from '../../domain/sheet/sheet'
import { useAppStore } from '../app/use-app'
import { refusedWords, slipWords } from '../words/bench-words'

type Weighed =
  | { readonly kind: 'none' }
  | { readonly kind: 'said'; readonly said: string }
  | { readonly kind: 'taken'; readonly reading: Reading }

const POINT = 'finishedWeight'

/** @param lastGr what it weighed before: far from it, unit and decimal point are asked about; a second press means it */
export function useWeigh({
  bench,
  arrow,
  sheet,
  lastGr,
}: {
  bench: Bench
  arrow: BenchArrow
  sheet: Sheet
  lastGr: number | undefined
}) {
  const store = useAppStore()
  const [entry, setEntry] = useState<{ value: number; raw: string }>()
  const [meant, setMeant] = useState<number>()

  function weigh(): Weighed {
    if (entry === undefined) return { kind: 'none' }
    const app = store.getState()
    const taking = takingAt(POINT, arrow, {
      bench,
      // As wide as the weight itself: what a repair adds or takes is no slip.
      expected: lastGr === undefined ? undefined : { value: lastGr, half: lastGr, closure: false },
      heavyGr: sheet.rules.passes.heavyGr,
      scale: benchScale(app.scaleName, app.shelf.rules.scales, sheet.rules.scales),
    })
    const how = { ...taking, source: 'typed', takenAt: app.now() } as const
    // The field has read the unit that was typed or stands beside it.
    const answer = takeReading(String(entry.value), how, meant === entry.value)
    if (answer.kind === 'taken') return { kind: 'taken', reading: { ...answer.reading, raw: entry.raw } }
    if (answer.kind !== 'asked') return { kind: 'said', said: refusedWords('Weight', answer, POINT) }
    setMeant(entry.value)
    return { kind: 'said', said: `${answer.slips.map(slipWords).join(' ')} Press again to keep it as it is.` }
  }
  return { value: entry?.value, setEntry, weigh }
}
