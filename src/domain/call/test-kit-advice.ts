/** Whether two or three arrows of differing front weight or length should be sent before the set is built, and why. */
import type { BowSpeed } from '../../core/bow/bow-speed'
import { type Length, inGrains } from '../../core/quantity'
import type { SpineRange } from '../../core/stiffness/spine-called-for'
import type { Answers } from './answers'
import { toldNumber, toldText } from './told'

export type TestKitReason =
  | { readonly kind: 'speed not measured' }
  | { readonly kind: 'fingers' }
  | { readonly kind: 'short of centre' }
  | { readonly kind: 'tunes badly'; readonly how: string }
  | { readonly kind: 'far from what is shot'; readonly presentGr: number; readonly workingGr: number }
  | { readonly kind: 'several spines fit'; readonly names: readonly string[] }

const FAR = 1.3 // times the arrow shot now, common practice, no source [CP]
const BAD_TUNES: readonly string[] = ['fishtails', 'porpoises']

export interface TestKitFacts {
  readonly workingGr: number | undefined
  readonly speed: BowSpeed | undefined
  readonly called: SpineRange | undefined
  readonly shafts: readonly { readonly name: string; readonly spine: Length }[]
}

/** Reasons to send a kit; none: build the set. */
export function testKitReasons(
  answers: Answers,
  { workingGr, speed, called, shafts }: TestKitFacts,
): readonly TestKitReason[] {
  const tune = toldText(answers, 'presentTune')
  const heaviestGr = speed?.measured === undefined ? undefined : inGrains(speed.measured.max)
  const presentGr = Math.max(toldNumber(answers, 'presentWeightGr') ?? 0, heaviestGr ?? 0)
  const fitting =
    called === undefined ? [] : shafts.filter(({ spine }) => spine >= called.stiffest && spine <= called.softest)
  const spines = new Set(fitting.map(({ spine }) => spine))
  return [
    ...(speed !== undefined && speed.provenance !== 'chronograph' && speed.provenance !== 'one weight'
      ? [{ kind: 'speed not measured' as const }]
      : []),
    ...(toldText(answers, 'looseWith') === 'fingers' ? [{ kind: 'fingers' as const }] : []),
    ...(toldText(answers, 'centreShot') === 'short of centre' ? [{ kind: 'short of centre' as const }] : []),
    ...(tune !== undefined && BAD_TUNES.includes(tune) ? [{ kind: 'tunes badly' as const, how: tune }] : []),
    ...(workingGr !== undefined && presentGr > 0 && workingGr > FAR * presentGr
      ? [{ kind: 'far from what is shot' as const, presentGr, workingGr }]
      : []),
    ...(spines.size > 1 ? [{ kind: 'several spines fit' as const, names: fitting.map(({ name }) => name) }] : []),
  ]
}

/** A kit is advisable for two reasons or more, or where the bow is shot with the fingers or tunes badly now. */
export const isTestKitAdvisable = (reasons: readonly TestKitReason[]): boolean =>
  reasons.length > 1 || reasons.some(({ kind }) => kind === 'fingers' || kind === 'tunes badly')
