import { describe, expect, it } from 'vitest'
import { halfUnit, misses, type OutsideCheck } from './outside-check'
import { OUTSIDE_CHECKS } from './page'

const ALL = Object.values(OUTSIDE_CHECKS).flat()
const ROUNDING = 1 + 1e-9 // of half a unit: a number that lies just there

describe('the checks against the outside', () => {
  it('are at least eighty that were published or computed twice', () => {
    expect(ALL.filter(({ status }) => status === 'P' || status === 'C').length).toBeGreaterThanOrEqual(80)
  })

  it.each(ALL)('$what is $says $unit [$source]', (check) => {
    expect(misses(check)).toBeLessThanOrEqual(ROUNDING)
  })

  it('know half a unit of the last printed digit, and see what lies beyond it', () => {
    expect(['7', '1.50', '8.78068e-4', '12.0e3'].map(halfUnit)).toEqual([0.5, 0.005, 5e-10, 50])
    const check: OutsideCheck = { what: '', says: '1.50', unit: '', status: 'P', source: 'SP811', is: () => 1.5051 }
    expect(misses(check)).toBeGreaterThan(ROUNDING)
  })
})
