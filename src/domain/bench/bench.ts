/** What the bench knows: the set under way, each arrow with every reading it ever had, timers, deviations, notes. */
import type { Hash, Id } from '../records/scalars'
import type { Deviation, KeptReading } from './built'
import type { DataPoint } from './data-points'
import type { Fitted } from './fitted'
import type { Step } from './route'

export interface Confirmation {
  readonly step: string
  readonly by: string
  readonly at: string
}
export interface BenchArrow {
  readonly id: Id
  readonly no: number
  readonly code: string
  readonly state: 'building' | 'scrapped'
  readonly cause?: string
  readonly replaces?: Id
  readonly readings: readonly KeptReading[]
  readonly confirmed: readonly Confirmation[]
  readonly fitted: readonly Fitted[]
}
export interface BenchDeviation extends Deviation {
  readonly arrow: Id | null
  readonly openedBy: string
  readonly openedAt: string
}
export interface Timer {
  readonly id: Id
  readonly arrow: Id | null
  readonly step: string
  readonly what: string
  readonly startedAt: string
  readonly dueAt: string
  readonly temperatureC: number | null
  readonly endedAt: string | null
}
export interface Bench {
  readonly sheet: Hash
  readonly startedAt: string
  /** The job's own route, when it departs from its sheet's. */
  readonly route: readonly Step[] | null
  readonly arrows: readonly BenchArrow[]
  readonly confirmed: readonly Confirmation[]
  readonly deviations: readonly BenchDeviation[]
  readonly timers: readonly Timer[]
  readonly notes: readonly {
    readonly arrow: Id | null
    readonly step: string
    readonly note: Hash
    readonly by: string
    readonly at: string
  }[]
  readonly photos: readonly {
    readonly arrow: Id | null
    readonly step: string
    readonly photo: Hash
    readonly by: string
    readonly at: string
  }[]
  readonly scaleChecks: readonly {
    readonly scale: string
    readonly checkWeightGr: number
    readonly readGr: number
    readonly at: string
  }[]
  readonly builder: string
}

/** The readings of a point that still stand, oldest first. */
export const standing = (arrow: BenchArrow, point: DataPoint): readonly KeptReading[] =>
  arrow.readings.filter((kept) => kept.reading.point === point && kept.withdrawn === null)

/** The reading of a point that counts: the last that still stands. */
export const accepted = (arrow: BenchArrow, point: DataPoint): KeptReading | undefined => standing(arrow, point).at(-1)

/** The arrows still in the set, by number. */
export const building = (bench: Bench): readonly BenchArrow[] =>
  bench.arrows.filter((arrow) => arrow.state === 'building').toSorted((a, b) => a.no - b.no)
