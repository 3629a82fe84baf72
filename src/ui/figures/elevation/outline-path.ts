/** The SVG path of a piece about the centre line x = 0, point up. */
import type { ElevationPiece } from './elevation-piece'
import type { TrueScale } from './true-scale'

const EARS_IN = 0.2
const n = (value: number) => value.toFixed(2)

export function outlinePath(piece: ElevationPiece, scale: TrueScale): string {
  const { y, pxPerMm, gap } = scale
  const { outline } = piece
  const half = piece.halfWidthMm * pxPerMm
  const [rear, front] = [y(piece.fromIn), y(piece.toIn)]
  switch (outline.shape) {
    case 'shaft':
      return gap === null
        ? box(half, front, rear)
        : `M${n(-half)} ${n(y(gap.toIn))}V${n(front)}H${n(half)}V${n(y(gap.toIn))}M${n(-half)} ${n(y(gap.fromIn))}V${n(rear)}H${n(half)}V${n(y(gap.fromIn))}`
    case 'tube':
    case 'film':
      return box(half, front, rear)
    case 'field point': {
      const shoulder = rear + (front - rear) * 0.45
      return `M0 ${n(front)}Q${n(half)} ${n(front + (shoulder - front) * 0.55)} ${n(half)} ${n(shoulder)}V${n(rear)}H${n(-half)}V${n(shoulder)}Q${n(-half)} ${n(front + (shoulder - front) * 0.55)} 0 ${n(front)}Z`
    }
    case 'broadhead': {
      const ferrule = outline.ferruleMm * pxPerMm
      const blades = y(outline.bladeRearIn)
      return `M0 ${n(front)}L${n(half)} ${n(blades)}H${n(ferrule)}V${n(rear)}H${n(-ferrule)}V${n(blades)}H${n(-half)}Z`
    }
    case 'nock': {
      const ears = y(piece.fromIn - EARS_IN)
      const throat = half * 0.42
      return `M${n(-half)} ${n(front)}H${n(half)}L${n(half * 0.92)} ${n(ears)}H${n(throat)}V${n(rear)}A${n(throat)} ${n(throat)} 0 0 0 ${n(-throat)} ${n(rear)}V${n(ears)}H${n(-half * 0.92)}Z`
    }
    case 'fin':
      return finPaths(piece.fromIn, piece.toIn, outline, scale)
  }
}

const box = (half: number, front: number, rear: number) => `M${n(-half)} ${n(front)}H${n(half)}V${n(rear)}H${n(-half)}Z`

/** Fins left and right as they are seen with one towards the eye: foreshortened when they are three. */
function finPaths(fromIn: number, toIn: number, fin: ElevationPiece['outline'] & { shape: 'fin' }, scale: TrueScale) {
  const { y, pxPerMm } = scale
  const root = fin.rootMm * pxPerMm
  const seen = fin.pieces === 3 ? Math.sin((2 * Math.PI) / 3) : 1
  const tip = root * (fin.pieces === 3 ? 0.7 : 1) + fin.heightMm * pxPerMm * seen
  const tipFront = y(toIn - fin.sweepIn)
  const tipRear = y(Math.max(fromIn - 0.1, toIn - fin.sweepIn - fin.tipLengthIn))
  const side = (s: 1 | -1) =>
    `M${n(s * root)} ${n(y(toIn))}Q${n(s * (root + (tip - root) * 0.75))} ${n(y(toIn) + (tipFront - y(toIn)) * 0.45)} ${n(s * tip)} ${n(tipFront)}L${n(s * tip)} ${n(tipRear)}L${n(s * root)} ${n(y(fromIn))}Z`
  const towardsTheEye = fin.pieces >= 3 ? `M0 ${n(y(toIn))}V${n(y(fromIn))}` : ''
  return side(1) + side(-1) + towardsTheEye
}

/** The two wavy ends of the break. */
export function breakPath(scale: TrueScale, halfWidthMm: number): string {
  const { gap, y, pxPerMm } = scale
  if (gap === null) return ''
  const half = halfWidthMm * pxPerMm + 1.5
  const wave = (at: number) =>
    `M${n(-half)} ${n(at)}C${n(-half / 2)} ${n(at - 5)} ${n(-half / 4)} ${n(at - 3)} 0 ${n(at)}S${n(half / 2)} ${n(at + 5)} ${n(half)} ${n(at)}`
  return wave(y(gap.toIn)) + wave(y(gap.fromIn))
}
