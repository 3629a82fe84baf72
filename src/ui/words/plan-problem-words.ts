/** What is wrong with a plan and which input to change, a sentence each. */
import type { PlanProblem } from '../../domain/sheet/plan-problem'
import { showNumber } from './format'
import { partKindWord } from './part-kind-words'

const n = showNumber

const MISSING: Record<Extract<PlanProblem, { code: 'missing' }>['what'], string> = {
  target: 'No target yet: enter the finished weight that the arrow is to land on.',
  C2C: 'No cut length yet: enter the C2C.',
  shaft: 'No shaft yet: add one.',
  nock: 'No nock yet: add one; every length runs from its throat.',
  head: 'No head yet: add the broadhead or field point that the arrow is planned with.',
  vanes: 'No vanes yet: a bare arrow is for testing only.',
  'front end': 'No insert, half-out or outsert yet: the head has nothing to be screwed into.',
  glue: 'No glue yet: its weight is left out of the forecast.',
}

export function planProblemWords(problem: PlanProblem): string {
  switch (problem.code) {
    case 'missing':
      return MISSING[problem.what]
    case 'two-of':
      return `Two lines of ${partKindWord(problem.kind).toLowerCase()}: an arrow has one. Remove the other.`
    case 'below-target':
      return problem.byGr > 0
        ? `Lighter than the target by ${n(problem.byGr, 1)} gr before anything is trimmed, and grains come off, not on. Choose a heavier insert, collar or head, or lower the target.`
        : `Little to trim: only ${n(problem.chance * 100, 0)} % of arrows like this reach the target. Plan 6 to 9 gr over it.`
    case 'trim-beyond-post':
      return `${n(problem.wantedGr, 1)} gr must come off, and the post can give ${n(problem.availableGr, 1)} gr before its bond gets too short. Choose a lighter insert, collar or head, or raise the target.`
    case 'nothing-to-trim':
      return `Heavier than the target by ${n(problem.overGr, 1)} gr, and no part of it may be trimmed. Choose an insert with a post that may be trimmed, or raise the target.`
    case 'under-gpp':
      return `${n(problem.gpp, 2)} gr per pound is under ${n(problem.least, 1)}: too light for this bow; the archer can be hurt and the bow break. Raise the target or ask for less draw weight.`
    case 'post-wider-than-bore':
      return `${problem.part}: a post of ${n(problem.postMm, 2)} mm does not go into a bore of ${n(problem.boreMm, 2)} mm. Choose another insert or another shaft.`
    case 'ring-tighter-than-shaft':
      return `${problem.part}: a hole of ${n(problem.innerMm, 2)} mm does not go over a shaft of ${n(problem.shaftMm, 2)} mm. Choose a wider one or a thinner shaft.`
    case 'parts-overlap':
      return `${problem.part} and ${problem.other} stand in the same place over ${n(problem.byIn, 2)} in. Set one of them back or remove it.`
    case 'thread-differs':
      return `${problem.head} has the thread ${problem.headThread}, its seat ${problem.seatThread}. Choose a head or an insert that fit, or add an adapter.`
    case 'bevel-against-fletch':
      return `A ${problem.bevel} bevel on a ${problem.side} fletch: they would turn the arrow against each other. Change the head or the side of the fletch.`
    case 'cut-longer-than-raw':
      return `C2C ${n(problem.c2cIn, 2)} in is longer than the raw shaft, ${n(problem.rawIn, 2)} in. Shorten it or choose a longer shaft.`
    case 'bond-too-short':
      return `${problem.part}: ${n(problem.bondMm, 1)} mm of post are left in the shaft to be bonded, and it takes ${n(problem.leastMm, 1)}. Choose a longer post, or trim less off it.`
    case 'vanes-beyond-clamp':
      return `The vanes would reach ${n(problem.reachIn, 2)} in ahead of the throat, and the clamp of the jig ends at ${n(problem.clampIn, 2)}. Choose shorter vanes or move the tail back.`
    case 'pin-without-bushing':
      return `${problem.nock} goes onto a pin, and there is no bushing to hold one. Add a bushing or choose another nock.`
    case 'bushing-without-pin':
      return `${problem.bushing} holds a pin, and ${problem.nock} goes straight into the shaft. Remove the bushing or choose a pin nock.`
    case 'vane-behind-shaft':
      return `The vane tail at ${n(problem.tailIn, 2)} in would lie behind the shaft, which begins ${n(problem.rearIn, 2)} in ahead of the throat. Move it forward.`
    case 'maker-draw-limit':
      return `${n(problem.drawLb, 0)} lb is over the shaft maker’s limit of ${n(problem.limitLb, 0)} lb. The maker’s limit stands above any figure here: choose a stronger shaft.`
    case 'maker-front-limit':
      return `${n(problem.frontGr, 0)} gr in front is over the shaft maker’s limit of ${n(problem.limitGr, 0)} gr. Choose a stronger shaft or less weight in front.`
    case 'no-length-fits':
      return `No cut length fits: clearance asks for at least ${n(problem.shortestIn, 2)} in C2C, stiffness allows at most ${n(problem.longestIn, 2)} in. Choose a stiffer shaft or less weight in front, or have the full-draw marks measured.`
    case 'cut-too-short':
      return `C2C ${n(problem.c2cIn, 2)} in is too short: at full draw the arrow clears rest, riser and hand from ${n(problem.shortestIn, 2)} in on. ${problem.isEstimated ? 'That is estimated: have a nocked arrow marked at full draw, or lengthen it.' : 'Lengthen it.'}`
  }
}
