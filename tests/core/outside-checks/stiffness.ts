import type { Arrow } from '@/core/arrow/arrow'
import { freeFrequency } from '@/core/stiffness/free-frequency'
import {
  type FlexuralRigidity,
  gigapascals,
  grains,
  grams,
  inches,
  inPoundsForce,
  inUnit,
  metres,
  newtonSquareMetres,
  poundsForce,
  scaled,
} from '@/core/quantity'
import { MATERIALS, type MaterialName } from '@/core/trim/materials'
import { beamWorkspace } from '@/core/stiffness/beam-mesh'
import { beamOf } from '@/core/stiffness/beam-of'
import { bendingFrequency } from '@/core/stiffness/bending-frequency'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { criticalNockForce, type Support } from '@/core/stiffness/critical-nock-force'
import { rigidityFromSpine } from '@/core/stiffness/static-spine'
import { woodSpineFromSpine } from '@/core/stiffness/wood-spine'
import { answer } from '@tests/support/answer'
import { checks } from './outside-check'

const rigidity = (spine: number): FlexuralRigidity => answer(rigidityFromSpine(inches(spine)))

/** Even shaft of length, mass and rigidity 1, and μ of its mass at the front. */
const even = (front: number): Arrow => ({
  length: metres(1),
  shaft: { mass: grams(1000), rear: metres(0), rigidity: newtonSquareMetres(1) },
  pieces: front === 0 ? [] : [{ name: 'front', mass: grams(1000 * front), from: metres(1), to: metres(1) }],
})
/** F·L²/EI of that column, the nock force being the whole weight's. */
const column = (front: number, support: Support = 'hinged') =>
  criticalNockForce(beamOf(even(front)), beamWorkspace(2), support)
/** (2πf)·√(m·L³/EI) of that shaft flying free, m the shaft's mass alone. */
const free = (front: number) => 2 * Math.PI * freeFrequency(beamOf(even(front)), beamWorkspace(2))

/** Uniform shaft hinged at its ends, 40 gr at the rear, so much in front. */
const pick = (spine: number, gpi: number, front: number, length = 28): Arrow => ({
  length: inches(length),
  shaft: { mass: grains(gpi * length), rear: inches(0), rigidity: rigidity(spine) },
  pieces: [
    { name: 'rear', mass: grains(40), from: inches(0), to: inches(0) },
    { name: 'front', mass: grains(front), from: inches(length), to: inches(length) },
  ],
})
/** The same with a nock reaching 0.55 in behind the shaft and vanes at 1.5 to 4.3 in. */
const real = (spine: number, gpi: number, front: number): Arrow => ({
  length: inches(28.55),
  shaft: { mass: grains(gpi * 28), rear: inches(0.55), rigidity: rigidity(spine) },
  pieces: [
    { name: 'nock', mass: grains(12), from: inches(0), to: inches(0.55) },
    { name: 'vanes', mass: grains(28), from: inches(1.5), to: inches(4.3) },
    { name: 'front', mass: grains(front), from: inches(28.55), to: inches(28.55) },
  ],
})
const reserve = (arrow: Arrow, lbf: number) =>
  answer(columnReserve(arrow, { peakDraw: poundsForce(lbf), virtualMass: grains(50) }))

/** What the column gains when 29 in become 28, its masses as they were. */
const inchShorter = () => {
  const long = (length: number) => criticalNockForce(beamOf({ ...even(0), length: inches(length) }), beamWorkspace(2))
  return long(28) / long(29)
}

const PICKS = [
  [40, 0.6, 6.5, 125, '0.845'],
  [50, 0.5, 7.3, 125, '0.814'],
  [60, 0.4, 8.4, 125, '0.850'],
  [70, 0.34, 9.3, 125, '0.859'],
  [70, 0.3, 9.8, 300, '0.803'],
  [80, 0.25, 10.9, 300, '0.851'],
  [85, 0.15, 13.27, 590, '1.183'],
] as const

/** EI 8.4873 N·m² on 0.7239 m, shaft 17.5443 g. */
const frequency = (front: number) => {
  const shaft = grams(17.5443)
  return answer(
    bendingFrequency({
      length: metres(0.7239),
      shaft: { mass: shaft, rear: metres(0), rigidity: newtonSquareMetres(8.4873) },
      pieces: [{ name: 'front', mass: scaled(shaft, front), from: metres(0.7239), to: metres(0.7239) }],
    }),
  )
}
const modulus = (name: MaterialName) => {
  const { youngsModulus } = MATERIALS[name] as { readonly youngsModulus?: ReturnType<typeof gigapascals> }
  return inUnit(youngsModulus!, 'GPa')
}

export const STIFFNESS_CHECKS = [
  ...checks({ status: 'P', source: 'F2031' }, [
    ['EI·δ', '887.2267', 'lbf·in³', () => inUnit(rigidity(1), 'lbf·in²')],
    ['EI·δ', '2.546176', 'N·m²·in', () => rigidity(1)],
    ['EI of 0.300', '8.4873', 'N·m²', () => rigidity(0.3)],
    ['EI of 0.400', '6.3654', 'N·m²', () => rigidity(0.4)],
  ]),
  ...checks({ status: 'P', source: 'RHEINGANS' }, [
    ['wood spine of 1 in', '31.4992', 'lb', () => inPoundsForce(answer(woodSpineFromSpine(inches(1))))],
    ['wood spine of 0.400', '78.75', 'lb', () => inPoundsForce(answer(woodSpineFromSpine(inches(0.4))))],
  ]),
  ...checks({ status: 'C', source: 'TIMO' }, [
    ['F·L²/EI, own weight only', '18.5687', '', () => column(0)],
    ['F·L²/EI, μ 0.25 in front', '15.984', '', () => column(0.25)],
    ['F·L²/EI, μ 0.5', '14.562', '', () => column(0.5)],
    ['F·L²/EI, μ 1', '13.062', '', () => column(1)],
    ['F·L²/EI, μ 2', '11.812', '', () => column(2)],
  ]),
  ...checks({ status: 'P', source: 'EULER' }, [
    // With ever more in front the push is the same all along: π².
    ['F·L²/EI, all of the mass in front', '9.8696', '', () => column(1e7)],
  ]),
  ...checks({ status: 'P', source: 'GREENHILL' }, [
    ['own weight only, clamped and free', '7.8373', '', () => column(0, 'clamped at the throat')],
  ]),
  ...checks(
    { status: 'C', source: 'OWN' },
    PICKS.map(
      ([lbf, spine, gpi, front, says]) =>
        [`reserve of ${lbf} lb, ${spine}, ${front} gr`, says, '', () => reserve(pick(spine, gpi, front), lbf)] as const,
    ),
  ),
  ...checks({ status: 'C', source: 'OWN' }, [
    ['reserve of the real 70 lb arrow', '0.799', '', () => reserve(real(0.34, 9.3, 125), 70)],
    ['reserve of the real 85 lb arrow', '1.124', '', () => reserve(real(0.15, 13.27, 590), 85)],
    ['an inch of length from 28', '7.3', '%', () => 100 * (inchShorter() - 1)],
  ]),
  ...checks({ status: 'P', source: 'THOMSON', where: 'App. D' }, [
    ['λ² of a free shaft', '22.3733', '', () => free(0)],
  ]),
  ...checks({ status: 'C', source: 'THOMSON' }, [
    ['λ² with μ 0.5 in front', '17.0415', '', () => free(0.5)],
    ['λ² with μ 1', '16.3364', '', () => free(1)],
    ['first frequency', '127.16', 'Hz', () => frequency(0)],
    ['first frequency with μ 0.5', '96.86', 'Hz', () => frequency(0.5)],
    ['first frequency with μ 1', '92.85', 'Hz', () => frequency(1)],
  ]),
  ...checks({ status: 'M', source: 'HANDBOOK_E' }, [
    ['modulus of stainless', '193', 'GPa', () => modulus('stainless 303/304')],
    ['modulus of carbon steel', '205', 'GPa', () => modulus('steel 1020')],
    ['modulus of brass', '97', 'GPa', () => modulus('brass C36000')],
    ['modulus of titanium', '114', 'GPa', () => modulus('titanium 6Al-4V')],
  ]),
]
