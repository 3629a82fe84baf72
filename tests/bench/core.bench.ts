import { denseCriticalForce } from '@tests/core/stiffness/dense-column'
import { heavyArrow } from '@tests/core/stiffness/sample-arrow'
import { beamOf } from '@/core/stiffness/beam-of'
import { sheetOf24Columns } from './sheet-of-24-columns'
import type { Race } from './race'

const beam = beamOf(heavyArrow)

export default [
  {
    name: 'all figures of a sheet with 24 columns, against one dense library solve',
    subject: sheetOf24Columns,
    reference: () => denseCriticalForce(beam),
    atMost: 0.1,
  },
] satisfies readonly Race[]
