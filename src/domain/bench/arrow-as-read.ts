/** One arrow of the bench as the core takes it: what was read in place of what was expected, the post as it is trimmed now. */
import { inGrains, inMillimetres, scaled, grains } from '../../core/quantity'
import type { Outcome } from '../../core/outcome'
import { trimLength } from '../../core/trim/trim-length'
import type { LiftedArrow } from '../sheet/lift-arrow'
import { liftArrow } from '../sheet/lift-arrow'
import type { PlanItem } from '../sheet/plan-items'
import { planItems } from '../sheet/plan-items'
import { postOf } from '../sheet/post-of'
import type { Sheet } from '../sheet/sheet'
import { WEIGHED_TOGETHER } from './data-points'
import type { BenchArrow } from './bench'
import { accepted } from './bench'
import { ownGeometry } from './own-sheet'
import { shaftToCome } from './shaft-to-come'
import { takenOff } from './trim-advice'

interface ArrowAsRead {
  readonly lifted: Outcome<LiftedArrow>
  readonly focLengthIn: number
  readonly items: readonly PlanItem[]
}

/** Parts weighed together share what was read as they share what is expected. */
function asRead(items: readonly PlanItem[], arrow: BenchArrow, own: Sheet): readonly PlanItem[] {
  return items.map((each) => {
    if (each.at.kind === 'glue') return each
    const group = WEIGHED_TOGETHER.find(([, kinds]) => kinds.includes(each.part.kind))
    const point = each.part.kind === 'shaft' ? 'cutWeight' : group?.[0]
    const read = point && accepted(arrow, point)?.reading.value
    if (read === undefined) return { ...each, item: shaftToCome(each, arrow, own) }
    const together = items.filter(
      ({ at, part }) => at.kind === 'part' && (part.kind === each.part.kind || group?.[1].includes(part.kind)),
    )
    const expectedGr = together.reduce((total, { item }) => total + inGrains(item.mean), 0)
    const mean = expectedGr > 0 ? scaled(each.item.mean, read / expectedGr) : grains(0)
    return { ...each, item: { ...each.item, mean } }
  })
}

/** @param own the arrow's own sheet. @returns undefined while it has no shaft or no cut length */
export function arrowAsRead(arrow: BenchArrow, own: Sheet): ArrowAsRead | undefined {
  const whole = ownGeometry(own)
  if (whole === undefined) return undefined
  const items = asRead(planItems(own, whole), arrow, own)
  const post = postOf(whole)
  const off = post === undefined ? undefined : trimLength(takenOff(arrow), post)
  const geometry = off?.ok ? (ownGeometry(own, inMillimetres(off.value.length)) ?? whole) : whole
  return { lifted: liftArrow(geometry, items, grains(0)), focLengthIn: geometry.focLengthIn, items }
}
