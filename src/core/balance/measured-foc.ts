import { difference, type Length, type Ratio, ratio, scaled } from '../quantity'
import { type Estimate, known, noAnswer, type Outcome, term } from '../outcome'
import { outside, refusal } from '../refusal'
import { BALANCE_BOUNDS } from './balance-bounds'
import { foc } from './foc'

/** What the front end of a length was read at. Only the first two are the length of [F1435]. */
export type FrontPoint = 'shaft front' | 'outsert shoulder' | 'head tip'

/** A length off a rule, and the step the rule is read to. */
export interface RuleReading {
  readonly value: Length
  readonly step: Length
}

export interface FocReadings {
  readonly balance: RuleReading
  readonly length: RuleReading
  readonly frontPoint: FrontPoint
  /** How far the head reaches ahead of the shaft front; needed where the length was read to its tip. */
  readonly headAhead?: Length
}

const Z95 = 1.959_964 // normal quantile of 0.975
const HEAD_BOUNDS = BALANCE_BOUNDS.place

/**
 * FOC from the balance point and the length as they were read, with its 95 % band from the steps of the rule.
 *
 *   u(FOC) = √((u_B/L)² + (B·u_L/L²)²),  u = step/√12
 *
 * @returns FOC. A length read to the tip of the head is the finding `length-to-head-tip`: with the head's length known
 *   the answer is the right one, without it there is none; `outside-model`
 *
 * Source: [F1435]; [GUM] 5.1.2 and F.2.2.1.
 */
export function measuredFoc({ balance, length, frontPoint, headAhead }: FocReadings): Outcome<Estimate<Ratio>> {
  const refused = refusal([
    ...outside('step of the balance reading', balance.step, BALANCE_BOUNDS.step, 'in'),
    ...outside('step of the length reading', length.step, BALANCE_BOUNDS.step, 'in'),
    ...(headAhead === undefined ? [] : outside('head ahead of the shaft', headAhead, HEAD_BOUNDS, 'in')),
  ])
  if (refused) return refused
  const asRead = foc(balance.value, length.value)
  if (!asRead.ok) return asRead
  const toTip = frontPoint === 'head tip'
  const wrong = { code: 'length-to-head-tip', length: length.value, focAsRead: asRead.value } as const
  if (toTip && headAhead === undefined) return noAnswer(wrong)
  const right = toTip && headAhead !== undefined ? difference(length.value, headAhead) : length.value
  const answer = foc(balance.value, right)
  if (!answer.ok) return answer

  const uB = scaled(balance.step, 1 / Math.sqrt(12))
  const uL = scaled(length.step, 1 / Math.sqrt(12))
  const sd = ratio(Math.hypot(uB / right, (balance.value * uL) / right ** 2))
  const value = answer.value
  const reach = Z95 * sd
  return known(
    { value, sd, low: ratio(value - reach), high: ratio(value + reach) },
    {
      equation: 'u(FOC) = √((u_B/L)² + (B·u_L/L²)²); u = step/√12',
      inputs: [
        term('balance point', balance.value, 'in', 'read'),
        term('arrow length', right, 'in', 'read', frontPoint),
        term('step of the balance reading', balance.step, 'in'),
        term('step of the length reading', length.step, 'in'),
      ],
      result: [term('FOC', value, '%'), term('standard uncertainty', sd, '%')],
      source: ['F1435', 'GUM'],
      steps: [answer.derivation],
    },
    toTip ? [{ ...wrong, foc: value }] : [],
  )
}
