/** What a plan stands on, copied off the shelf: its parts, its lots, and what was weighed of them. */
import { learnedFor } from '../stock/learned'
import type { Shelf } from '../stock/shelf'
import type { Plan } from './plan'
import type { Sheet } from './sheet'

export function stoodOn({ lines }: Plan, shelf: Shelf): Pick<Sheet, 'parts' | 'lots' | 'learned'> {
  const partIds = [...new Set(lines.map((line) => line.part))]
  const lotIds = [...new Set(lines.flatMap((line) => (line.lot === null ? [] : [line.lot])))]
  const parts = partIds.flatMap((id) => {
    const part = shelf.parts.get(id)
    return part === undefined ? [] : [{ id, part: part.body }]
  })
  const lots = lotIds.flatMap((id) => {
    const lot = shelf.lots.get(id)
    return lot === undefined ? [] : [{ id, lot: lot.body }]
  })
  return { parts, lots, learned: [...learnedFor({ parts, lots }, shelf.lotViews)] }
}
