/** The finished arrow in figures, each opening to its working. */
import { lazy, Suspense } from 'react'
import type { CutFigures } from '../../domain/sheet/cut-figures'
import type { Sheet } from '../../domain/sheet/sheet'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import { Panel } from '../controls/panel'
import { Figure, FigureList } from '../figures/figure'
import { provenanceWords } from '../words/provenance-words'

// Wanted only by a reserve outside its band.
const IntoBandList = lazy(async () => ({ default: (await import('./into-band-list')).IntoBandList }))

const OUTSIDE: ReadonlySet<string> = new Set(['reserve-below-band', 'reserve-above-band'])

interface FiguresPanelProps {
  sheet: Sheet
  worked: SheetFigures
  cut: CutFigures | undefined
  was: SheetFigures | undefined
}

export function FiguresPanel({ sheet, worked, cut, was }: FiguresPanelProps) {
  const { figures } = worked
  const before = was?.figures
  if (figures === undefined) return null
  const isOutside = figures.columnReserve?.findings.some(({ code }) => OUTSIDE.has(code)) === true
  const needsSpeed = 'needs a chronograph reading, a force-draw curve or a draw weight'
  return (
    <Panel title="The finished arrow" quiet>
      <FigureList columns={2}>
        <Figure
          name="sheet.speed"
          label="Speed"
          of={figures.speed}
          was={before?.speed}
          unit="ft/s"
          decimals={1}
          note={figures.provenance === undefined ? undefined : provenanceWords(figures.provenance)}
          missing={needsSpeed}
        />
        <Figure name="sheet.foc" label="FOC" of={figures.foc} was={before?.foc} unit="%" decimals={1} />
        <Figure
          name="sheet.kineticEnergy"
          label="Energy"
          of={figures.kineticEnergy}
          was={before?.kineticEnergy}
          unit="ft·lbf"
          decimals={1}
          missing={needsSpeed}
        />
        <Figure
          name="sheet.balance"
          label="Balance point"
          of={figures.balance}
          was={before?.balance}
          unit="in"
          decimals={2}
        />
        <Figure
          name="sheet.momentum"
          label="Momentum"
          of={figures.momentum}
          was={before?.momentum}
          unit="slug·ft/s"
          decimals={3}
          missing={needsSpeed}
        />
        <Figure
          name="sheet.columnReserve"
          label="Column reserve"
          of={figures.columnReserve}
          was={before?.columnReserve}
          unit="1"
          decimals={2}
          missing="needs the draw weight"
        />
        <Figure
          name="sheet.grainsPerPound"
          label="Grains per pound"
          of={figures.grainsPerPound}
          was={before?.grainsPerPound}
          unit="gr/lb"
          decimals={1}
          missing="needs the draw weight"
        />
        <Figure
          name="sheet.finished"
          label="Finished, once trimmed"
          of={figures.finished}
          was={before?.finished}
          unit="gr"
          decimals={1}
        />
      </FigureList>
      {!isOutside ? null : (
        <Suspense fallback={null}>
          <IntoBandList sheet={sheet} worked={worked} cut={cut} />
        </Suspense>
      )}
    </Panel>
  )
}
