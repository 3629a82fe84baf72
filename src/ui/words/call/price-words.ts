/** Money as the shop's currency writes it, from whole cents. */
import type { PriceLine } from '../../../domain/call/price-lines'

const WHAT: Readonly<Record<PriceLine['what'], string>> = {
  arrows: 'Arrows',
  spares: 'Spares',
  indexing: 'Indexing',
  'test kit': 'Test kit',
  rush: 'Rush',
}
export const priceLineWords = ({ what }: PriceLine): string => WHAT[what]

const CENTS = 100

/** `USD 1 234.50`: the shop’s own name of its currency first, thousands set apart by a narrow space. */
export function showMoney(cents: number, currency: string): string {
  const whole = Math.trunc(cents / CENTS)
  const rest = String(Math.abs(cents % CENTS)).padStart(2, '0')
  return `${currency} ${String(whole).replaceAll(/\B(?=(\d{3})+$)/g, '\u202f')}.${rest}`
}
