/** The price, line by line, in the shop's currency. */
import type { Price } from '../../domain/call/price-lines'
import { priceLineWords, showMoney } from '../words/call/price-words'
import { showPlain } from '../words/format'
import look from './call.module.css'

export function PriceTable({ price }: { price: Price }) {
  const { currency, lines, subtotalCents, taxCents, taxPercent, totalCents, depositCents, depositPercent } = price
  const money = (cents: number) => showMoney(cents, currency)
  return (
    <table className={look.prices} data-label="">
      <caption className="unseen">Price</caption>
      <tbody>
        {lines.map((line) => (
          <tr key={line.what} data-price={line.what} data-cents={line.cents}>
            <th scope="row">
              {priceLineWords(line)}, {line.count} × {money(line.eachCents)}
            </th>
            <td>{money(line.cents)}</td>
          </tr>
        ))}
        {taxCents === 0 ? null : (
          <>
            <tr>
              <th scope="row">Before tax</th>
              <td>{money(subtotalCents)}</td>
            </tr>
            <tr>
              <th scope="row">Tax, {showPlain(taxPercent)} %</th>
              <td>{money(taxCents)}</td>
            </tr>
          </>
        )}
        <tr className={look.total} data-price="total" data-cents={totalCents}>
          <th scope="row">Total</th>
          <td>{money(totalCents)}</td>
        </tr>
        <tr data-price="deposit" data-cents={depositCents}>
          <th scope="row">Deposit, {showPlain(depositPercent)} %</th>
          <td>{money(depositCents)}</td>
        </tr>
      </tbody>
    </table>
  )
}
