import { chronographFit } from '@/core/bow/chronograph-fit'
import { launchSpeed } from '@/core/bow/launch-speed'
import { RATING_CONDITIONS } from '@/core/bow/rated-energy'
import { storedEnergy } from '@/core/bow/stored-energy'
import { DRAW_LENGTH_ADDS } from '@/core/bow/power-stroke'
import { LIGHT_LIMITS } from '@/core/energy/grains-per-pound'
import {
  feetPerSecond,
  footPounds,
  grains,
  grams,
  inches,
  inFeetPerSecond,
  inFootPounds,
  inGrains,
  inInches,
  inPoundsForce,
  inUnit,
  joules,
  metresPerSecond,
  poundsForce,
  quantity,
  newtons,
  ratio,
} from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const certain = <Q extends number>(value: Q, none: Q) => ({ value, sd: none, low: value, high: value })
const synthetic = {
  energy: certain(footPounds(75), joules(0)),
  virtualMass: certain(grains(110), grains(0)),
  correlation: ratio(0),
}
const speedOf = (gr: number) => inFeetPerSecond(answer(launchSpeed(synthetic, grains(gr))).value)
const SYNTHETIC = [
  [350, '271.00'],
  [450, '245.61'],
  [550, '226.24'],
  [650, '210.83'],
  [800, '192.68'],
] as const
const fitted = () =>
  answer(chronographFit(SYNTHETIC.map(([gr]) => ({ mass: grains(gr), speed: feetPerSecond(speedOf(gr)) }))))

/** [LIMBS]: what stays in the bow goes with the arrow's weight, m_v = 5.7697 g + 0.0583·m of 42.97 J. */
const MEASURED = [
  [15, '63.0125'],
  [20, '56.4851'],
  [25, '51.6400'],
  [30, '47.8601'],
] as const
const recurve = {
  energy: certain(joules(42.97 / 1.0583), joules(0)),
  virtualMass: certain(grams(5.7697 / 1.0583), grams(0)),
  correlation: ratio(0),
}
const of4297 = (g: number): number => answer(launchSpeed(recurve, grams(g))).value
/** From the speeds before they were printed: four decimals leave m_v open by 1e-4 g. */
const measured = () =>
  answer(chronographFit(MEASURED.map(([g]) => ({ mass: grams(g), speed: metresPerSecond(of4297(g)) }))))

const extrapolated = () =>
  answer(
    launchSpeed(
      answer(
        chronographFit(
          [
            { mass: grains(452), speed: feetPerSecond(268) },
            { mass: grains(601), speed: feetPerSecond(236.5) },
          ],
          feetPerSecond(1.5),
        ),
      ),
      grains(825),
    ),
  )

const TUYN = [
  [42.6, 170.5, 43.0, '0.581'],
  [50.3, 170, 50.9, '0.581'],
  [45.6, 178, 44.0, '0.582'],
  [33.2, 130, 42.9, '0.595'],
] as const
/** The curve F·(x + a·x(1 − x)) of the published energy W, in 400 steps. */
const fullness = (w: number, f: number, d: number) => {
  const a = 6 * (w / (f * (d / 100)) - 0.5)
  const points = Array.from({ length: 401 }, (_, i) => {
    const x = i / 400
    return { draw: quantity(22 + d * x, 'cm'), force: newtons(f * (x + a * x * (1 - x))) }
  })
  return answer(storedEnergy(points)).fullness
}
const straight = () =>
  answer(storedEnergy([7, 14, 21, 28].map((at) => ({ draw: inches(at), force: poundsForce(70 * ((at - 7) / 21)) }))))

export const BOW_CHECKS = [
  ...checks(
    { status: 'C', source: 'KLOPSTEG' },
    SYNTHETIC.map(([gr, says]) => [`speed of ${gr} gr, E 75, m_v 110`, says, 'ft/s', () => speedOf(gr)] as const),
  ),
  ...checks({ status: 'C', source: 'KLOPSTEG' }, [
    ['energy the fit returns of these', '75.0000', 'ft·lbf', () => inFootPounds(fitted().energy.value)],
    ['virtual mass it returns', '110.000', 'gr', () => inGrains(fitted().virtualMass.value)],
    [
      'standard error at 825 gr from 452 and 601 gr read to 1.5 ft/s',
      '2.6',
      'ft/s',
      () => inFeetPerSecond(extrapolated().sd),
    ],
  ]),
  ...checks(
    { status: 'P', source: 'LIMBS' },
    MEASURED.map(([g, says]) => [`speed of ${g} g off the recurve`, says, 'm/s', () => of4297(g)] as const),
  ),
  ...checks({ status: 'C', source: 'LIMBS' }, [
    ['energy the fit returns of these', '40.603', 'J', () => measured().energy.value],
    ['virtual mass it returns', '5.4519', 'g', () => inUnit(measured().virtualMass.value, 'g')],
  ]),
  ...checks(
    { status: 'P', source: 'TUYN92', where: 'Table I' },
    TUYN.map(([w, f, d, says]) => [`W/(F·d) of ${w} J`, says, '', () => fullness(w, f, d)] as const),
  ),
  ...checks({ status: 'C', source: 'MECHANICS' }, [['of a straight line', '0.500', '', () => straight().fullness]]),
  ...checks({ status: 'P', source: 'F1544' }, [
    ['draw weight of the rating', '70', 'lb', () => inPoundsForce(RATING_CONDITIONS.peakDrawWeight)],
    ['draw length of the rating', '30', 'in', () => inInches(RATING_CONDITIONS.drawLength)],
    ['arrow of the rating', '350', 'gr', () => inGrains(RATING_CONDITIONS.arrowMass)],
  ]),
  ...checks({ status: 'P', source: 'F1880' }, [
    ['what draw length adds to the pivot', '1.75', 'in', () => inInches(DRAW_LENGTH_ADDS)],
  ]),
  ...checks({ status: 'P', source: 'WSR00-06-090' }, [
    ['recommended grains per pound', '6', 'gr/lb', () => inUnit(LIGHT_LIMITS[1].limit, 'gr/lb')],
  ]),
]
