import type { Arrow } from '@/core/arrow/arrow'
import { bounds, known } from '@/core/outcome'
import type { Length } from '@/core/quantity'
import {
  difference,
  gigapascals,
  grains,
  inches,
  millimetres,
  newtonSquareMetres,
  poundsForce,
  ratio,
} from '@/core/quantity'
import { bendingFrequency } from '@/core/stiffness/bending-frequency'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { criticalForce } from '@/core/stiffness/critical-force'
import { customaryShaft } from '@/core/stiffness/customary-shaft'
import { lengthened } from '@/core/stiffness/lengthened'
import { lengthsInBand } from '@/core/stiffness/lengths-in-band'
import { nockForce } from '@/core/stiffness/nock-force'
import { reserveEstimate } from '@/core/stiffness/reserve-estimate'
import { spineCalledFor } from '@/core/stiffness/spine-called-for'
import { rigidityFromSpine, spineFromRigidity } from '@/core/stiffness/static-spine'
import { tubeRigidity } from '@/core/stiffness/tube-rigidity'
import { spineFromWoodSpine, woodSpineFromSpine } from '@/core/stiffness/wood-spine'
import type { Take, WorkedExamples } from './worked-example'

const tube = (n: Take) => ({
  outerDiameter: millimetres(n(5.2)),
  innerDiameter: millimetres(n(2)),
  youngsModulus: gigapascals(n(193)),
})
/** The 70 lb arrow of 28 in at 9.3 gr/in with 125 gr in front, a nock and vanes, and a short bonded post. */
const arrow = (n: Take): Arrow => ({
  length: inches(n(28.55)),
  shaft: { mass: grains(n(260.4)), rear: inches(n(0.55)), rigidity: newtonSquareMetres(n(7.4887529)) },
  pieces: [
    { name: 'nock', mass: grains(n(12)), from: inches(n(0)), to: inches(n(0.55)) },
    { name: 'vanes', mass: grains(n(28)), from: inches(n(1.5)), to: inches(n(4.3)) },
    { name: 'post', mass: grains(n(40)), from: inches(n(27.55)), to: inches(n(28.55)), bonded: tube(n) },
    { name: 'head', mass: grains(n(125)), from: inches(n(28.55)), to: inches(n(30)) },
  ],
})
const launch = (n: Take) => ({ peakDraw: poundsForce(n(70)), virtualMass: grains(n(50)) })
const band = (n: Take) => bounds(ratio(n(0.75)), ratio(n(1.3)))

export const stiffnessExamples: WorkedExamples = {
  rigidityFromSpine: (n) => rigidityFromSpine(inches(n(0.3))),
  spineFromRigidity: (n) => spineFromRigidity(newtonSquareMetres(n(8.4873))),
  woodSpineFromSpine: (n) => woodSpineFromSpine(inches(n(0.4))),
  spineFromWoodSpine: (n) => spineFromWoodSpine(poundsForce(n(78.75))),
  tubeRigidity: (n) => tubeRigidity(tube(n)),
  nockForce: (n) => nockForce(launch(n), grains(n(465.4))),
  criticalForce: (n) => criticalForce(arrow(n)),
  columnReserve: (n) => columnReserve(arrow(n), launch(n)),
  reserveEstimate: (n) =>
    reserveEstimate({
      arrow: arrow(n),
      peakDraw: { value: poundsForce(n(70)), sd: poundsForce(n(1)) },
      virtualMass: { value: grains(n(50)), sd: grains(n(10)) },
      spineSd: ratio(n(0.015)),
      lengthSd: inches(n(0.02)),
    }),
  spineCalledFor: (n) => {
    const told = arrow(n)
    return spineCalledFor({
      launch: launch(n),
      band: band(n),
      arrowAt: (spine) => {
        const rigidity = rigidityFromSpine(spine)
        return rigidity.ok
          ? { ...rigidity, value: { ...told, shaft: { ...told.shaft, rigidity: rigidity.value } } }
          : rigidity
      },
    })
  },
  lengthsInBand: (n) => {
    const told = arrow(n)
    return lengthsInBand({
      launch: launch(n),
      band: band(n),
      range: bounds(inches(n(24)), inches(n(32))),
      arrowAt: (length: Length) =>
        known(lengthened(told, difference(length, told.length)), {
          equation: 'the same build at another length',
          inputs: [],
          result: [],
          source: ['OWN'],
        }),
    })
  },
  customaryShaft: (n) => customaryShaft(inches(n(0.3))),
  bendingFrequency: (n) => bendingFrequency(arrow(n)),
}
