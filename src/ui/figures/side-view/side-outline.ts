/** Outline of a piece lying along x, point to the right, about the line y = 0; one scale along and across. */
import type { ElevationPiece } from '../elevation/elevation-piece'

const MM_PER_IN = 25.4 // exact [SP811]
const n = (value: number) => value.toFixed(3)

/** @param x drawing units from a position in inches. @param perMm drawing units a millimetre */
export function sideOutline(piece: ElevationPiece, x: (positionIn: number) => number, perMm: number): string {
  const half = piece.halfWidthMm * perMm
  const [rear, front] = [x(piece.fromIn), x(piece.toIn)]
  const { outline } = piece
  switch (outline.shape) {
    case 'broadhead': {
      const blades = x(outline.bladeRearIn)
      const ferrule = outline.ferruleMm * perMm
      return `M${n(front)} 0L${n(blades)} ${n(half)}V${n(ferrule)}H${n(rear)}V${n(-ferrule)}H${n(blades)}V${n(-half)}Z`
    }
    case 'field point': {
      const shoulder = rear + (front - rear) * 0.45
      return `M${n(front)} 0L${n(shoulder)} ${n(half)}H${n(rear)}V${n(-half)}H${n(shoulder)}Z`
    }
    case 'fin': {
      const root = outline.rootMm * perMm
      const tipFront = x(piece.toIn - outline.sweepIn)
      const tipRear = x(piece.toIn - outline.sweepIn - outline.tipLengthIn)
      const side = (s: 1 | -1) =>
        `M${n(front)} ${n(s * root)}L${n(tipFront)} ${n(s * half)}H${n(tipRear)}L${n(rear)} ${n(s * root)}Z`
      return side(1) + side(-1)
    }
    case 'nock': {
      const ears = rear - 0.2 * MM_PER_IN * perMm
      const throat = half * 0.42
      return `M${n(front)} ${n(half)}H${n(ears)}V${n(throat)}H${n(rear)}V${n(-throat)}H${n(ears)}V${n(-half)}H${n(front)}Z`
    }
    case 'shaft':
    case 'tube':
    case 'film':
      return `M${n(front)} ${n(half)}H${n(rear)}V${n(-half)}H${n(front)}Z`
  }
}

/** Shaft first, hidden pieces last. */
export const drawnInOrder = (pieces: readonly ElevationPiece[]): readonly ElevationPiece[] => {
  const rank = ({ outline, hidden }: ElevationPiece) =>
    hidden ? 3 : outline.shape === 'shaft' ? 0 : outline.shape === 'fin' ? 1 : 2
  return pieces.toSorted((a, b) => rank(a) - rank(b))
}
