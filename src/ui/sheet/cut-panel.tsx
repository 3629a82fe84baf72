/** How short and how long the arrow may be cut, the clearances at full draw to scale, and where the saw goes. */
import { difference, inInches } from '../../core/quantity'
import type { CutFigures } from '../../domain/sheet/cut-figures'
import type { Outcome } from '../../core/outcome'
import type { Length } from '../../core/quantity'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'
import { Panel } from '../controls/panel'
import { FindingList } from '../controls/finding-list'
import { Clearance } from '../figures/clearance/clearance'
import { piecesOf } from '../figures/elevation/pieces-of'
import { Figure, FigureList } from '../figures/figure'

const RISER_BELOW_IN = 0.75 // where the shelf is drawn; nothing is judged by it

const as = <T,>(outcome: Outcome<T> | undefined, value: (from: T) => Length): Outcome<Length> | undefined =>
  outcome?.ok ? { ...outcome, value: value(outcome.value) } : outcome

interface CutPanelProps {
  worked: SheetFigures
  cut: CutFigures
  /** As it was last frozen. */
  was: CutFigures | undefined
}

export function CutPanel({ worked, cut, was }: CutPanelProps) {
  const { rear, fullDraw, shortest, stiff, clearances, plan, grip } = cut
  const c2c = (length: Length) => difference(length, rear)
  const places = fullDraw.ok ? fullDraw.value : undefined
  const front = worked.geometry.shaftFrontIn
  const spans = clearances?.ok
    ? clearances.value
        .filter(({ what }) => what === 'shaft front ahead of the rest' || what === 'blades ahead of the riser')
        .map(({ what, has, needs }) => {
          const from = what === 'shaft front ahead of the rest' ? places!.rest.at : places!.riserFront.at
          const to = what === 'shaft front ahead of the rest' ? front : inInches(from) + inInches(has)
          return {
            key: what.replaceAll(' ', '-'),
            label: what,
            fromIn: inInches(from),
            toIn: to,
            of: has,
            least: needs,
          }
        })
    : []
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
          note={`${places.rest.how === 'marked' ? 'marked on a nocked arrow' : 'estimated from the draw length'}; hand and cables where they commonly stand`}
        />
      )}
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
    </Panel>
  )
}
