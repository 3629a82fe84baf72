/** How short and how long the arrow may be cut, the clearances at full draw to scale, and where the saw goes. */
import type { ClearanceName } from '../../core/cut/findings'
import { difference, inInches, sum } from '../../core/quantity'
import { lazy, Suspense } from 'react'
import type { Bench } from '../../domain/bench/bench'
import type { Sheet } from '../../domain/sheet/sheet'
import type { CutFigures } from '../../domain/sheet/cut-figures'
import type { Outcome } from '../../core/outcome'
import type { Length } from '../../core/quantity'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import { Panel } from '../controls/panel'
import { FindingList } from '../controls/finding-list'
import { Clearance } from '../figures/clearance/clearance'
import { VanesPastCables } from '../figures/clearance/vanes-past-cables'
import { piecesOf } from '../figures/elevation/pieces-of'
import { Figure, FigureList } from '../figures/figure'
import { ShowWorking } from '../figures/working/show-working'

const RISER_BELOW_IN = 0.75 // where the shelf is drawn; nothing is judged by it

const as = <T,>(outcome: Outcome<T> | undefined, value: (from: T) => Length): Outcome<Length> | undefined =>
  outcome?.ok ? { ...outcome, value: value(outcome.value) } : outcome

// Only a set that has been begun has shafts that were spun.
const StraightestWindows = lazy(async () => ({
  default: (await import('./straightest-windows')).StraightestWindows,
}))

interface CutPanelProps {
  sheet: Sheet
  bench: Bench | null
  worked: SheetFigures
  cut: CutFigures
  /** As it was last frozen. */
  was: CutFigures | undefined
}

export function CutPanel({ sheet, bench, worked, cut, was }: CutPanelProps) {
  const { rear, fullDraw, shortest, stiff, clearances, plan, grip, pastCables } = cut
  const c2c = (length: Length) => difference(length, rear)
  const places = fullDraw.ok ? fullDraw.value : undefined
  const drawnAt = (what: ClearanceName, has: Length) => {
    const from = { 'shaft front ahead of the rest': 'rest', 'blades ahead of the riser': 'riserFront' } as const
    if (places === undefined || !(what in from)) return undefined
    const at = places[from[what as keyof typeof from]].at
    return { fromIn: inInches(at), toIn: inInches(sum(at, has)) }
  }
  const told = clearances?.ok ? clearances.value : []
  const spans = told.map(({ what, has, needs }) => ({
    key: what.replaceAll(' ', '-'),
    label: what,
    drawn: drawnAt(what, has),
    of: has,
    least: needs,
  }))
  const isVaneShort = told.some(({ what, has, needs }) => what === 'vane off the cable' && has < needs)
  return (
    <Panel title="At full draw, and the cut" quiet>
      {places === undefined ? (
        fullDraw.ok ? null : (
          <FindingList findings={fullDraw.findings} />
        )
      ) : (
        <Clearance
          name="sheet.clearance"
          pieces={piecesOf(worked.geometry)}
          restAtIn={inInches(places.rest.at)}
          riserFrontAtIn={inInches(places.riserFront.at)}
          riserBelowIn={RISER_BELOW_IN}
          gripAtIn={grip && inInches(grip.pivot)}
          cables={grip?.cables && { atIn: inInches(grip.cables.at), side: grip.cables.side }}
          spans={spans}
          behind={pastCables === undefined ? null : <VanesPastCables of={pastCables} short={isVaneShort} />}
          note={`${places.rest.how === 'marked' ? 'marked on a nocked arrow' : 'estimated from the draw length'}; hand and cables where they commonly stand`}
        />
      )}
      {clearances?.ok ? (
        <>
          <p>
            <ShowWorking name="sheet.clearance" label="Working of the clearances" derivation={clearances.derivation} />
          </p>
          {clearances.findings.length === 0 ? null : <FindingList findings={clearances.findings} />}
        </>
      ) : null}
      <FigureList columns={2}>
        <Figure
          name="sheet.shortestC2c"
          label="Shortest C2C that clears"
          of={as(shortest, ({ length }) => c2c(length))}
          was={as(was?.shortest, ({ length }) => difference(length, was!.rear))}
          unit="in"
          decimals={2}
          missing="needs the draw length or the full-draw marks"
        />
        <Figure
          name="sheet.longestC2c"
          label="Longest C2C for its stiffness"
          of={as(stiff, ({ longest }) => c2c(longest))}
          was={as(was?.stiff, ({ longest }) => difference(longest, was!.rear))}
          unit="in"
          decimals={2}
          missing="needs the draw weight"
        />
        <Figure
          name="sheet.offNock"
          label="Off the nock end"
          of={as(plan, ({ offNock }) => offNock)}
          was={as(was?.plan, ({ offNock }) => offNock)}
          unit="in"
          decimals={2}
        />
        <Figure
          name="sheet.offPoint"
          label="Off the point end"
          of={as(plan, ({ offPoint }) => offPoint)}
          was={as(was?.plan, ({ offPoint }) => offPoint)}
          unit="in"
          decimals={2}
        />
      </FigureList>
      {bench === null ? null : (
        <Suspense fallback={null}>
          <StraightestWindows bench={bench} sheet={sheet} />
        </Suspense>
      )}
    </Panel>
  )
}
