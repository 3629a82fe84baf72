import { type Mass, scaled } from '../quantity'
import { type Estimate, type Known, known, type Outcome, term } from '../outcome'
import type { Finding } from '../finding'
import { refusal } from '../refusal'
import type { ForecastItem } from './forecast-item'
import { type Forecast, forecastWeight } from './forecast-weight'

export interface SetForecast {
  readonly arrows: readonly Forecast[]
  /** Mean weight of the set with its 95 % band: arrows' own errors average out, shared ones do not. */
  readonly mean: Estimate<Mass>
}

/**
 * Forecasts of every arrow of a set, and of the set's mean weight.
 *
 *   u²(mean) = Σ own²/n² + Σ over causes (Σ shared)²/n²
 *
 * @param arrows the items of each, at least one arrow
 * @returns the forecasts, or every finding of the arrows that have none
 *
 * Source: [GUM] 5.1.2 and 5.2.
 */
export function forecastSet(arrows: readonly (readonly ForecastItem[])[]): Outcome<SetForecast> {
  const answered: Known<Forecast>[] = []
  const problems: Finding[] = []
  for (const items of arrows) {
    const forecast = forecastWeight(items)
    if (forecast.ok) answered.push(forecast)
    else problems.push(...forecast.findings)
  }
  const refused = refusal(problems)
  if (refused) return refused
  const whole = forecastWeight(arrows.flat())
  if (!whole.ok) return whole
  const share = (m: Mass) => scaled(m, 1 / answered.length)
  const { value, sd, low, high } = whole.value.total
  const mean = { value: share(value), sd: share(sd), low: share(low), high: share(high) }
  return known(
    { arrows: answered.map((outcome) => outcome.value), mean },
    {
      equation: 'mean = Σ weight/n; u² = (Σ own² + Σ over causes (Σ shared)²)/n²',
      inputs: answered.map((outcome, i) => term(`arrow ${i + 1}`, outcome.value.total.value, 'gr', 'computed')),
      result: [term('mean weight', mean.value, 'gr'), term('standard uncertainty', mean.sd, 'gr')],
      source: ['GUM'],
      steps: answered.map((outcome) => outcome.derivation),
    },
  )
}
