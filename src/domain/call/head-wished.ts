/** The one head on the shelf that answers every wish told of it; none when no head or more than one does. */
import type { Id } from '../records/scalars'
import type { PartOf } from '../stock/part'
import type { Shelf } from '../stock/shelf'
import { partsOfKind } from '../stock/shelf'
import type { Answers } from './answers'
import { toldNumber, toldText } from './told'

const SAME_GR = 0.5
const SAME_IN = 0.02

export function headWished(answers: Answers, shelf: Shelf): Id | undefined {
  const weight = toldNumber(answers, 'headWeightGr')
  if (weight === undefined) return undefined
  const heads = partsOfKind(
    shelf,
    ...(toldText(answers, 'headKind') === 'field point' ? (['field point'] as const) : (['broadhead'] as const)),
  )
  const [first, second] = heads.filter(({ body }) => !body.discontinued && isWished(answers, body, weight))
  return second === undefined ? first?.id : undefined
}

function isWished(answers: Answers, head: PartOf<'broadhead' | 'field point'>, weight: number): boolean {
  const thread = toldText(answers, 'headThread')
  const fitsThread = thread === undefined || head.thread === thread
  const fits = fitsThread && Math.abs(head.weightGr - weight) <= SAME_GR
  if (head.kind === 'field point' || !fits) return fits
  const [blades, width, bevel] = [
    toldNumber(answers, 'headBlades'),
    toldNumber(answers, 'cuttingWidthIn'),
    toldText(answers, 'bevelHand'),
  ]
  return (
    (blades === undefined || head.blades === blades) &&
    (width === undefined || Math.abs(head.cuttingWidthIn - width) <= SAME_IN) &&
    (bevel === undefined || head.bevel === bevel)
  )
}
