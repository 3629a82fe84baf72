/** What the sheet says for a step of the bench: what the jig is set to, and to which plane the head is turned. */
import type { Plan } from '../../domain/sheet/plan'
import { showPlain } from './format'

export function planAtStep(step: string, plan: Plan): string | undefined {
  if (step === 'fletch') {
    const { jig, fletchSide, fletchDegrees, cockVaneDeg, vaneTailIn } = plan
    const turn = fletchSide === 'straight' ? 'straight' : `${fletchSide}, ${showPlain(fletchDegrees)}°`
    const where = `cock vane at ${showPlain(cockVaneDeg)}°, tail ${showPlain(vaneTailIn)} in ahead of the throat`
    return `${jig === '' ? 'Jig' : jig}: ${turn}; ${where}.`
  }
  if (step === 'index' && plan.indexPlane !== 'none') return `Turn the head to the ${plan.indexPlane}.`
  return undefined
}
