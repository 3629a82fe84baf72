/** What would still mend a light arrow at this point of its build, the smallest change first. */
import { arrowFigures } from '../../core/arrow/arrow-figures'
import type { Outcome } from '../../core/outcome'
import { difference, grains, greatest, inches, negated } from '../../core/quantity'
import type { FixingEvent } from '../../core/trim/fixing-events'
import type { Mend, MendOption, ReserveOf } from '../../core/trim/mends'
import { mends } from '../../core/trim/mends'
import { postAvailable } from '../../core/trim/post-available'
import { postOf } from '../sheet/post-of'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'
import type { Shelf } from '../stock/shelf'
import { arrowAsRead } from './arrow-as-read'
import type { Bench, BenchArrow } from './bench'
import { accepted } from './bench'
import type { DataPoint } from './data-points'
import { WEIGHED_TOGETHER } from './data-points'
import type { PartChange } from './mend-options'
import { mendOptions } from './mend-options'
import { ownGeometry, ownSheet } from './own-sheet'
import type { ArrowForecast } from './set-forecast'
import { takenOff } from './trim-advice'

export interface PossibleMend {
  readonly mend: Mend
  readonly change: PartChange
}

/** What is final on this arrow, as its own record tells. */
export function fixedOn(arrow: BenchArrow, bench: Bench): readonly FixingEvent[] {
  const has = (step: string) => arrow.confirmed.some((each) => each.step === step)
  const fixed: FixingEvent[] = []
  if (accepted(arrow, 'c2c') !== undefined || accepted(arrow, 'cutWeight') !== undefined) fixed.push('shaft cut')
  if (has('fletch') || accepted(arrow, 'fletchedWeight') !== undefined) fixed.push('fletched')
  if (has('bond') || accepted(arrow, 'bondWeight') !== undefined) fixed.push('post bonded')
  if (bench.confirmed.some((each) => each.step === 'pack')) fixed.push('packed')
  return fixed
}

/** @returns undefined while the arrow cannot be worked out; `no-mend` when the shelf has nothing that helps */
export function mendsFor(
  { arrow, over }: ArrowForecast,
  { bench, sheet, worked, shelf }: { bench: Bench; sheet: Sheet; worked: SheetFigures; shelf: Shelf },
): Outcome<readonly PossibleMend[]> | undefined {
  const own = ownSheet(arrow, sheet)
  const now = arrowAsRead(arrow, own)
  if (now === undefined) return undefined
  if (!now.lifted.ok) return now.lifted
  const geometry = ownGeometry(own)
  const post = geometry && postOf(geometry)
  const fixed = fixedOn(arrow, bench)
  const isBonded = fixed.includes('post bonded')
  const given = post === undefined || isBonded ? grains(0) : postAvailable(post).weight
  const changes = mendOptions(own, shelf, arrow.id)
  const tried = changes.flatMap((change): readonly { change: PartChange; option: MendOption }[] => {
    const { fitted: as } = change
    const after = { ...arrow, fitted: [...arrow.fitted.filter((each) => each.line !== as.line), as] }
    const read = arrowAsRead(withoutReadings(after, stalePoints(change)), ownSheet(after, sheet))
    if (read?.lifted.ok !== true) return []
    const become = { does: 'become', arrow: read.lifted.value.arrow, focLength: inches(read.focLengthIn) } as const
    return [
      {
        change,
        option: {
          kind: change.kind,
          name: change.was === null ? change.now.name : `${change.now.name} for ${change.was.name}`,
          change: become,
        },
      },
    ]
  })
  const { known: bow } = worked.bow
  const reserveOf: ReserveOf = (each) => {
    const reserve = arrowFigures({ arrow: each, bow }).columnReserve! // asked only where the draw weight is known
    if (!reserve.ok) return reserve
    return { ...reserve, value: typeof reserve.value === 'number' ? reserve.value : reserve.value.value }
  }
  const state = {
    arrow: now.lifted.value.arrow,
    focLength: inches(now.focLengthIn),
    short: greatest(grains(0), negated(over)),
    tolerance: grains(sheet.rules.toleranceGr),
    trimmable: greatest(grains(0), difference(given, takenOff(arrow))),
    fixed,
  }
  const found = mends(
    state,
    tried.map(({ option }) => option),
    bow.peakDrawWeight === undefined ? undefined : reserveOf,
  )
  if (!found.ok) return found
  const changeOf = new Map(tried.map(({ option, change }) => [option, change]))
  return { ...found, value: found.value.map((mend) => ({ mend, change: changeOf.get(mend.option)! })) }
}

const withoutReadings = (arrow: BenchArrow, points: readonly DataPoint[]): BenchArrow => ({
  ...arrow,
  readings: arrow.readings.filter((kept) => !points.includes(kept.reading.point)),
})

/** Readings of the part that is no longer on the arrow. */
export const stalePoints = ({ now }: PartChange): readonly DataPoint[] =>
  WEIGHED_TOGETHER.filter(([, kinds]) => kinds.includes(now.kind)).map(([point]) => point)
