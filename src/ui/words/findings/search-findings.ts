/** What a search has to say, in sentences: which figure to change, or what to put on the shelf. */
import type { Axis } from '../../../domain/search/axes'
import type { SearchFinding } from '../../../domain/search/findings'
import type { BrokenWish } from '../../../domain/search/found-arrow'
import { WISH_UNITS, type WishName } from '../../../domain/search/wish-names'
import type { Id } from '../../../domain/records/scalars'
import { counted, showIn, showNumber } from '../format'

const AXIS: Readonly<Record<Axis, string>> = {
  shaft: 'shaft',
  nock: 'nock',
  bushing: 'bushing',
  vanes: 'fletching',
  wrap: 'wrap',
  front: 'insert, half-out or outsert',
  ring: 'collar, sleeve or footing',
  'rear weights': 'rear weight',
  adapter: 'adapter',
  head: 'head',
}

const DECIMALS = { gr: 1, '%': 1, in: 2, lbf: 1, '1': 2 } as const

/** A figure of a wish as people read it: a chance in percent, a count whole. */
export function wishFigure(wish: WishName, n: number): string {
  if (wish === 'chance for the set') return showIn(n * 100, '%', 1)
  if (wish === 'quantity' || wish === 'arrows to show') return showNumber(n, 0)
  const unit = WISH_UNITS[wish]
  return showIn(n, unit, DECIMALS[unit])
}

/** @param partName what a part is called in the shop */
export function searchWords(finding: SearchFinding, partName: (part: Id) => string): string {
  switch (finding.code) {
    case 'wish-not-a-number':
      return finding.wish === 'finished weight'
        ? 'No finished weight to look for. Enter the weight that the arrow is to land on.'
        : `The ${finding.wish} asked for is no number. Enter one.`
    case 'wish-out-of-range':
      return `${capital(finding.wish)} of ${wishFigure(finding.wish, finding.at)}: a search takes ${wishFigure(finding.wish, finding.min)} to ${wishFigure(finding.wish, finding.max)}. Change it.`
    case 'window-empty':
      return `No ${finding.wish} is both at least ${wishFigure(finding.wish, finding.min)} and at most ${wishFigure(finding.wish, finding.max)}. Swap the two ends.`
    case 'too-many-combinations':
      return `${counted(finding.combinations, 'combination')} of one end of the arrow alone; the search holds up to ${showNumber(finding.most, 0)}. Fix a part, or leave out a kind.`
    case 'nothing-for-axis':
      return nothingFor(finding)
    case 'short-of-stock':
      return `${partName(finding.part)}: ${counted(finding.free, 'piece')} free, the set takes ${finding.needed}. Left out; count the shelf again, or ask for fewer arrows.`
    case 'draw-above-shaft-limit':
      return `${partName(finding.part)} is left out: its maker allows a draw weight of ${showIn(finding.limitLb, 'lbf', 0)} at most, the bow draws ${showIn(finding.drawLb, 'lbf', 1)}. The maker’s limit stands above any figure here.`
    case 'bevel-against-fletch':
      return `${partName(finding.part)} is left out: a ${finding.bevel} bevel turns against a ${finding.fletch} fletch. Change the side of the fletch to use it.`
    case 'raw-shaft-too-short':
      return `${partName(finding.part)} comes ${showIn(finding.rawLengthIn, 'in', 2)} long and cannot be cut to ${showIn(finding.c2cIn, 'in', 2)}; only shorter cuts of it were looked at.`
    case 'vanes-behind-shaft':
      return `Vane tails at ${showIn(finding.vaneTailIn, 'in', 2)} would lie behind the shaft: no nock here puts its rear end less than ${showIn(finding.standoutIn, 'in', 2)} ahead of the throat. Move the vanes forward.`
    case 'nothing-goes-together':
      return `No ${AXIS[finding.first]} here goes with any ${AXIS[finding.second]}: look at bores, diameters and threads in Parts, or allow more kinds.`
    case 'reserve-not-judged':
      return 'The bow’s draw weight is not known, so stiffness was not judged. Any arrow here may be too soft or too stiff for it: enter the draw weight before cutting.'
    case 'target-below-all':
      return `${showIn(finding.targetGr, 'gr', 1)} is lighter than anything these parts make; the lightest is ${showIn(finding.lightestGr, 'gr', 1)}. Raise the target or allow lighter parts.`
    case 'target-above-all':
      return `${showIn(finding.targetGr, 'gr', 1)} is heavier than anything these parts make; the heaviest is ${showIn(finding.heaviestGr, 'gr', 1)}. Lower the target or allow heavier parts.`
    case 'nothing-fits':
      return `None of ${counted(finding.combinations, 'combination')} keeps every wish. ${finding.misses > 0 ? 'Below are the nearest, each with what it breaks.' : 'Nothing on the shelf goes together.'}`
    case 'fewer-than-asked':
      return `Only ${counted(finding.found, 'arrow')} of the ${finding.asked} asked for keep every wish; there is no other.`
  }
}

function nothingFor({ axis, onShelf, short, unfit }: Extract<SearchFinding, { code: 'nothing-for-axis' }>): string {
  const what = AXIS[axis]
  if (onShelf === 0) return `Nothing on the shelf for the ${what}. Receive some in Parts, or allow other kinds.`
  const why = [
    ...(short > 0 ? [`${showNumber(short, 0)} too few for the set`] : []),
    ...(unfit > 0 ? [`${showNumber(unfit, 0)} not for this bow or fletch`] : []),
  ]
  return `No ${what} can be used: of ${counted(onShelf, 'lot')}, ${why.join(', ')}.`
}

/** Which wish an arrow does not keep, and by how much. */
export function brokenWishWords({ wish, at, limit }: BrokenWish): string {
  const side = at < limit ? 'below' : 'above'
  return `${capital(wish)} ${wishFigure(wish, at)}, ${wishFigure(wish, Math.abs(at - limit))} ${side} ${wishFigure(wish, limit)}`
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
