/** The demo shop's own rules: an invented shop in an invented valley. */
import type { Rules } from '../domain/shop/rules'
import { readPlaces } from '../domain/shop/read-places'
import { DEFAULT_RULES } from '../domain/shop/rules'

export const DEMO_RULES: Rules = {
  ...DEFAULT_RULES,
  shopName: 'Saltmarsh Arrows',
  builders: ['Ilse', 'Tomas'],
  scales: [{ name: 'Scale 1', resolutionGr: 0.1, capacityGr: 1500, calibrationGr: 0.1, checkWeightGr: 500 }],
  jigs: ['Jig 1', 'Jig 2'],
  places: [...readPlaces()],
  prices: {
    perArrowCents: 9500,
    indexingCents: 800,
    testKitCents: 18_000,
    rushCents: 6000,
    depositPercent: 40,
    taxPercent: 0,
  },
}
