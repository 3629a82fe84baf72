import { grains, gramsPerCubicCentimetre, inches, millimetres, newtonSquareMetres } from '@/core/quantity'
import { chamferWeight } from '@/core/trim/chamfer-weight'
import { gapGlue } from '@/core/trim/gap-glue'
import { glueToLand } from '@/core/trim/glue-to-land'
import { mends } from '@/core/trim/mends'
import { neededTrim } from '@/core/trim/needed-trim'
import { nextPass } from '@/core/trim/next-pass'
import { passRemoval, STEEL_PASSES } from '@/core/trim/pass-removal'
import { planTrim } from '@/core/trim/plan-trim'
import { trimLength } from '@/core/trim/trim-length'
import { weightPerLength } from '@/core/trim/weight-per-length'
import type { Take, WorkedExamples } from './worked-example'

const section = (n: Take, bore: number) => ({
  name: 'post',
  length: millimetres(n(50)),
  outerDiameter: millimetres(n(5.2)),
  bore: millimetres(n(bore)),
  density: gramsPerCubicCentimetre(n(8)),
  bonded: true,
})
const post = (n: Take) => ({ sections: [section(n, 2)], leastBond: millimetres(n(25)) })

export const trimExamples: WorkedExamples = {
  neededTrim: (n) =>
    neededTrim(
      { value: grains(n(835.7)), sd: grains(n(0.1)) },
      { value: grains(n(1.8)), sd: grains(n(0.4)) },
      grains(n(825)),
    ),
  weightPerLength: (n) => weightPerLength(section(n, 0)),
  trimLength: (n) => trimLength(grains(n(12.5)), post(n)),
  chamferWeight: (n) => chamferWeight(millimetres(n(0.5)), { ...section(n, 0), outerDiameter: millimetres(n(6.2)) }),
  planTrim: (n) => planTrim(grains(n(12.5)), post(n), millimetres(n(0.5))),
  passRemoval: (n) => passRemoval(gramsPerCubicCentimetre(n(2.7))),
  nextPass: (n) =>
    nextPass(
      {
        remaining: { value: grains(n(4.2)), sd: grains(n(0.1)) },
        chamfer: grains(n(0.28)),
        tolerance: grains(n(0.5)),
        available: grains(n(60)),
      },
      {
        ...STEEL_PASSES,
        usual: { mean: grains(n(1.2)), sd: grains(n(0.35)) },
      },
    ),
  glueToLand: (n) =>
    glueToLand({
      needed: grains(n(2.4)),
      on: grains(n(3.1)),
      usual: { value: grains(n(2.6)), sd: grains(n(0.47)) },
      tolerance: grains(n(0.5)),
    }),
  mends: (n) =>
    mends(
      {
        arrow: {
          length: inches(n(28)),
          shaft: { mass: grains(n(341)), rear: inches(n(0.55)), rigidity: newtonSquareMetres(8) },
          pieces: [{ name: 'head', mass: grains(n(250)), from: inches(n(28)), to: inches(n(30)) }],
        },
        short: grains(n(6)),
        tolerance: grains(n(0.5)),
        trimmable: grains(n(20)),
        fixed: ['shaft cut'],
      },
      [
        {
          kind: 'collar',
          name: 'collar of 12 gr',
          change: {
            does: 'add',
            piece: { name: 'collar', mass: grains(n(12)), from: inches(n(27.2)), to: inches(n(28)) },
          },
        },
      ],
    ),
  gapGlue: (n) =>
    gapGlue(millimetres(n(6.22)), millimetres(n(25)), millimetres(n(0.05)), gramsPerCubicCentimetre(n(1.15))),
}
