/** What the shop's passes at the grinder really took off, each told to the pass of the rules that it is nearest to. */
import type { Rules } from '../shop/rules'
import type { Weighing } from './weighing'

export type PassName = 'light' | 'usual' | 'heavy'

export interface PassLearned {
  readonly pass: PassName
  /** What the rules say, gr. */
  readonly saidGr: number
  /** What was taken off, gr, one a pass. */
  readonly removedGr: readonly number[]
}

/** Nearness is by ratio: 0.9 lies as far from 0.6 as from 1.35. */
export function passesLearned(weighed: readonly Weighing[], { passes }: Pick<Rules, 'passes'>): readonly PassLearned[] {
  const said: readonly (readonly [PassName, number])[] = [
    ['light', passes.lightGr],
    ['usual', passes.usualGr],
    ['heavy', passes.heavyGr],
  ]
  const far = (gr: number, wanted: number) => Math.abs(Math.log(gr / wanted))
  const nearest = (gr: number) => said.toSorted((a, b) => far(gr, a[1]) - far(gr, b[1]))[0]![0]
  const removed = weighed.filter(({ what }) => what === 'pass').map(({ weightGr }) => weightGr)
  return said.map(([pass, saidGr]) => ({ pass, saidGr, removedGr: removed.filter((gr) => nearest(gr) === pass) }))
}
