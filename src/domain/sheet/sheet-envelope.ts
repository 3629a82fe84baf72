/** By how much draw weight, draw length and head weight may drift before this very arrow leaves a limit. */
import { envelope, type Envelope } from '../../core/envelope/envelope'
import { bandMargins, type Margin } from '../../core/envelope/margin'
import { VIRTUAL_MASS_PRIOR } from '../../core/bow/virtual-mass-prior'
import type { Arrow } from '../../core/arrow/arrow'
import { known, type Outcome } from '../../core/outcome'
import {
  difference,
  grains,
  inches,
  inInches,
  inUnit,
  poundsForce,
  sum,
  type Force,
  type Length,
  type Mass,
} from '../../core/quantity'
import { columnReserve } from '../../core/stiffness/column-reserve'
import { finishedMass } from '../../core/stiffness/critical-force'
import type { CutFigures } from './cut-figures'
import type { Sheet } from './sheet'
import { reserveBandOf, type SheetFigures } from './sheet-figures'

export type SheetLimit = 'too soft' | 'too stiff' | 'grains per pound' | 'shaft front at the rest'

export interface SheetEnvelope {
  readonly drawWeight: Outcome<Envelope<'force', SheetLimit>> | undefined
  readonly headWeight: Outcome<Envelope<'mass', SheetLimit>> | undefined
  readonly drawLength: Outcome<Envelope<'length', SheetLimit>> | undefined
}

const FURTHEST = { drawWeight: poundsForce(20), headWeight: grains(150), drawLength: inches(3) }

export function sheetEnvelope(sheet: Sheet, worked: SheetFigures, cut: CutFigures | undefined): SheetEnvelope {
  const { bow, lifted, figures, geometry } = worked
  const { peak } = bow
  const arrow = lifted.ok ? lifted.value.arrow : undefined
  const prior = VIRTUAL_MASS_PRIOR[bow.kind].value
  const virtualMass = figures?.virtualMass?.ok ? figures.virtualMass.value.value : prior
  const marginsOf = (own: Arrow, peakDraw: Force): Outcome<readonly Margin<SheetLimit>[]> => {
    const reserve = columnReserve(own, { peakDraw, virtualMass })
    if (!reserve.ok) return reserve
    const perLb = inUnit(finishedMass(own), 'gr') / inUnit(peakDraw, 'lbf')
    const margins = [
      ...bandMargins<number, SheetLimit>(reserve.value, reserveBandOf(sheet), 'too soft', 'too stiff'),
      { limit: 'grains per pound' as const, margin: perLb - sheet.rules.leastGrainsPerLb },
    ]
    return known(margins, reserve.derivation)
  }
  const places = cut?.fullDraw.ok ? cut.fullDraw.value : undefined
  const ahead = inches(sheet.rules.clearance.frontAheadOfRestIn)
  const front = inches(geometry.shaftFrontIn)
  return {
    drawWeight:
      arrow === undefined || peak === undefined
        ? undefined
        : envelope({
            what: 'draw weight',
            unit: 'lbf',
            furthestDown: FURTHEST.drawWeight,
            furthestUp: FURTHEST.drawWeight,
            evaluate: (by: Force) => marginsOf(arrow, sum(peak, by)),
          }),
    headWeight:
      arrow === undefined || peak === undefined
        ? undefined
        : envelope({
            what: 'head weight',
            unit: 'gr',
            furthestDown: FURTHEST.headWeight,
            furthestUp: FURTHEST.headWeight,
            evaluate: (by: Mass) => marginsOf(withHead(arrow, by), peak),
          }),
    drawLength:
      places === undefined
        ? undefined
        : envelope({
            what: 'draw length',
            unit: 'in',
            furthestDown: FURTHEST.drawLength,
            furthestUp: FURTHEST.drawLength,
            evaluate: (by: Length) => {
              const margin = inInches(difference(difference(front, sum(places.rest.at, by)), ahead))
              const margins = [{ limit: 'shaft front at the rest' as const, margin }]
              return cut!.fullDraw.ok ? known(margins, cut!.fullDraw.derivation) : cut!.fullDraw
            },
          }),
  }
}

/** The foremost piece is the head. */
function withHead(arrow: Arrow, by: Mass): Arrow {
  const foremost = arrow.pieces.reduce((most, piece) => (piece.to > most.to ? piece : most), arrow.pieces[0]!)
  return {
    ...arrow,
    pieces: arrow.pieces.map((piece) => (piece === foremost ? { ...piece, mass: sum(piece.mass, by) } : piece)),
  }
}
