import { describe, expect, it } from 'vitest'
import { DEFAULT_ROUTE } from '@/domain/bench/route'
import { pointsOf } from '@/domain/bench/points-of'
import { routeSheets, routeSteps } from '@/ui/print/route-sheets'
import { demoSheet } from '@tests/support/demo-sheet'

describe('the route card cut into sheets', () => {
  it('has every step once, in order, with a line for each of its readings', () => {
    const sheet = demoSheet({})
    const steps = routeSheets(routeSteps(sheet)).flat()
    expect(steps.map(({ step, at }) => [at, step.key])).toEqual(DEFAULT_ROUTE.map(({ key }, at) => [at + 1, key]))
    for (const { step, rows } of steps)
      expect([...new Set(rows.map(({ point }) => point))], step.key).toEqual(pointsOf(step, sheet))
  })

  it('begins with a step however long that is, and leaves no sheet empty', () => {
    const [spin] = routeSteps(demoSheet({})).filter(({ step }) => step.key === 'spin')
    const long = { ...spin!, rows: [...spin!.rows, ...spin!.rows, ...spin!.rows] }
    expect(routeSheets([long, long])).toEqual([[long], [long]])
    expect(routeSheets([])).toEqual([])
  })
})
