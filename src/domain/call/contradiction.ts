/** What two answers cannot both be, as data: its sentence stands in ui/words. Numbers in the units the questions ask in. */
import type { QuestionId } from './questions'

export type Contradiction = { readonly questions: readonly QuestionId[] } & (
  | {
      readonly code: 'marks against draw length'
      readonly markIn: number
      readonly expectedIn: number
      readonly drawIn: number
    }
  | {
      readonly code: 'present arrow short'
      readonly presentIn: number
      readonly drawIn: number
      readonly restIn: number
    }
  | { readonly code: 'present arrow long'; readonly presentIn: number; readonly drawIn: number }
  | { readonly code: 'riser marks disagree'; readonly apartIn: number; readonly toldIn: number }
  | { readonly code: 'module against draw length'; readonly markIn: number; readonly drawIn: number }
  | {
      readonly code: 'draw weight off label'
      readonly peakLb: number
      readonly labelLb: number
      readonly percent: number
    }
  | {
      readonly code: 'rating against chronograph'
      readonly arrowGr: number
      readonly readFps: number
      readonly lowFps: number
      readonly highFps: number
    }
  | {
      readonly code: 'heavier is faster'
      readonly light: readonly [number, number]
      readonly heavy: readonly [number, number]
    }
  | {
      readonly code: 'arrives too late'
      readonly arrivesOn: string
      readonly travelOn: string
      readonly cureDays: number
      readonly days: number
    }
  | { readonly code: 'travel is past'; readonly travelOn: string; readonly today: string }
  | { readonly code: 'bevel against fletch'; readonly bevel: 'right' | 'left'; readonly side: 'right' | 'left' }
  | {
      readonly code: 'no shaft for the draw weight'
      readonly peakLb: number
      readonly greatestLb: number
      readonly names: readonly string[]
    }
  | {
      readonly code: 'no shaft for the front weight'
      readonly frontGr: number
      readonly greatestGr: number
      readonly names: readonly string[]
    }
  | { readonly code: 'wish under the guide'; readonly wishGr: number; readonly guideGr: number }
  | {
      readonly code: 'wish under the floor'
      readonly wishGr: number
      readonly leastGr: number
      readonly perLbGr: number
    }
  | {
      readonly code: 'speed out of reach'
      readonly wishFps: number
      readonly lowFps: number
      readonly highFps: number
      readonly workingGr: number
    }
  | { readonly code: 'head heavier than the front'; readonly headGr: number; readonly frontGr: number }
  | { readonly code: 'present front too heavy'; readonly frontGr: number; readonly presentGr: number }
)
