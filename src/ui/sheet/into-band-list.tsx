/** What would bring the reserve into its band: any one of these, the rest of the sheet as it is. */
import { useDeferredValue, useMemo } from 'react'
import type { CutFigures } from '../../domain/sheet/cut-figures'
import { intoBand } from '../../domain/sheet/into-band'
import type { Sheet } from '../../domain/sheet/sheet'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import { Figure, FigureList } from '../figures/figure'
import { INTO_BAND_WORDS } from '../words/sheet-words'
import look from './sheet-page.module.css'

interface IntoBandListProps {
  sheet: Sheet
  worked: SheetFigures
  cut: CutFigures | undefined
}

export function IntoBandList({ sheet, worked, cut }: IntoBandListProps) {
  // Each way is a search over whole sheets: the figures themselves do not wait for it.
  const late = { sheet: useDeferredValue(sheet), worked: useDeferredValue(worked), cut: useDeferredValue(cut) }
  const ways = useMemo(() => intoBand(late.sheet, late.worked, late.cut), [late.sheet, late.worked, late.cut])
  if (ways === undefined) return null
  const { way, c2c, spine, head, isClear } = ways
  const words = INTO_BAND_WORDS[way]
  return (
    <section className={look.intoBand} aria-label={INTO_BAND_WORDS.title}>
      <p>{INTO_BAND_WORDS.title}</p>
      <FigureList columns={2}>
        <Figure
          name="sheet.intoBand.spine"
          label={words.spine}
          of={spine}
          unit="in"
          decimals={3}
          missing={INTO_BAND_WORDS.alone}
        />
        <Figure
          name="sheet.intoBand.c2c"
          label={words.c2c}
          of={c2c}
          unit="in"
          decimals={2}
          note={isClear === false ? INTO_BAND_WORDS.notClear : undefined}
          missing={INTO_BAND_WORDS.alone}
        />
        <Figure
          name="sheet.intoBand.head"
          label={words.head}
          of={head}
          unit="gr"
          decimals={0}
          missing={INTO_BAND_WORDS.alone}
        />
      </FigureList>
    </section>
  )
}
