import type { BalanceFinding } from '../../../core/balance/findings'
import { show } from '../format'

/** What balance and FOC have to say, in a sentence. */
export function balanceWords(finding: BalanceFinding): string {
  switch (finding.code) {
    case 'length-to-head-tip': {
      const wrong = `The length of ${show(finding.length, 'in', 2)} was read to the tip of the head, which would give ${show(finding.focAsRead, '%', 2)} FOC. Arrow length ends at the shaft front`
      return finding.foc === undefined
        ? `${wrong}. Read the length to the shaft front, or enter how far the head reaches ahead of it.`
        : `${wrong}: with the head taken off, FOC is ${show(finding.foc, '%', 2)}.`
    }
    case 'balance-disagrees':
      return `The arrow balances at ${show(finding.measured, 'in', 2)}; its parts say ${show(finding.computed, 'in', 2)}, and the two may differ by ${show(finding.allowed, 'in', 2)} at most. Read the balance point again, or check the parts’ weights and where they sit.`
  }
}
