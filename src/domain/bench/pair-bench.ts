/**
 * Who goes with whom on the bench: the inserts and collars that were weighed are dealt out over the arrows, so that least
 * has to be ground off. Heads stay out of it: the set is trimmed to one weight less head, and heads are swapped.
 */
import { inGrains } from '../../core/quantity'
import { postAvailable } from '../../core/trim/post-available'
import type { Id } from '../records/scalars'
import type { EventDraft } from '../records/write'
import { newEvent } from '../records/write'
import type { PairedSet } from '../search/pairing/pair-set'
import { pairSet } from '../search/pairing/pair-set'
import type { PairItem, Tray } from '../search/pairing/pairing'
import { pairedAt } from '../search/pairing/pairing'
import type { SheetFigures } from '../sheet/sheet-figures'
import type { Sheet } from '../sheet/sheet'
import { finishedItems, headItems } from './arrow-items'
import type { Bench, BenchArrow } from './bench'
import { accepted, building } from './bench'
import type { DataPoint } from './data-points'
import type { SetLanding } from './set-forecast'

const DEALT = ['insertWeight', 'collarWeight'] as const satisfies readonly DataPoint[]

interface BenchPairing {
  readonly paired: PairedSet
  /** Grains to trim off the whole set as it lies now, and heaviest less lightest. */
  readonly nowTrimGr: number
  readonly nowSpreadGr: number
  /** For each arrow the arrows whose pieces it takes, by point. */
  readonly takes: readonly {
    readonly arrow: BenchArrow
    readonly from: Readonly<Partial<Record<DataPoint, BenchArrow>>>
    readonly trimGr: number
  }[]
  readonly points: readonly DataPoint[]
}

/** Arrows that can still change parts: nothing was put together or fitted by itself. */
const isLoose = (arrow: BenchArrow) => accepted(arrow, 'dryWeight') === undefined && arrow.fitted.length === 0

/** @returns undefined while fewer than two arrows have their parts weighed, or once they are put together */
export function benchPairing(
  bench: Bench,
  sheet: Sheet,
  worked: SheetFigures,
  landing: SetLanding,
): BenchPairing | undefined {
  const arrows = building(bench)
  const points = DEALT.filter((point) => arrows.every((arrow) => accepted(arrow, point) !== undefined))
  if (arrows.length < 2 || points.length === 0 || !arrows.every(isLoose) || !landing.lessHead.ok) return undefined
  const givesGr = worked.post === undefined ? 0 : inGrains(postAvailable(worked.post).weight)
  const pieces = (point: DataPoint): readonly PairItem[] =>
    arrows.map((arrow) => ({
      id: arrow.id,
      gr: accepted(arrow, point)!.reading.value,
      givesGr: point === 'insertWeight' ? givesGr : 0,
    }))
  const weightOf = (arrow: BenchArrow) => {
    const total = (items: readonly { readonly mean: Parameters<typeof inGrains>[0] }[]) =>
      items.reduce((sum, { mean }) => sum + inGrains(mean), 0)
    const dealt = points.reduce((sum, point) => sum + accepted(arrow, point)!.reading.value, 0)
    return total(finishedItems(arrow, worked.items, sheet)) - total(headItems(arrow, worked.items, sheet)) - dealt
  }
  const tray: Tray = {
    lists: [arrows.map((arrow) => ({ id: arrow.id, gr: weightOf(arrow), givesGr: 0 })), ...points.map(pieces)],
    besidesGr: 0,
    targetGr: inGrains(landing.lessHead.value.target),
    toleranceGr: sheet.rules.toleranceGr,
  }
  const { set } = pairSet(tray, 'trimming')
  if (set === undefined) return undefined
  const asItLies = points.map(() => arrows.map((_, i) => i))
  const weights = arrows.map((_, i) => pairedAt(tray, asItLies, i).weightGr)
  const byId = new Map(arrows.map((arrow) => [arrow.id, arrow]))
  return {
    paired: set,
    nowTrimGr: weights.reduce((sum, gr) => sum + Math.max(0, gr - tray.targetGr), 0),
    nowSpreadGr: Math.max(...weights) - Math.min(...weights),
    points,
    takes: set.arrows.map(({ items, trimGr }) => ({
      arrow: byId.get(items[0]!.id)!,
      from: Object.fromEntries(points.map((point, i) => [point, byId.get(items[i + 1]!.id)!])),
      trimGr,
    })),
  }
}

/** A piece that changes arrows takes its weight with it; what the arrow had before stays in its history. */
export function pairEvents(job: Id, { takes, points }: BenchPairing, now: string): readonly EventDraft[] {
  return takes.flatMap(({ arrow, from }) =>
    points.flatMap((point): readonly EventDraft[] => {
      const giver = from[point]!
      if (giver.id === arrow.id) return []
      const [own, taken] = [accepted(arrow, point)!, accepted(giver, point)!]
      return [
        newEvent(
          'corrected',
          { job, arrow: arrow.id },
          {
            target: own.event,
            reading: { ...taken.reading, source: 'derived', attempt: own.reading.attempt + 1, takenAt: now },
            reason: `paired: takes the one weighed as no. ${giver.no}`,
          },
        ),
      ]
    }),
  )
}
