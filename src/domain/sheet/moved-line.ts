/** The order of lines with one of them at another place; places beyond the ends are the ends. */
import type { Id } from '../records/scalars'

export function movedLine(order: readonly Id[], line: Id, to: number): readonly Id[] {
  const rest = order.filter((each) => each !== line)
  const at = Math.min(rest.length, Math.max(0, to))
  return order.includes(line) ? [...rest.slice(0, at), line, ...rest.slice(at)] : order
}
