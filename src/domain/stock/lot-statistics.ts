/** What a lot's weighings come to: mean and spread of one piece, and how well it keeps inside the catalogue's tolerance. */
import type { Outcome } from '../../core/outcome'
import { difference, grains, sum } from '../../core/quantity'
import type { Mass } from '../../core/quantity'
import { capability } from '../../core/statistics/capability'
import type { Capability } from '../../core/statistics/capability'
import { setStatistics } from '../../core/statistics/set-statistics'
import type { SetStatistics } from '../../core/statistics/set-statistics'
import { catalogueWeight } from './catalogue-weight'
import type { LotView } from './lot-view'
import type { Part } from './part'
import type { Weighing } from './weighing'

export interface LotStatistics {
  readonly weighed: readonly Weighing[]
  /** Weight of one piece of each weighing, in their order. */
  readonly each: readonly Mass[]
  readonly statistics: Outcome<SetStatistics<'mass'>>
  /** The catalogue's: nominal, and the tolerance either side. */
  readonly nominal: Mass
  readonly tolerance: Mass
  readonly lower: Mass
  readonly upper: Mass
  /** Undefined while one weighing says nothing of a spread. */
  readonly keeps: Outcome<Capability> | undefined
}

/** A shaft is asked about at its raw length, as it is received. */
export function lotStatistics(part: Part, view: Pick<LotView, 'weighed'>): LotStatistics {
  const weighed = view.weighed.filter(({ what }) => what === 'weight')
  const each = weighed.map(({ weightGr, pieces }) => grains(weightGr / pieces))
  const statistics = setStatistics(each, 'gr')
  const { nominal, tolerance } = catalogueWeight(part, part.kind === 'shaft' ? part.rawLengthIn : 0)
  const [lower, upper] = [difference(nominal, tolerance), sum(nominal, tolerance)]
  const sd = statistics.ok ? statistics.value.sd : undefined
  const keeps =
    statistics.ok && sd !== undefined
      ? capability({ mean: statistics.value.mean, sd, count: each.length, lower, upper, target: nominal }, 'gr')
      : undefined
  return { weighed, each, statistics, nominal, tolerance, lower, upper, keeps }
}
