/** Earliest day an order can leave and arrive, counted in calendar days from today, against the day of travel. */
import { type Outcome, known, term } from '../../core/outcome'
import { type Time, quantity } from '../../core/quantity'
import type { Rules } from '../shop/rules'
import type { Answers } from './answers'
import { daysAfter, daysBetween } from './days-after'
import { toldText, toldYes } from './told'

export interface ShipDates {
  /** ISO days. */
  readonly readyOn: string
  readonly arrivesOn: string
  readonly travelOn: string | null
  /** From arrival to travel; below zero: too late. */
  readonly toSpare: Time | null
  /** The last day the bench may begin. */
  readonly beginBy: string | null
}

const days = (n: number) => quantity(n, 'day')

export function shipDates(answers: Answers, rules: Rules, today: string): Outcome<ShipDates> {
  const isRush = toldYes(answers, 'rush')
  const bench = isRush ? (rules.rushBenchDays ?? rules.benchDays) : rules.benchDays
  const readyOn = daysAfter(today, bench + rules.cureDays)
  const arrivesOn = daysAfter(readyOn, rules.transitDays)
  const travelOn = toldText(answers, 'travelOn') ?? null
  const toSpare = travelOn === null ? null : days(daysBetween(arrivesOn, travelOn))
  const whole = bench + rules.cureDays + rules.transitDays
  return known(
    { readyOn, arrivesOn, travelOn, toSpare, beginBy: travelOn === null ? null : daysAfter(travelOn, -whole) },
    {
      equation: 'ready = today + bench + cure; arrives = ready + transit',
      inputs: [
        term(isRush ? 'bench, rush' : 'bench', days(bench), 'day', 'shop rule'),
        term('cure', days(rules.cureDays), 'day', 'shop rule'),
        term('transit', days(rules.transitDays), 'day', 'shop rule'),
      ],
      result: [
        term('from today to arrival', days(whole), 'day'),
        ...(toSpare === null ? [] : [term('to spare before travel', toSpare, 'day')]),
      ],
      source: ['CP'],
    },
  )
}
