/** What can be said of each body before any arrow on it is looked at; those that cannot fit are told by what they break. */
import { type Envelope, reserveBetween, type Solver } from './column'
import { CLEARANCE_STEP_IN } from './judge'
import { reserveBounds } from './reserve-bounds'
import type { Prospect } from './scan'
import type { Fronts, Space } from './space'
import type { SearchProblem } from './wishes'

export function* prospectsOf(
  problem: SearchProblem,
  space: Space,
  solver: Solver | undefined,
  nearGr: number,
  bounding: { bounded: number },
): Generator<Prospect> {
  const { wishes } = problem
  const { aim, step } = wishes.c2cIn
  const rears = rearEnvelope(space)
  const extents = new Map<Fronts, ReturnType<typeof frontEnvelope>>()
  for (const { body, fronts } of space.bodies) {
    const short = (wishes.clearance?.frontIn ?? 0) - body.lengthIn
    const broken = short > 0 ? short / CLEARANCE_STEP_IN : 0
    const distance = aim === undefined ? 0 : Math.abs(body.c2cIn - aim) / step
    const length = { body, fronts, broken, distance }
    if (wishes.reserve === undefined || solver === undefined) {
      yield { ...length, reserveBroken: 0, reserveAside: 0, reserveSettled: true }
      continue
    }
    const extent = extents.get(fronts) ?? frontEnvelope(fronts)
    extents.set(fronts, extent)
    const between = reserveBetween(solver, body, {
      lightestGr: wishes.targetGr - nearGr,
      heaviestGr: wishes.targetGr + nearGr,
      leastRearGr: rears.leastGr,
      mostRearGr: rears.mostGr,
      rearFrontIn: Math.max(rears.vaneFrontIn, body.tail.standoutIn + rears.wrapIn),
      ...extent,
    })
    bounding.bounded += 2
    const { broken: reserveBroken, aside: reserveAside, isSettled } = reserveBounds(between, wishes.reserve)
    yield { ...length, reserveBroken, reserveAside, reserveSettled: isSettled }
  }
}

function rearEnvelope({ rears }: Space) {
  const weights = rears.map(({ weightGr }) => weightGr)
  return {
    leastGr: Math.min(...weights),
    mostGr: Math.max(...weights),
    vaneFrontIn: Math.max(...rears.map(({ vaneFrontIn }) => vaneFrontIn)),
    wrapIn: Math.max(...rears.map(({ wrapIn }) => wrapIn)),
  }
}

function frontEnvelope({ all }: Fronts): Pick<Envelope, 'mostInsideGr' | 'insideIn' | 'mostStiffening'> {
  return {
    mostInsideGr: all.reduce((most, { insideGr }) => Math.max(most, insideGr), 0),
    insideIn: all.reduce((most, { insideIn }) => Math.max(most, insideIn), 0),
    mostStiffening: all.reduce((most, { stiffening }) => Math.max(most, stiffening), 0),
  }
}
