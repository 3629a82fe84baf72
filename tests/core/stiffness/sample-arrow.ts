import type { Arrow } from '@/core/arrow/arrow'
import { gigapascals, grains, inches, millimetres } from '@/core/quantity'
import { rigidityFromSpine } from '@/core/stiffness/static-spine'
import { answer } from '@tests/support/answer'

/** The rigidity of a shaft sold as so many thousandths. */
export const ofSpine = (thousandths: number) => answer(rigidityFromSpine(inches(thousandths / 1000)))

/** A heavy arrow with everything on it: nock, vanes, a bonded steel post, a collar, glue, a head. */
export const heavyArrow: Arrow = {
  length: inches(28.05),
  shaft: { mass: grains(341), rear: inches(0.55), rigidity: ofSpine(200) },
  pieces: [
    { name: 'nock', mass: grains(11), from: inches(0), to: inches(0.55) },
    { name: 'vanes', mass: grains(28), from: inches(1.5), to: inches(4.3) },
    {
      name: 'post',
      mass: grains(152),
      from: inches(26.45),
      to: inches(28.05),
      bonded: { outerDiameter: millimetres(5.2), innerDiameter: millimetres(0), youngsModulus: gigapascals(193) },
    },
    {
      name: 'collar',
      mass: grains(20),
      from: inches(27.3),
      to: inches(28.05),
      bonded: { outerDiameter: millimetres(8), innerDiameter: millimetres(7.2), youngsModulus: gigapascals(70) },
    },
    { name: 'glue', mass: grains(2.2), from: inches(27.5), to: inches(27.5) },
    { name: 'head', mass: grains(250), from: inches(28.05), to: inches(30.2) },
  ],
}
