/** The scale that stands at the bench. */
import type { ShopScale } from '../../domain/bench/bench-scale'
import { benchScale } from '../../domain/bench/bench-scale'
import type { Sheet } from '../../domain/sheet/sheet'
import { useApp } from '../app/use-app'

export function useBenchScale(sheet: Sheet): ShopScale | undefined {
  const name = useApp((s) => s.scaleName)
  const today = useApp((s) => s.shelf.rules.scales)
  return benchScale(name, today, sheet.rules.scales)
}
