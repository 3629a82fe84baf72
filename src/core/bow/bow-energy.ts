import type { Bounds, Estimate } from '../outcome'
import type { Energy, Mass, Ratio } from '../quantity'

/**
 * What a bow gives any arrow: E = ½(m + m_v)v² at every arrow weight m [KLOPSTEG]. The two errors go together, and the
 * correlation keeps a speed near the measured weights as sure as the readings were.
 */
export interface BowEnergy {
  readonly energy: Estimate<Energy>
  readonly virtualMass: Estimate<Mass>
  readonly correlation: Ratio
  /** Lightest and heaviest arrow shot; absent where none was. */
  readonly measured?: Bounds<Mass>
}
