import { describe, expect, it } from 'vitest'
import { dayOfMoment, showClock, showDay, showDayAndYear, showLongDay, showMoment } from '@/ui/words/dates'

describe('dates', () => {
  it('show a day the same wherever the shop is', () => {
    expect(showDay('2026-12-09')).toBe('9 Dec')
    expect(showDayAndYear('2026-12-09')).toBe('9 Dec 2026')
    expect(showLongDay('2026-12-09')).toBe('Wednesday 9 December 2026')
  })

  it('show a moment by the clock on the wall', () => {
    expect(showClock('2026-12-09T14:02:31Z', 'America/Denver')).toBe('07:02')
    expect(showClock('2026-12-09T00:02:31Z', 'UTC')).toBe('00:02')
    expect(showMoment('2026-12-09T23:30:00Z', 'Europe/Helsinki')).toBe('10 Dec 2026, 01:30')
    expect(dayOfMoment('2026-12-09T23:30:00Z', 'Europe/Helsinki')).toBe('2026-12-10')
  })

  it('say when there is no date', () => {
    expect(showDay('2026-13-01')).toBe('no date')
    expect(showClock('')).toBe('no date')
  })
})
