import { balancePoint } from '@/core/balance/balance-point'
import { foc } from '@/core/balance/foc'
import { FOC_CLASSES } from '@/core/balance/foc-class'
import { measuredFoc } from '@/core/balance/measured-foc'
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import { momentum } from '@/core/energy/momentum'
import {
  feetPerSecond,
  grains,
  inches,
  inFootPounds,
  inGrains,
  inInches,
  inPercent,
  inSlugFeetPerSecond,
  inUnit,
  newtonSquareMetres,
  quantity,
  STANDARD_GRAVITY_SI,
} from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const energy = (gr: number, fps: number) => answer(kineticEnergy(grains(gr), feetPerSecond(fps)))
const push = (gr: number, fps: number) => answer(momentum(grains(gr), feetPerSecond(fps)))
const at = (balance: number, length: number) => inPercent(answer(foc(inches(balance), inches(length))))

/** Five parts about their own centres; 290 gr at 15.0 is the shaft. */
const FIVE = () =>
  answer(
    balancePoint({
      length: inches(29.5),
      shaft: { mass: grains(290), rear: inches(0.5), rigidity: newtonSquareMetres(8) },
      pieces: [
        [250, 30.5],
        [100, 28.75],
        [24, 2.5],
        [10, 0.2],
      ].map(([gr, centre], i) => ({
        name: `part ${i}`,
        mass: grains(gr!),
        from: inches(centre! - 0.1),
        to: inches(centre! + 0.1),
      })),
    }),
  )
const ruled = () => {
  const step = inches(1 / 16)
  return answer(
    measuredFoc({
      balance: { value: inches(19), step },
      length: { value: inches(29), step },
      frontPoint: 'shaft front',
    }),
  )
}

export const UNIT_CHECKS = [
  ...checks({ status: 'P', source: 'SP811' }, [
    ['one grain', '64.79891', 'mg', () => inUnit(grains(1), 'g') * 1000],
    ['one pound', '7000', 'gr', () => inGrains(quantity(1, 'lb'))],
    ['standard gravity', '9.80665', 'm/s²', () => STANDARD_GRAVITY_SI],
    ['one inch', '25.4', 'mm', () => inUnit(inches(1), 'mm')],
    ['one pound-force', '4.4482216152605', 'N', () => inUnit(quantity(1, 'lbf'), 'N')],
    ['one foot-pound', '1.3558179483314', 'J', () => inUnit(quantity(1, 'ft·lbf'), 'J')],
  ]),
  ...checks({ status: 'C', source: 'MECHANICS' }, [
    ['divisor of grains and ft/s squared', '450436.68', '', () => 1 / inFootPounds(energy(1, 1))],
    ['how high the customary divisor is', '0.044', '%', () => 100 * (1 / inFootPounds(energy(1, 1)) / 450_240 - 1)],
    ['divisor of grains and ft/s', '225218.34', '', () => 1 / inSlugFeetPerSecond(push(1, 1))],
    ['energy of 650 gr at 250 ft/s', '90.1903', 'ft·lbf', () => inFootPounds(energy(650, 250))],
    ['energy of 650 gr at 250 ft/s', '122.2816', 'J', () => energy(650, 250)],
    ['energy of 540 gr at 200 ft/s', '47.9535', 'ft·lbf', () => inFootPounds(energy(540, 200))],
    ['momentum of 650 gr at 250 ft/s', '0.721522', 'slug·ft/s', () => inSlugFeetPerSecond(push(650, 250))],
    ['momentum of 650 gr at 250 ft/s', '3.209490', 'kg·m/s', () => push(650, 250)],
  ]),
]

export const BALANCE_CHECKS = [
  ...checks({ status: 'C', source: 'F1435' }, [
    ['FOC of B 19.0 on L 29.0', '15.5172', '%', () => at(19, 29)],
    ['the same with a head of 1.2 in counted in L', '12.91', '%', () => at(19, 30.2)],
    ['weight of five parts', '674', 'gr', () => inGrains(FIVE().mass)],
    ['balance point of five parts', '22.124629', 'in', () => inInches(FIVE().point)],
    ['FOC of five parts on 29.5', '24.9987', '%', () => at(inInches(FIVE().point), 29.5)],
  ]),
  ...checks({ status: 'C', source: 'GUM' }, [
    ['FOC of 19.0 on 29.0 by that rule', '15.517', '%', () => inPercent(ruled().value)],
    ['its uncertainty', '0.074', '%', () => inPercent(ruled().sd)],
  ]),
  ...checks({ status: 'P', source: 'ASHBY08' }, [
    ['upper end of normal', '12', '%', () => inPercent(FOC_CLASSES[0].upTo)],
    ['upper end of high', '19', '%', () => inPercent(FOC_CLASSES[1].upTo)],
    ['upper end of extreme', '30', '%', () => inPercent(FOC_CLASSES[2].upTo)],
  ]),
]
