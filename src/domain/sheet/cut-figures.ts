/** How long this arrow may be cut and how short: clearance at full draw, stiffness, the raw shaft; and where to cut it. */
import type { Clearance } from '../../core/cut/clearances'
import { clearances } from '../../core/cut/clearances'
import type { CutPlan } from '../../core/cut/cut-plan'
import { cutPlan } from '../../core/cut/cut-plan'
import type { FullDraw } from '../../core/cut/full-draw'
import { fullDraw } from '../../core/cut/full-draw'
import type { ShortestClear } from '../../core/cut/shortest-clear'
import { shortestClear } from '../../core/cut/shortest-clear'
import type { Vanes } from '../../core/cut/vane-reach'
import { vaneReach } from '../../core/cut/vane-reach'
import type { Outcome } from '../../core/outcome'
import { bounds } from '../../core/outcome'
import type { Length } from '../../core/quantity'
import { degrees, difference, grains, inches, inInches, millimetres, scaled, sum } from '../../core/quantity'
import { VIRTUAL_MASS_PRIOR } from '../../core/bow/virtual-mass-prior'
import type { LengthRange } from '../../core/stiffness/lengths-in-band'
import { lengthsInBand } from '../../core/stiffness/lengths-in-band'
import type { Bow } from '../call/bow'
import type { Geometry } from './geometry'
import { geometryOf } from './geometry'
import { liftArrow } from './lift-arrow'
import type { SheetFigures } from './sheet-figures'
import { reserveBandOf } from './sheet-figures'
import type { Sheet } from './sheet'

export interface CutFigures {
  readonly fullDraw: Outcome<FullDraw>
  /** Throat to shaft front. */
  readonly shortest: Outcome<ShortestClear> | undefined
  readonly stiff: Outcome<LengthRange> | undefined
  readonly clearances: Outcome<readonly Clearance[]> | undefined
  readonly plan: Outcome<CutPlan> | undefined
  /** Where grip and cables stand at full draw, by the riser front and what is told of the bow; for the drawing only. */
  readonly grip: Grip | undefined
  /** The vanes as they pass the cables; undefined without vanes, or while nobody said how far off those run. */
  readonly pastCables: PastCables | undefined
  /** From throat to shaft rear: what the arrow length has over C2C. */
  readonly rear: Length
}

export interface PastCables {
  readonly vanes: Vanes
  /** Undefined where nobody said: then the worse side counts. */
  readonly side: 'right' | 'left' | undefined
  readonly reach: Length
  readonly toCable: Length
}

export interface Grip {
  readonly pivot: Length
  /** Undefined where no cables run beside the arrow, or nobody said on which side. */
  readonly cables: { readonly at: Length; readonly side: 'right' | 'left' } | undefined
}

// Where they commonly stand ahead of the pivot: common practice, no source [CP].
const REST_AHEAD = inches(0.5)
const RISER_AHEAD = inches(1.75)
const CABLES_BEHIND = inches(3) // of the pivot, where a guard commonly holds them [CP]
const LEAST_PIECE = inches(0.25) // a saw takes no less off cleanly [CP]
const SHORTEST_LOOKED_AT = inches(16)

function drawKnown(bow: Bow) {
  const told = (n: number | undefined) => (n === undefined ? undefined : inches(n))
  const marks = { rest: told(bow.markAtRestIn), 'riser front': told(bow.markAtRiserIn) }
  return {
    marks: Object.fromEntries(Object.entries(marks).filter(([, at]) => at !== undefined)),
    ...(bow.drawLengthIn === undefined ? {} : { drawLength: inches(bow.drawLengthIn) }),
    aheadOfPivot: {
      rest: told(bow.restAheadOfPivotIn) ?? REST_AHEAD,
      'riser front': told(bow.riserFrontAheadOfPivotIn) ?? RISER_AHEAD,
    },
  }
}

/** Where rest and riser stand along the arrow at full draw, by what is known of the bow. */
export const fullDrawOf = (bow: Bow) => fullDraw(drawKnown(bow))

function gripOf(bow: Bow, { riserFront }: FullDraw): Grip {
  const ahead = bow.riserFrontAheadOfPivotIn
  const pivot = difference(riserFront.at, ahead === undefined ? RISER_AHEAD : inches(ahead))
  const { cableSide: side } = bow
  const cables = side === 'right' || side === 'left' ? { at: difference(pivot, CABLES_BEHIND), side } : undefined
  return { pivot, cables }
}

function bladesOf(geometry: Geometry) {
  const head = geometry.placed.find(({ part }) => part.kind === 'broadhead')
  if (head?.part.kind !== 'broadhead') return undefined
  return {
    ahead: inches(head.fromIn + head.part.bladeRearIn - geometry.shaftFrontIn),
    cuttingWidth: inches(head.part.cuttingWidthIn),
  }
}

const hasVanes = ({ placed }: Geometry) => placed.some(({ part }) => part.kind === 'vane' || part.kind === 'feather')

/** The vanes beside the cables, once it is told how far off those run; seen from behind, so that it can be drawn. */
function pastCables({ bow, plan }: Sheet, geometry: Geometry): PastCables | undefined {
  const { arrowToCableIn, cableSide } = bow
  const shaft = geometry.placed.find(({ part }) => part.kind === 'shaft')?.part
  const placed = geometry.placed.find(({ part }) => part.kind === 'vane' || part.kind === 'feather')
  if (arrowToCableIn === undefined || cableSide === 'none' || shaft?.kind !== 'shaft') return undefined
  if (placed?.part.kind !== 'vane' && placed?.part.kind !== 'feather') return undefined
  const vanes = {
    count: placed.pieces,
    height: inches(placed.part.heightIn),
    shaftRadius: millimetres(shaft.outerDiameterMm / 2),
    cockVane: degrees(plan.cockVaneDeg),
  }
  return { vanes, side: cableSide, reach: vaneReach(vanes, cableSide), toCable: inches(arrowToCableIn) }
}

/** The arrow cut to another length, every part in its place on it. */
function arrowAt(sheet: Sheet, { items, geometry, trimPlan }: SheetFigures, length: Length) {
  const parts = new Map(sheet.parts.map(({ id, part }) => [id, part]))
  const c2cIn = inInches(difference(length, inches(geometry.shaftRearIn)))
  const moved = geometryOf({ ...sheet.plan, c2cIn }, (id) => parts.get(id)) ?? geometry
  const share = c2cIn / (geometry.shaftFrontIn - geometry.shaftRearIn)
  const rescaled = items.map((each) =>
    each.part.kind === 'shaft' ? { ...each, item: { ...each.item, mean: scaled(each.item.mean, share) } } : each,
  )
  const lifted = liftArrow(moved, rescaled, trimPlan?.ok ? trimPlan.value.byChamfer : grains(0))
  return lifted.ok ? { ...lifted, value: lifted.value.arrow } : lifted
}

export function cutFigures(sheet: Sheet, worked: SheetFigures): CutFigures {
  const { geometry, bow, figures } = worked
  const { rules, plan } = sheet
  const at = fullDrawOf(sheet.bow)
  const limits = {
    frontAheadOfRest: inches(rules.clearance.frontAheadOfRestIn),
    bladesAheadOfRiser: inches(rules.clearance.bladesAheadOfRiserIn),
    bladesOffRiser: inches(rules.clearance.bladesOffRiserIn),
    vaneOffCable: inches(rules.clearance.vaneOffCableIn),
    vaneTail: inches(rules.clearance.vaneTailIn),
  }
  const blades = bladesOf(geometry)
  const past = pastCables(sheet, geometry)
  const shaft = geometry.placed.find(({ part }) => part.kind === 'shaft')?.part
  const raw = shaft?.kind === 'shaft' ? inches(shaft.rawLengthIn) : undefined
  const rear = inches(geometry.shaftRearIn)
  const prior = VIRTUAL_MASS_PRIOR[sheet.bow.kind].value
  const virtualMass = figures?.virtualMass?.ok ? figures.virtualMass.value.value : prior
  return {
    fullDraw: at,
    shortest: at.ok ? shortestClear(at.value, limits, blades?.ahead) : undefined,
    stiff:
      bow.peak === undefined || raw === undefined
        ? undefined
        : lengthsInBand({
            launch: { peakDraw: bow.peak, virtualMass },
            band: reserveBandOf(sheet),
            range: bounds(SHORTEST_LOOKED_AT, sum(raw, rear)),
            arrowAt: (length) => arrowAt(sheet, worked, length),
          }),
    clearances: at.ok
      ? clearances({
          length: inches(geometry.shaftFrontIn),
          fullDraw: at.value,
          rules: limits,
          ...(hasVanes(geometry) ? { vaneTail: inches(plan.vaneTailIn) } : {}),
          ...(past === undefined ? {} : { vaneReach: past.reach, toCable: past.toCable }),
          ...(blades === undefined ? {} : { bladesAhead: blades.ahead, cuttingWidth: blades.cuttingWidth }),
        })
      : undefined,
    plan:
      raw === undefined || plan.c2cIn === undefined
        ? undefined
        : cutPlan({ rawLength: raw, c2c: inches(plan.c2cIn), kerf: inches(rules.kerfIn), leastPiece: LEAST_PIECE }),
    pastCables: past,
    grip: at.ok ? gripOf(sheet.bow, at.value) : undefined,
    rear,
  }
}
