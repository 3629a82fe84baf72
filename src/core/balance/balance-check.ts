import { difference, inQuadrature, type Length, magnitude, scaled } from '../quantity'
import { type Estimate, known, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'

type Uncertain = Pick<Estimate<Length>, 'value' | 'sd'>

const Z95 = 1.959_964 // normal quantile of 0.975

/**
 * The measured against the computed balance point: a difference that both readings' errors cannot explain means a part in
 * the wrong place, a wrong weight, or a wrong reading.
 *
 *   allowed = 1.96·√(u²(measured) + u²(computed))
 *
 * @returns measured less computed; beyond what is allowed comes the finding `balance-disagrees`; `outside-model`
 *
 * Source: [GUM] 5.1.2, 95 %.
 */
export function balanceCheck(measured: Uncertain, computed: Uncertain): Outcome<Length> {
  const refused = refusal([
    ...outside('measured balance point', measured.value, BALANCE_BOUNDS.balance, 'in'),
    ...outside('computed balance point', computed.value, BALANCE_BOUNDS.balance, 'in'),
    ...outside('uncertainty of the measured', measured.sd, BALANCE_BOUNDS.placeSd, 'in'),
    ...outside('uncertainty of the computed', computed.sd, BALANCE_BOUNDS.placeSd, 'in'),
  ])
  if (refused) return refused
  const off = difference(measured.value, computed.value)
  const allowed = scaled(inQuadrature(measured.sd, computed.sd), Z95)
  return known(
    off,
    {
      equation: 'off = measured − computed; allowed = 1.96·√(u² + u²)',
      inputs: [
        term('measured balance point', measured.value, 'in', 'read'),
        term('computed balance point', computed.value, 'in', 'computed'),
        term('uncertainty of the measured', measured.sd, 'in'),
        term('uncertainty of the computed', computed.sd, 'in'),
      ],
      result: [term('difference', off, 'in'), term('allowed', allowed, 'in')],
      source: ['GUM'],
    },
    magnitude(off) > allowed
      ? [{ code: 'balance-disagrees', measured: measured.value, computed: computed.value, allowed }]
      : [],
  )
}
