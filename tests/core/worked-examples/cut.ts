import { chooseCut } from '@/core/cut/choose-cut'
import { CUSTOMARY_CLEARANCE } from '@/core/cut/clearance-rules'
import { clearances } from '@/core/cut/clearances'
import { cutPlan } from '@/core/cut/cut-plan'
import type { FullDraw } from '@/core/cut/full-draw'
import { fullDraw } from '@/core/cut/full-draw'
import { shortestClear } from '@/core/cut/shortest-clear'
import { inches } from '@/core/quantity'
import type { Take, WorkedExamples } from './worked-example'

const atFullDraw = (n: Take): FullDraw => ({
  rest: { at: inches(n(25.5)), how: 'marked' },
  riserFront: { at: inches(n(27.2)), how: 'marked' },
  hand: { at: inches(n(26.9)), how: 'marked' },
})

export const cutExamples: WorkedExamples = {
  fullDraw: (n) =>
    fullDraw({
      marks: { rest: inches(n(25.5)), 'riser front': inches(n(27.2)) },
      drawLength: inches(n(28.5)),
      aheadOfPivot: { rest: inches(n(-1.2)), 'riser front': inches(n(0.6)) },
    }),
  shortestClear: (n) =>
    shortestClear(
      atFullDraw(n),
      { ...CUSTOMARY_CLEARANCE, frontAheadOfRest: inches(n(1)), bladesAheadOfRiser: inches(n(0.75)) },
      inches(n(0.3)),
    ),
  clearances: (n) =>
    clearances({
      length: inches(n(28.05)),
      fullDraw: atFullDraw(n),
      rules: CUSTOMARY_CLEARANCE,
      bladesAhead: inches(n(0.3)),
      cuttingWidth: inches(n(1.25)),
      toRiserSide: inches(n(1)),
      vaneTail: inches(n(1.5)),
      vaneReach: inches(n(0.6)),
      toCable: inches(n(0.9)),
    }),
  chooseCut: (n) =>
    chooseCut({
      clear: inches(n(26.65)),
      stiff: { shortest: inches(n(24)), longest: inches(n(28.31)) },
      raw: inches(n(32)),
      wish: inches(n(27.5)),
      step: inches(n(0.125)),
    }),
  cutPlan: (n) =>
    cutPlan({
      rawLength: inches(n(32)),
      c2c: inches(n(27.5)),
      kerf: inches(n(0.04)),
      leastPiece: inches(n(0.25)),
      offNock: inches(n(1.5)),
    }),
}
