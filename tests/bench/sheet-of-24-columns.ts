import { arrowFigures } from '@/core/arrow/arrow-figures'
import { feetPerSecond, grains, inches, poundsForce } from '@/core/quantity'
import { columnReserve } from '@/core/stiffness/column-reserve'
import { heavyArrow } from '@tests/core/stiffness/sample-arrow'

const bow = {
  kind: 'compound',
  peakDrawWeight: poundsForce(72),
  drawLength: inches(28.5),
  chronograph: [
    { mass: grains(452), speed: feetPerSecond(268) },
    { mass: grains(601), speed: feetPerSecond(236.5) },
  ],
} as const
const spread = { shaft: grains(1), pieces: heavyArrow.pieces.map(() => grains(0.4)), place: inches(0.02) }
const launch = { peakDraw: bow.peakDrawWeight, virtualMass: grains(60) }

/** The reserve itself and a standard uncertainty of draw weight, spine and cut either way, of the virtual mass one way. */
const COLUMNS_OF_A_BAND = 8

/** All figures, the reserve with its band among them, and as many columns more as an envelope or a cut asks, 24 in all. */
export function sheetOf24Columns() {
  const figures = arrowFigures({ arrow: heavyArrow, bow, spread })
  const reserve = figures.columnReserve
  if (!reserve?.ok || typeof reserve.value === 'number') throw new Error('no band, so that fewer columns were solved')
  return [figures, ...Array.from({ length: 24 - COLUMNS_OF_A_BAND }, () => columnReserve(heavyArrow, launch))]
}
