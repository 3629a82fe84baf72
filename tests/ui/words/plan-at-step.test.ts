import { expect, it } from 'vitest'
import { NEW_PLAN } from '@/domain/sheet/plan'
import { planAtStep } from '@/ui/words/plan-at-step'

it('tells the bench how the jig is set and where the head is turned to, as the sheet has it', () => {
  const plan = { ...NEW_PLAN, jig: 'Jig 2', fletchDegrees: 2.5, cockVaneDeg: 90 }
  expect(planAtStep('fletch', plan)).toBe('Jig 2: right, 2.5°; cock vane at 90°, tail 1 in ahead of the throat.')
  expect(planAtStep('fletch', { ...plan, jig: '', fletchSide: 'straight' })).toMatch(/^Jig: straight;/)
  expect(planAtStep('index', plan)).toBe('Turn the head to the spine mark.')
  expect(planAtStep('index', { ...plan, indexPlane: 'none' })).toBeUndefined()
  expect(planAtStep('trim', plan)).toBeUndefined()
})
