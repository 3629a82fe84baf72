import { bowSpeed } from '@/core/bow/bow-speed'
import { chronographFit } from '@/core/bow/chronograph-fit'
import { forceDrawEnergy } from '@/core/bow/force-draw-energy'
import { knownBow } from '@/core/bow/known-bow'
import { launchSpeed } from '@/core/bow/launch-speed'
import { oneWeight } from '@/core/bow/one-weight'
import { powerStroke } from '@/core/bow/power-stroke'
import { ratedEnergy } from '@/core/bow/rated-energy'
import type { DrawPoint } from '@/core/bow/stored-energy'
import { storedEnergy } from '@/core/bow/stored-energy'
import { feetPerSecond, footPounds, grains, inches, poundsForce, ratio } from '@/core/quantity'
import type { Take, WorkedExamples } from './worked-example'

const readings = (n: Take) => [
  { mass: grains(n(452)), speed: feetPerSecond(n(268)) },
  { mass: grains(n(601)), speed: feetPerSecond(n(236.5)) },
]
const DRAWN = [
  [6.75, 0],
  [10, 26],
  [14, 60],
  [18, 71],
  [22, 72],
  [25, 40],
  [26.75, 14],
] as const
const curve = (n: Take, share: number): readonly DrawPoint[] =>
  DRAWN.map(([inch, lbf]) => ({ draw: inches(n(inch)), force: poundsForce(n(lbf * share)) }))
const belief = (n: Take) => ({ value: grains(n(80)), sd: grains(n(30)) })
const setting = (n: Take) => ({
  peakDrawWeight: poundsForce(n(72)),
  drawLength: inches(n(28.5)),
  braceHeight: inches(n(6.75)),
})

export const bowExamples: WorkedExamples = {
  powerStroke: (n) => powerStroke(inches(n(28.5)), inches(n(6.75))),
  storedEnergy: (n) => storedEnergy(curve(n, 1), curve(n, 0.92)),
  forceDrawEnergy: (n) => forceDrawEnergy(curve(n, 1), [], belief(n)),
  chronographFit: (n) => chronographFit(readings(n), feetPerSecond(n(1.5))),
  oneWeight: (n) => oneWeight(readings(n).slice(0, 1), belief(n), feetPerSecond(n(1.5))),
  ratedEnergy: (n) =>
    ratedEnergy(feetPerSecond(n(335)), setting(n), belief(n), {
      peakDrawWeight: poundsForce(n(70)),
      drawLength: inches(n(30)),
      arrowMass: grains(n(350)),
    }),
  launchSpeed: (n) => {
    const energy = footPounds(n(82))
    const virtualMass = grains(n(60))
    return launchSpeed(
      {
        energy: { value: energy, sd: footPounds(n(1.5)), low: energy, high: energy },
        virtualMass: { value: virtualMass, sd: grains(n(12)), low: virtualMass, high: virtualMass },
        correlation: ratio(n(0.9)),
      },
      grains(n(825)),
    )
  },
  knownBow: (n) =>
    knownBow({
      kind: 'compound',
      ratedSpeed: feetPerSecond(n(335)),
      virtualMass: { value: grains(n(80)) },
      ...setting(n),
    }),
  bowSpeed: (n) => bowSpeed(grains(n(825)), { kind: 'compound', chronograph: readings(n) }),
}
