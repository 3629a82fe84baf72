/**
 * One outline of the elevation: plain geometry, positions in inches forward from the nock throat, widths in millimetres to
 * one side of the centre line. A line of the sheet may have several (an insert's post and its shoulder).
 */
export interface ElevationPiece {
  /** The line of the sheet it belongs to. */
  readonly id: string
  readonly label: string
  readonly outline: Outline
  readonly fromIn: number
  readonly toIn: number
  readonly halfWidthMm: number
  /** Inside another part: drawn dashed. */
  readonly hidden: boolean
}

export type Outline =
  | { readonly shape: 'shaft' }
  /** A straight cylinder: post, shoulder, collar, sleeve, wrap. */
  | { readonly shape: 'tube' }
  | { readonly shape: 'film' }
  /** A cone on a ferrule; the blades begin at `bladeRearIn`. */
  | { readonly shape: 'broadhead'; readonly bladeRearIn: number; readonly ferruleMm: number }
  | { readonly shape: 'field point' }
  /** Ears behind the throat are drawn for the eye; nothing is measured from them. */
  | { readonly shape: 'nock' }
  /** Root along the shaft, tip `heightMm` off it; `pieces` fins around, one of them towards the eye. */
  | {
      readonly shape: 'fin'
      readonly rootMm: number
      readonly heightMm: number
      readonly tipLengthIn: number
      readonly sweepIn: number
      readonly pieces: number
    }
