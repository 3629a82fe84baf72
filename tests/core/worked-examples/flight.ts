import { humidAirDensity } from '@/core/air/humid-air-density'
import { standardAtmosphere } from '@/core/air/standard-atmosphere'
import { broadheadAgainstFieldPoint } from '@/core/flight/broadhead-against-field-point'
import { dragDecay } from '@/core/flight/drag-decay'
import { dragFromTwoSpeeds } from '@/core/flight/drag-from-two-speeds'
import { finLift } from '@/core/flight/fin-lift'
import { flatFire } from '@/core/flight/flat-fire'
import { flightTable } from '@/core/flight/flight-table'
import { steering } from '@/core/flight/steering'
import { trajectory } from '@/core/flight/trajectory'
import {
  celsius,
  degrees,
  feetPerSecond,
  grains,
  inches,
  kilogramsPerCubicMetre,
  metres,
  millimetres,
  perMetre,
  quantity,
  ratio,
  yards,
} from '@/core/quantity'
import type { Take, WorkedExamples } from './worked-example'

const slowed = (n: Take) => ({
  mass: grains(n(650)),
  diameter: millimetres(n(6.2)),
  density: kilogramsPerCubicMetre(n(1.225)),
  drag: ratio(n(2)),
})
const vanes = (n: Take, count: 3 | 4 = 4) => ({
  count,
  span: inches(n(0.5)),
  rootChord: inches(n(2.2)),
  tipChord: inches(n(1)),
  sweep: inches(n(1)),
  rootFront: inches(n(4)),
})
const blades = (n: Take) => ({
  count: 2 as const,
  span: inches(n(0.5)),
  rootChord: inches(n(1.5)),
  tipChord: inches(n(0.1)),
  sweep: inches(n(1.4)),
  rootFront: inches(n(30)),
})
const steered = (n: Take, bladed: boolean) => ({
  overall: inches(n(30.2)),
  diameter: millimetres(n(6.2)),
  balance: inches(n(20.5)),
  vanes: vanes(n),
  head: { coneLength: millimetres(n(20)), ...(bladed ? { blades: blades(n) } : {}) },
})

export const airExamples: WorkedExamples = {
  standardAtmosphere: (n) => standardAtmosphere(metres(n(1000))),
  humidAirDensity: (n) => humidAirDensity(celsius(n(10)), quantity(n(730), 'mmHg'), ratio(n(0.4))),
}

export const flightExamples: WorkedExamples = {
  dragDecay: (n) => dragDecay(slowed(n)),
  flatFire: (n) => flatFire(feetPerSecond(n(250)), perMetre(n(8.78068e-4)), yards(n(40))),
  trajectory: (n) =>
    trajectory(feetPerSecond(n(250)), perMetre(n(8.78068e-4)), [yards(n(20)), yards(n(40))], degrees(n(0))),
  flightTable: (n) => {
    const { drag, ...arrow } = slowed(n)
    const speed = feetPerSecond(n(250))
    return flightTable(
      {
        ...arrow,
        speed: { value: speed, sd: feetPerSecond(n(2)), low: speed, high: speed },
        drag: { value: drag, sd: ratio(n(0.2)), low: drag, high: drag },
      },
      [yards(n(20)), yards(n(40))],
    )
  },
  dragFromTwoSpeeds: (n) => {
    const { drag: _, ...arrow } = slowed(n)
    return dragFromTwoSpeeds(
      { ...arrow, near: feetPerSecond(n(250)), far: feetPerSecond(n(238.242)), apart: yards(n(60)) },
      feetPerSecond(n(0.5)),
    )
  },
  finLift: (n) => finLift(vanes(n), millimetres(n(6.2))),
  steering: (n) => steering(steered(n, true), ratio(n(0.1))),
  broadheadAgainstFieldPoint: (n) => broadheadAgainstFieldPoint(steered(n, true), steered(n, false), ratio(n(0.1))),
}
