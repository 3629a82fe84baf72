import { outside } from '../refusal'
import type { Forecast } from './forecast-weight'
import { SPREAD_BOUNDS, WEIGHT_BOUNDS } from './weight-bounds'

/** What is wrong with a forecast that someone hands back in. */
export const forecastProblems = ({ total, ownSd, sharedBy }: Forecast) => [
  ...outside('weight before trim', total.value, WEIGHT_BOUNDS, 'gr'),
  ...outside('standard uncertainty', total.sd, SPREAD_BOUNDS, 'gr'),
  ...outside('own standard deviation', ownSd, SPREAD_BOUNDS, 'gr'),
  ...sharedBy.flatMap(({ key, sd }) => outside(`shared standard deviation of ${key}`, sd, SPREAD_BOUNDS, 'gr')),
]
