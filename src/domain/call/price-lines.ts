/** What the order costs, in whole cents: the shop's prices, its tax and its deposit. */
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import { toldNumber, toldText, toldYes } from './told'

export interface PriceLine {
  readonly what: 'arrows' | 'spares' | 'indexing' | 'test kit' | 'rush'
  readonly count: number
  readonly eachCents: number
  readonly cents: number
}

export interface Price {
  readonly currency: string
  readonly lines: readonly PriceLine[]
  readonly subtotalCents: number
  readonly taxPercent: number
  readonly taxCents: number
  readonly totalCents: number
  readonly depositPercent: number
  readonly depositCents: number
}

/** Arrows of an order where the client has named no number. */
export const USUAL_QUANTITY = 6

export function priceOf(answers: Answers, rules: Rules): Price {
  const { prices } = rules
  const quantity = toldNumber(answers, 'quantity') ?? USUAL_QUANTITY
  const spares = toldNumber(answers, 'spares') ?? 0
  const indexing = toldText(answers, 'indexing')
  const isIndexed = indexing !== undefined && indexing !== 'none'
  const line = (what: PriceLine['what'], count: number, eachCents: number): readonly PriceLine[] =>
    count === 0 ? [] : [{ what, count, eachCents, cents: count * eachCents }]
  const lines = [
    ...line('arrows', quantity, prices.perArrowCents),
    ...line('spares', spares, prices.perArrowCents),
    ...line('indexing', isIndexed ? quantity + spares : 0, prices.indexingCents),
    ...line('test kit', toldYes(answers, 'testKit') ? 1 : 0, prices.testKitCents),
    ...line('rush', toldYes(answers, 'rush') ? 1 : 0, prices.rushCents),
  ]
  const subtotalCents = lines.reduce((total, each) => total + each.cents, 0)
  const taxCents = shareOf(subtotalCents, prices.taxPercent)
  const totalCents = subtotalCents + taxCents
  return {
    currency: rules.currency,
    lines,
    subtotalCents,
    taxPercent: prices.taxPercent,
    taxCents,
    totalCents,
    depositPercent: prices.depositPercent,
    depositCents: shareOf(totalCents, prices.depositPercent),
  }
}

const THOUSANDTHS = 1000 // of a percent, so that 7.25 % is a whole number

/** A share in percent of whole cents, half a cent going up. */
export function shareOf(cents: number, percent: number): number {
  const share = BigInt(cents) * BigInt(Math.round(percent * THOUSANDTHS))
  const whole = BigInt(100 * THOUSANDTHS)
  return Number((share * 2n + whole) / (whole * 2n))
}
