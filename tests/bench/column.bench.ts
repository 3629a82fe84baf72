import { beamWorkspace } from '@/core/stiffness/beam-mesh'
import { beamOf } from '@/core/stiffness/beam-of'
import { criticalForce } from '@/core/stiffness/critical-force'
import { criticalNockForce } from '@/core/stiffness/critical-nock-force'
import { denseCriticalForce } from '@tests/core/stiffness/dense-column'
import { heavyArrow } from '@tests/core/stiffness/sample-arrow'
import type { Race } from './race'

const beam = beamOf(heavyArrow)
const workspace = beamWorkspace(heavyArrow.pieces.length)

export default [
  {
    name: 'one column by the band solver, against a dense library solve',
    subject: () => criticalNockForce(beam, workspace),
    reference: () => denseCriticalForce(beam),
    atMost: 0.01,
  },
  {
    name: 'one column with its working, against the bare solve',
    subject: () => criticalForce(heavyArrow),
    reference: () => criticalNockForce(beam, workspace),
    atMost: 6,
  },
] satisfies readonly Race[]
