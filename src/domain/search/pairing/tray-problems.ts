/** What keeps a tray from being paired. */
import type { Tray } from './pairing'

export type PairingFinding =
  | { readonly code: 'no-arrows' }
  | { readonly code: 'too-many-arrows'; readonly arrows: number; readonly most: number }
  | { readonly code: 'list-too-short'; readonly list: number; readonly has: number; readonly needs: number }
  | { readonly code: 'weight-not-usable'; readonly id: string; readonly gr: number }
  | { readonly code: 'target-not-usable'; readonly targetGr: number; readonly toleranceGr: number }
  /** With these parts some arrow is too light, or too heavy for its post to make up. */
  | { readonly code: 'arrows-miss-target'; readonly arrows: readonly string[]; readonly missGr: number }

export const MOST_ARROWS = 24
const isWeight = (gr: number) => gr >= 0 && gr <= 5000

export function trayProblems({ lists, besidesGr, targetGr, toleranceGr }: Tray): PairingFinding[] {
  const arrows = lists[0]?.length ?? 0
  if (arrows === 0) return [{ code: 'no-arrows' }]
  if (arrows > MOST_ARROWS) return [{ code: 'too-many-arrows', arrows, most: MOST_ARROWS }]
  return [
    ...lists.flatMap((list, i): PairingFinding[] =>
      list.length < arrows ? [{ code: 'list-too-short', list: i, has: list.length, needs: arrows }] : [],
    ),
    ...lists
      .flat()
      .flatMap(({ id, gr, givesGr }): PairingFinding[] =>
        isWeight(gr) && isWeight(givesGr) ? [] : [{ code: 'weight-not-usable', id, gr: isWeight(gr) ? givesGr : gr }],
      ),
    ...(isWeight(besidesGr) ? [] : [{ code: 'weight-not-usable', id: 'besides', gr: besidesGr } as const]),
    ...(isWeight(targetGr) && targetGr > 0 && isWeight(toleranceGr) && toleranceGr > 0
      ? []
      : [{ code: 'target-not-usable', targetGr, toleranceGr } as const]),
  ]
}
