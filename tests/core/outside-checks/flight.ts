import { humidAirDensity } from '@/core/air/humid-air-density'
import { standardAtmosphere } from '@/core/air/standard-atmosphere'
import { PUBLISHED_DRAG } from '@/core/flight/drag-band'
import { dragDecay } from '@/core/flight/drag-decay'
import { type FinSet, finLift } from '@/core/flight/fin-lift'
import { flatFire } from '@/core/flight/flat-fire'
import {
  celsius,
  feetPerSecond,
  grains,
  inFeetPerSecond,
  inPercent,
  inUnit,
  kilogramsPerCubicMetre,
  metres,
  millimetres,
  quantity,
  ratio,
  yards,
} from '@/core/quantity'
import { runOutOverSpan } from '@/core/runout/over-span'
import { inches, inInches } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const decay = () =>
  answer(
    dragDecay({
      mass: grains(650),
      diameter: millimetres(6.2),
      density: kilogramsPerCubicMetre(1.225),
      drag: ratio(2),
    }),
  )
const flown = (yd: number) => answer(flatFire(feetPerSecond(250), decay(), yards(yd)))
/** Geometric height whose geopotential is the table's: the published rows are by geopotential height. */
const standard = (km: number) => {
  const h = km * 1000
  return answer(standardAtmosphere(metres((6_356_766 * h) / (6_356_766 - h)))).density
}
const humid = (t: number, mmHg: number, humidity: number) =>
  answer(humidAirDensity(celsius(t), quantity(mmHg, 'mmHg'), ratio(humidity)))

/** [BARROWMAN] in units of the body's diameter, here millimetres times 10: s 1, c_r 2, c_t 1, x_r 1, root at 10, cone 3. */
const fins = (count: 3 | 4): FinSet => ({
  count,
  span: millimetres(10),
  rootChord: millimetres(20),
  tipChord: millimetres(10),
  sweep: millimetres(10),
  rootFront: millimetres(0),
})
const lift = (count: 3 | 4) => answer(finLift(fins(count), millimetres(10)))
/** From the tip of the cone backwards, in diameters. */
const finCentre = () => 10 - inUnit(lift(3).centre, 'mm') / 10
const whole = () => (2 * (2 / 3) * 3 + lift(3).slope * finCentre()) / (2 + lift(3).slope)

export const AIR_CHECKS = [
  ...checks({ status: 'P', source: 'USSA76', where: 'Table I, geopotential' }, [
    ['density at sea level', '1.2250', 'kg/m³', () => standard(0)],
    ['density at 1 km', '1.1117', 'kg/m³', () => answer(standardAtmosphere(metres(1000))).density],
    ['density at 2 km', '1.0066', 'kg/m³', () => answer(standardAtmosphere(metres(2000))).density],
    ['density at 3 km', '0.9093', 'kg/m³', () => answer(standardAtmosphere(metres(3000))).density],
  ]),
  ...checks({ status: 'P', source: 'CIPM07', where: 'vectors good to 1e-4' }, [
    ['10 °C, 730 mmHg, 40 %', '1.1957', 'kg/m³', () => humid(10, 730, 0.4)],
    ['40 °C, 760 mmHg, 40 %', '1.1150', 'kg/m³', () => humid(40, 760, 0.4)],
  ]),
]

export const FLIGHT_CHECKS = [
  ...checks({ status: 'C', source: 'MECHANICS' }, [
    ['k of 650 gr, ⌀6.2 mm, C_d 2.0', '8.78068e-4', '1/m', decay],
    ['speed left of 250 ft/s at 20 yd', '246.018', 'ft/s', () => inFeetPerSecond(flown(20).speed)],
    ['speed left at 40 yd', '242.099', 'ft/s', () => inFeetPerSecond(flown(40).speed)],
    ['speed left at 60 yd', '238.242', 'ft/s', () => inFeetPerSecond(flown(60).speed)],
    ['energy kept at 40 yd', '93.779', '%', () => inPercent(flown(40).energyKept)],
  ]),
  ...checks({ status: 'P', source: 'MIYAZAKI20' }, [
    ['drag coefficient, laminar', '1.3', '', () => PUBLISHED_DRAG.min],
    ['drag coefficient, turbulent', '2.6', '', () => PUBLISHED_DRAG.max],
  ]),
  ...checks({ status: 'C', source: 'BARROWMAN' }, [
    ['lift of three fins', '7.119911', '1/rad', () => lift(3).slope],
    ['lift of four fins', '9.493215', '1/rad', () => lift(4).slope],
    ['centre of the fins', '10.833333', 'diameters', finCentre],
    ['centre of the whole', '8.896180', 'diameters', whole],
  ]),
  ...checks({ status: 'P', source: 'ARR203' }, [
    [
      'run-out of 0.001 on 28 in, seen on 25 in',
      '0.000797',
      'in',
      () => inInches(answer(runOutOverSpan(inches(0.001), inches(28), inches(25)))),
    ],
  ]),
]
