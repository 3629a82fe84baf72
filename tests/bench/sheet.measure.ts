/** What a page waits for while a number is typed: processor time of one thread, the middle of many after a warm-up. */
import type { Sheet } from '@/domain/sheet/sheet'
import { cutFigures } from '@/domain/sheet/cut-figures'
import { sheetFigures } from '@/domain/sheet/sheet-figures'
import { demoSheet, USUAL_LINES } from '@tests/support/demo-sheet'
import { type Measure, overLimit } from './measure'
import { sheetOf24Columns } from './sheet-of-24-columns'

const MOST_MS = 3
const WARM_UP = 200
const TIMES = 101

function processorMs(work: () => unknown): number {
  const began = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(began)
  return (user + system) / 1000
}

function measureOf(name: string, work: () => unknown): Measure {
  return {
    name,
    take() {
      for (let i = 0; i < WARM_UP; i += 1) work()
      const all = Array.from({ length: TIMES }, () => processorMs(work)).toSorted((a, b) => a - b)
      const middle = all[TIMES >> 1]!
      return {
        said: `${middle.toFixed(2)} ms, at most ${MOST_MS}; nine in ten within ${all[Math.floor(TIMES * 0.9)]!.toFixed(2)} ms`,
        over: overLimit('ms', middle, MOST_MS),
      }
    },
  }
}

const sheet = demoSheet({ c2cIn: 27.5, targetGr: 825, quantity: 6 }, USUAL_LINES, {
  chronograph: [
    { arrowGr: 452, speedFps: 268 },
    { arrowGr: 601, speedFps: 236.5 },
  ],
  braceHeightIn: 6.75,
})
const allOf = (told: Sheet) => {
  const figures = sheetFigures(told)
  if (figures === undefined) throw new Error('the sheet has no shaft or no cut length')
  return [figures, cutFigures(told, figures)]
}

export default [
  measureOf('all figures of one arrow, with 24 columns', sheetOf24Columns),
  measureOf('all figures and the cut of a sheet for six, forecast and chance to reach its number included', () =>
    allOf(sheet),
  ),
] satisfies readonly Measure[]
