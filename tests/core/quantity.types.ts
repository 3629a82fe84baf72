/** Compiled, never run: each error expected here must be one, or `tsc` fails. */
import { kineticEnergy } from '@/core/energy/kinetic-energy'
import {
  type Mass,
  difference,
  feetPerSecond,
  grains,
  inUnit,
  inches,
  joules,
  poundsForce,
  quantity,
  sum,
} from '@/core/quantity'

kineticEnergy(grains(650), feetPerSecond(240))
// @ts-expect-error mass and speed swapped
kineticEnergy(feetPerSecond(240), grains(650))
// @ts-expect-error a bare number has no unit
kineticEnergy(650, feetPerSecond(240))
// @ts-expect-error an energy is no force, though both are numbers
export const force: ReturnType<typeof poundsForce> = joules(80)
// @ts-expect-error a sum of a mass and a length
sum(grains(650), inches(29))
// @ts-expect-error a difference of a mass and a length
difference(grains(650), inches(29))
// @ts-expect-error a mass is not read in inches
inUnit(grains(650), 'in')
// @ts-expect-error no such unit
quantity(650, 'grain')
// @ts-expect-error arithmetic loses the dimension; only quantity.ts gives it back
export const half: Mass = grains(650) / 2
export const whole: Mass = quantity(650, 'gr')
