/**
 * Which arrows to send as a test kit: the fewest of the shelf's shafts, in the plan's place of its own, that bracket the
 * stiffness called for. Everything else of the plan stays, so that only stiffness differs from arrow to arrow.
 */
import { inUnit } from '../../core/quantity'
import type { Id } from '../records/scalars'
import type { PlanLine } from '../sheet/plan'
import type { PlanProblem } from '../sheet/plan-problem'
import { planProblems } from '../sheet/plan-problems'
import type { Sheet } from '../sheet/sheet'
import { reserveBandOf, sheetFigures } from '../sheet/sheet-figures'
import { stoodOn } from '../sheet/stood-on'
import { lotsOfPart } from '../stock/lots-of-part'
import { partsOfKind, type Shelf } from '../stock/shelf'
import { fewestCovering, type Window } from './fewest-covering'
import { usualWishes } from './search-problem'

export interface KitSample {
  readonly part: Id
  readonly lot: Id
  readonly name: string
  readonly c2cIn: number
  /** Column reserve of the arrow on the client's bow. */
  readonly reserve: number
  /** The plan with this shaft, for its figures. */
  readonly sheet: Sheet
}

export interface TestKit {
  /** By rising stiffness. */
  readonly samples: readonly KitSample[]
  /** The reserve called for. */
  readonly called: Window
  /** Stretches of it that nothing on the shelf speaks for. */
  readonly open: readonly Window[]
}

export type KitRefusal = 'no shaft in the plan' | 'no cut length' | 'no draw weight' | 'nothing on the shelf fits'

/**
 * An arrow that tunes, or does not, tells of reserves up to 15 % from its own, one inch of length or 10 lb: common
 * practice, no source [CP].
 */
export const KIT_REACH = 1.15
const LONGER_IN = [-1, -0.5, 0.5, 1, 1.5, 2] // tried where shafts alone leave the band open

/** What makes an arrow of the kit impossible or unsafe, whatever the rest of the plan still lacks. */
const UNFIT: ReadonlySet<PlanProblem['code']> = new Set([
  'post-wider-than-bore',
  'ring-tighter-than-shaft',
  'parts-overlap',
  'cut-longer-than-raw',
  'vane-behind-shaft',
  'maker-draw-limit',
  'maker-front-limit',
  'under-gpp',
])

export function testKit(sheet: Sheet, shelf: Shelf): TestKit | KitRefusal {
  const { lines, c2cIn } = sheet.plan
  const line = lines.find(({ part }) => sheet.parts.find(({ id }) => id === part)?.part.kind === 'shaft')
  if (line === undefined) return 'no shaft in the plan'
  if (c2cIn === undefined) return 'no cut length'
  if (sheet.bow.peakDrawWeightLb === undefined && sheet.bow.labelDrawWeightLb === undefined) return 'no draw weight'
  const { min, max } = reserveBandOf(sheet)
  const called = { min: inUnit(min, '1'), max: inUnit(max, '1') }
  const asPlanned = samplesAt(sheet, shelf, line, [c2cIn])
  const kit = kitOf(asPlanned, called)
  if (kit.open.length === 0) return kit
  const least = usualWishes(sheet, []).clearance?.frontIn ?? 0
  const standoutIn = sheetFigures(sheet)?.geometry.shaftRearIn ?? 0
  const lengths = LONGER_IN.map((by) => c2cIn + by).filter((length) => length + standoutIn >= least)
  const wider = kitOf([...asPlanned, ...samplesAt(sheet, shelf, line, lengths)], called)
  const best = openIn(wider) < openIn(kit) ? wider : kit
  return best.samples.length === 0 ? 'nothing on the shelf fits' : best
}

const openIn = ({ open }: TestKit) => open.reduce((total, { min, max }) => total + Math.log(max / min), 0)

function kitOf(samples: readonly KitSample[], called: Window): TestKit {
  const { chosen, open } = fewestCovering(
    samples.map(({ reserve }) => reserve),
    called,
    KIT_REACH,
  )
  return { samples: chosen.map((at) => samples[at]!), called, open }
}

/** One sample of each shaft that is free and fits, at each length, inside the band: none too soft is sent out. */
function samplesAt(sheet: Sheet, shelf: Shelf, line: PlanLine, lengths: readonly number[]): readonly KitSample[] {
  const { min, max } = reserveBandOf(sheet)
  return partsOfKind(shelf, 'shaft').flatMap(({ id, body }) => {
    const lot = lotsOfPart(shelf, id).findLast((each) => {
      const view = shelf.lotViews.get(each.id)
      return view !== undefined && view.onHand - view.reserved > 0
    })
    if (lot === undefined) return []
    return lengths.flatMap((c2cIn): readonly KitSample[] => {
      const plan = {
        ...sheet.plan,
        c2cIn,
        lines: sheet.plan.lines.map((each) => (each.id === line.id ? { ...each, part: id, lot: lot.id } : each)),
      }
      const own = { ...sheet, plan, ...stoodOn(plan, shelf) }
      const worked = sheetFigures(own)
      const reserve = worked?.figures?.columnReserve
      if (reserve?.ok !== true) return []
      const at = typeof reserve.value === 'number' ? reserve.value : reserve.value.value
      if (at < min || at > max) return []
      if (planProblems(own, worked, undefined).some(({ code }) => UNFIT.has(code))) return []
      return [{ part: id, lot: lot.id, name: body.name, c2cIn, reserve: inUnit(at, '1'), sheet: own }]
    })
  })
}
