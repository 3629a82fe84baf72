/** Which of the shop's scales stands at the bench: as the shop has it today, else as the sheet was frozen with it. */
import type { Rules } from '../shop/rules'

export type ShopScale = Rules['scales'][number]

/** @param name as chosen at the bench; empty or unknown means the first */
export function benchScale(
  name: string,
  today: readonly ShopScale[],
  frozen: readonly ShopScale[],
): ShopScale | undefined {
  const called = (scales: readonly ShopScale[]) => scales.find((each) => each.name === name)
  return called(today) ?? called(frozen) ?? today[0] ?? frozen[0]
}
