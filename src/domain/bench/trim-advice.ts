/** What to do at the grinder for one arrow: what is still to come off, which pass, and what it leaves of the bond. */
import type { Outcome } from '../../core/outcome'
import type { Mass } from '../../core/quantity'
import { difference, grains, greatest, inGrains, millimetres, scaled, sum } from '../../core/quantity'
import { chamferWeight } from '../../core/trim/chamfer-weight'
import type { PassAdvice } from '../../core/trim/next-pass'
import { nextPass } from '../../core/trim/next-pass'
import type { Pass, PassRemoval } from '../../core/trim/pass-removal'
import { PASSES, passRemoval, STEEL_PASSES } from '../../core/trim/pass-removal'
import type { Post } from '../../core/trim/post'
import { postAvailable } from '../../core/trim/post-available'
import type { TrimLength } from '../../core/trim/trim-length'
import { trimLength } from '../../core/trim/trim-length'
import { forecastWeight } from '../../core/weight/forecast-weight'
import { postOf } from '../sheet/post-of'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'
import { fletchingToCome, finishedItems, isFrontGlueItem } from './arrow-items'
import { accepted, standing } from './bench'
import type { BenchArrow } from './bench'
import { ownGeometry, ownSheet } from './own-sheet'
import type { ArrowForecast } from './set-forecast'

export interface TrimAdvice {
  /** Still to come off, the broken edge included; negative when it is light. */
  readonly remaining: Mass
  readonly chamfer: Mass
  readonly advice: Outcome<PassAdvice> | undefined
  /** The length of post that the remaining weight is, and the bond it would leave. */
  readonly length: Outcome<TrimLength> | undefined
  /** What one usual pass takes here. */
  readonly usual: Mass
  /** What the scale should show when it is done, with the edge still to break. */
  readonly downTo: Mass
}

/** What this arrow's post has lost so far, from its own weighings. */
export function takenOff(arrow: BenchArrow): Mass {
  const dry = accepted(arrow, 'dryWeight')?.reading.value
  const now = (accepted(arrow, 'edgeWeight') ?? accepted(arrow, 'trimWeight'))?.reading.value
  return dry === undefined || now === undefined ? grains(0) : greatest(grains(0), grains(dry - now))
}

/** The shop's own passes, scattered as steel's usually are. */
function passesOf(sheet: Sheet, steel: PassRemoval): PassRemoval {
  const told = {
    light: sheet.rules.passes.lightGr,
    usual: sheet.rules.passes.usualGr,
    heavy: sheet.rules.passes.heavyGr,
  }
  const entries = PASSES.map((pass): [Pass, PassRemoval[Pass]] => {
    const share = told[pass] / inGrains(STEEL_PASSES[pass].mean)
    return [pass, { mean: scaled(steel[pass].mean, share), sd: scaled(steel[pass].sd, share) }]
  })
  return Object.fromEntries(entries) as unknown as PassRemoval
}

function ownPost(arrow: BenchArrow, sheet: Sheet): Post | undefined {
  const geometry = ownGeometry(ownSheet(arrow, sheet))
  return geometry && postOf(geometry)
}

export function trimAdvice(own: ArrowForecast, worked: SheetFigures, sheet: Sheet): TrimAdvice {
  const { arrow, forecast, over, target } = own
  const { post } = arrow.fitted.length === 0 ? worked : { post: ownPost(arrow, sheet) }
  const section = post?.sections[0]
  const edgeDone = standing(arrow, 'edgeWeight').length > 0
  const broken = section === undefined ? undefined : chamferWeight(millimetres(sheet.rules.chamferMm), section)
  const chamfer = edgeDone || broken?.ok !== true ? grains(0) : broken.value
  const steel = section === undefined ? undefined : passRemoval(section.density)
  const passes = passesOf(sheet, steel?.ok ? steel.value : STEEL_PASSES)
  const given = post === undefined ? grains(0) : postAvailable(post).weight
  const available = greatest(grains(0), difference(given, takenOff(arrow)))
  // What glue will scatter is the same whether another pass is taken or not: only what the scale and the parts still hide
  // may stop the grinder early, or every arrow would be left heavy.
  const tillBond = forecastWeight(finishedItems(arrow, worked.items, sheet).filter((item) => !isFrontGlueItem(item)))
  const sd = tillBond.ok ? tillBond.value.total.sd : grains(0)
  const glue = forecast.ok ? forecast.value.expected : grains(0)
  // Fletched last, the vanes are not on the pan either, weighed by themselves or not.
  const vanes = fletchingToCome(arrow, worked.items, sheet).filter(({ kind }) => kind === 'read')
  const later = sum(glue, ...vanes.map(({ mean }) => mean))
  const left = greatest(grains(0), over)
  return {
    remaining: over,
    chamfer,
    advice: forecast.ok
      ? nextPass(
          { remaining: { value: over, sd }, chamfer, tolerance: grains(sheet.rules.toleranceGr), available },
          passes,
        )
      : undefined,
    length: post === undefined ? undefined : trimLength(sum(takenOff(arrow), left), post),
    usual: passes.usual.mean,
    downTo: sum(difference(target, later), chamfer),
  }
}
