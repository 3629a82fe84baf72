import type { Arrow } from '@/core/arrow/arrow'
import { balanceCheck } from '@/core/balance/balance-check'
import { balanceForFoc } from '@/core/balance/balance-for-foc'
import { balancePoint } from '@/core/balance/balance-point'
import { balanceUncertainty } from '@/core/balance/balance-uncertainty'
import { foc } from '@/core/balance/foc'
import { focClass } from '@/core/balance/foc-class'
import { measuredFoc } from '@/core/balance/measured-foc'
import { grains, inches, newtonSquareMetres, percent } from '@/core/quantity'
import type { Take, WorkedExamples } from './worked-example'

/** Four parts and a shaft, each about its own centre. */
const arrow = (n: Take): Arrow => ({
  length: inches(n(29.5)),
  shaft: { mass: grains(n(290)), rear: inches(n(0.5)), rigidity: newtonSquareMetres(8) },
  pieces: [
    { name: 'head', mass: grains(n(250)), from: inches(n(29.5)), to: inches(n(31.5)) },
    { name: 'insert', mass: grains(n(100)), from: inches(n(28)), to: inches(n(29.5)) },
    { name: 'vanes', mass: grains(n(24)), from: inches(n(1)), to: inches(n(4)) },
    { name: 'nock', mass: grains(n(10)), from: inches(n(0)), to: inches(n(0.4)) },
  ],
})

export const balanceExamples: WorkedExamples = {
  balancePoint: (n) => balancePoint(arrow(n)),
  balanceUncertainty: (n) =>
    balanceUncertainty(arrow(n), {
      shaft: grains(n(1)),
      pieces: [grains(n(1)), grains(n(0.4)), grains(n(0.2)), grains(n(0.1))],
      place: inches(n(0.02)),
    }),
  foc: (n) => foc(inches(n(19)), inches(n(29))),
  focClass: (n) => focClass(percent(n(24.9987))),
  balanceForFoc: (n) => balanceForFoc(percent(n(25)), inches(n(29.5))),
  measuredFoc: (n) =>
    measuredFoc({
      balance: { value: inches(n(19)), step: inches(n(1 / 16)) },
      length: { value: inches(n(30.2)), step: inches(n(1 / 16)) },
      frontPoint: 'head tip',
      headAhead: inches(n(1.2)),
    }),
  balanceCheck: (n) =>
    balanceCheck({ value: inches(n(22.25)), sd: inches(n(0.018)) }, { value: inches(n(22.12)), sd: inches(n(0.02)) }),
}
