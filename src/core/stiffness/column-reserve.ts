import type { Arrow } from '../arrow/arrow'
import { known, noAnswer, type Outcome, term } from '../outcome'
import { type Ratio, ratio } from '../quantity'
import { criticalForce, finishedMass } from './critical-force'
import { type Launch, nockForce } from './nock-force'

/**
 * Column reserve: how many times the bow's greatest push on the nock the arrow could carry as a column at rest.
 *
 *   reserve = F_cr/F_nock
 *
 * An index by which arrows are compared, not a margin of strength: launch is brief, arrows picked by custom lie between
 * about 0.75 and 1.30, and bare-shaft tuning on the client's bow decides.
 *
 * @returns the reserve, or the findings of {@link criticalForce} and {@link nockForce}
 */
export function columnReserve(arrow: Arrow, launch: Launch): Outcome<Ratio> {
  const critical = criticalForce(arrow)
  if (!critical.ok) return critical
  const push = nockForce(launch, finishedMass(arrow))
  if (!push.ok) return noAnswer(...push.findings)
  const reserve = ratio(critical.value / push.value)
  return known(reserve, {
    equation: 'reserve = F_cr/F_nock',
    inputs: [
      term('critical force at the nock', critical.value, 'lbf', 'computed'),
      term('force at the nock', push.value, 'lbf', 'computed'),
    ],
    result: [term('column reserve', reserve, '1')],
    source: ['OWN'],
    note: 'An index for comparing arrows on like bows, not a margin of strength; bare-shaft tuning on the bow decides.',
    steps: [critical.derivation, push.derivation],
  })
}
