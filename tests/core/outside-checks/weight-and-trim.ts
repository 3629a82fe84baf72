import {
  grains,
  gramsPerCubicCentimetre,
  inGrains,
  inMillimetres,
  inQuadrature,
  inUnit,
  millimetres,
} from '@/core/quantity'
import { chamferWeight } from '@/core/trim/chamfer-weight'
import { gapGlue } from '@/core/trim/gap-glue'
import { MATERIALS, type MaterialName } from '@/core/trim/materials'
import { trimLength } from '@/core/trim/trim-length'
import { weightPerLength } from '@/core/trim/weight-per-length'
import { chanceAllReach } from '@/core/weight/chance-all-reach'
import { readingUncertainty } from '@/core/weight/reading-uncertainty'
import { scaleError } from '@/core/weight/scale-error'
import { hours } from '@/core/quantity'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const scale = { step: grains(0.1), repeatability: grains(0), calibration: grains(0), driftPerHour: grains(0) }
const post = (outerMm: number, boreMm: number) => ({
  name: 'post',
  length: millimetres(60),
  outerDiameter: millimetres(outerMm),
  bore: millimetres(boreMm),
  density: gramsPerCubicCentimetre(8),
  bonded: true,
})
const off = (boreMm: number) =>
  inMillimetres(answer(trimLength(grains(12.5), { sections: [post(5.2, boreMm)], leastBond: millimetres(25) })).length)
/** Six arrows, each expected 1.0 gr above the lower edge of its tolerance; shared 0.8 gr, own 0.5 gr. */
const six = () => {
  const value = grains(825.5)
  const [own, shared] = [grains(0.5), grains(0.8)]
  const sd = inQuadrature(own, shared)
  const forecast = {
    total: { value, sd, low: value, high: value },
    ownSd: own,
    sharedSd: shared,
    sharedBy: [{ key: 'lot', sd: shared }],
    read: value,
    expected: grains(0),
  }
  const landing = { target: grains(825), tolerance: grains(0.5), trimmable: grains(100) }
  return answer(chanceAllReach(Array.from({ length: 6 }, () => ({ forecast, landing }))))
}
const density = (name: MaterialName) => inUnit(MATERIALS[name].density, 'g/cm³')
const FIVE_PARTS = [0.5, 0.3, 0.2, 0.2, 0.1].map(grains)

export const WEIGHT_CHECKS = [
  ...checks({ status: 'M', source: 'GUM', where: 'F.2.2.1' }, [
    ['uncertainty of a display of 0.1 gr', '0.028868', 'gr', () => inGrains(answer(readingUncertainty(grains(0.1))))],
    ['of a tared difference on it', '0.040825', 'gr', () => inGrains(answer(scaleError(scale, hours(0), true)).own)],
  ]),
  ...checks({ status: 'C', source: 'GUM' }, [
    ['0.5, 0.3, 0.2, 0.2, 0.1 in quadrature', '0.655744', 'gr', () => inGrains(inQuadrature(...FIVE_PARTS))],
  ]),
  ...checks({ status: 'C', source: 'OWN' }, [
    ['chance for all of six arrows', '0.6654', '', () => six().joint],
    ['product of their single chances', '0.3918', '', () => six().product],
  ]),
]

export const TRIM_CHECKS = [
  ...checks({ status: 'C', source: 'PAPPUS' }, [
    ['⌀5.2 mm steel a millimetre', '2.62192', 'gr', () => inUnit(answer(weightPerLength(post(5.2, 0))), 'gr/mm')],
    ['12.5 gr off it, solid', '4.7675', 'mm', () => off(0)],
    ['12.5 gr off it with a ⌀2.0 mm bore', '5.5952', 'mm', () => off(2)],
    [
      'chamfer 0.5 mm on ⌀6.2 mm',
      '0.2844',
      'gr',
      () => inGrains(answer(chamferWeight(millimetres(0.5), post(6.2, 0)))),
    ],
    [
      'glue in a gap of 0.05 mm, ⌀6.22 mm, 25 mm',
      '0.43',
      'gr',
      () =>
        inGrains(answer(gapGlue(millimetres(6.22), millimetres(25), millimetres(0.05), gramsPerCubicCentimetre(1.15)))),
    ],
  ]),
  ...checks(
    { status: 'P', source: 'MATERIALS' },
    (
      [
        ['stainless 303/304', '8.00'],
        ['stainless 316', '8.00'],
        ['steel 1020', '7.87'],
        ['steel 4140', '7.85'],
        ['aluminium 6061', '2.70'],
        ['aluminium 7075', '2.81'],
        ['aluminium 2024', '2.78'],
        ['brass C36000', '8.50'],
      ] as const
    ).map(([name, says]) => [`density of ${name}`, says, 'g/cm³', () => density(name)] as const),
  ),
  ...checks({ status: 'M', source: 'MEMORY' }, [
    ['density of 17-4PH', '7.80', 'g/cm³', () => density('17-4PH')],
    ['density of titanium 6Al-4V', '4.43', 'g/cm³', () => density('titanium 6Al-4V')],
  ]),
  ...checks({ status: 'P', source: 'B777' }, [
    [
      'lightest class of tungsten heavy alloy',
      '16.85',
      'g/cm³',
      () => inUnit(MATERIALS['tungsten heavy alloy'].densityRange.min, 'g/cm³'),
    ],
    ['heaviest class', '18.85', 'g/cm³', () => inUnit(MATERIALS['tungsten heavy alloy'].densityRange.max, 'g/cm³')],
  ]),
]
