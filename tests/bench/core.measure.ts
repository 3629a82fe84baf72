/** What the column solver is worth in digits: against a dense library solve of its own mesh, and against closed forms. */
import { beamWorkspace } from '@/core/stiffness/beam-mesh'
import { beamOf } from '@/core/stiffness/beam-of'
import { criticalNockForce } from '@/core/stiffness/critical-nock-force'
import { grains, inches } from '@/core/quantity'
import { denseCriticalForce } from '@tests/core/stiffness/dense-column'
import { heavyArrow, ofSpine } from '@tests/core/stiffness/sample-arrow'
import { type Measure, overLimit } from './measure'

const shaft = { mass: grains(260), rear: inches(0), rigidity: ofSpine(340) }
const bare = { length: inches(28), shaft, pieces: [] }
const even = (frontShare: number) => ({
  ...bare,
  pieces: [{ name: 'front', mass: grains(260 * frontShare), from: bare.length, to: bare.length }],
})
const unit = shaft.rigidity / bare.length ** 2

/** F·L²/EI: own weight (by Richardson from two dense meshes), all of it in front [EULER]. */
const CLOSED = [
  { name: 'own weight', arrow: bare, is: 18.568_724_8 },
  { name: 'all in front', arrow: even(1e9), is: Math.PI ** 2 },
] as const

export default [
  {
    name: 'the column of 64 elements against a dense library solve of the same mesh',
    take() {
      const beam = beamOf(heavyArrow)
      const dense = denseCriticalForce(beam)
      const apart = Math.abs(criticalNockForce(beam, beamWorkspace(heavyArrow.pieces.length)) / dense - 1)
      return { said: `${apart.toExponential(1)} apart`, over: overLimit('apart', apart, 1e-8) }
    },
  },
  ...CLOSED.map(
    ({ name, arrow, is }): Measure => ({
      name: `the mesh against the closed form, ${name}`,
      take() {
        const apart = [16, 32, 64].map((elements) =>
          Math.abs(criticalNockForce(beamOf(arrow), beamWorkspace(2, elements)) / unit / is - 1),
        )
        return {
          said: `${apart.map((each) => each.toExponential(1)).join(', ')} apart with 16, 32, 64 elements`,
          over: overLimit('apart with 64 elements', apart[2]!, 1e-5),
        }
      },
    }),
  ),
] satisfies readonly Measure[]
