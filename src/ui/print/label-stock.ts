/**
 * The label stock that a shop commonly has: sheets of A4 and of letter paper, and single labels off a roll, where the page
 * is the label. Millimetres. Sizes as label sheets are sold; common practice, no source [CP].
 */
import type { Paper } from './print-sheet'

export interface LabelStock {
  readonly key: string
  /** How it is called on the page. */
  readonly name: string
  /** The sheet it comes on; null: one label a page. */
  readonly paper: Paper | null
  readonly widthMm: number
  readonly heightMm: number
  readonly columns: number
  readonly rows: number
  /** From the sheet's left and top edge to the first label. */
  readonly leftMm: number
  readonly topMm: number
  /** From one label to the next. */
  readonly acrossMm: number
  readonly downMm: number
}

const IN = 25.4 // mm, exact

const roll = (key: string, name: string, widthMm: number, heightMm: number): LabelStock => ({
  key,
  name,
  paper: null,
  widthMm,
  heightMm,
  columns: 1,
  rows: 1,
  leftMm: 0,
  topMm: 0,
  acrossMm: widthMm,
  downMm: heightMm,
})

export const LABEL_STOCKS: readonly LabelStock[] = [
  {
    key: 'a4-24',
    name: 'A4, 24 a sheet, 70 × 37 mm',
    paper: 'a4',
    widthMm: 70,
    heightMm: 37,
    columns: 3,
    rows: 8,
    leftMm: 0,
    topMm: 0.5,
    acrossMm: 70,
    downMm: 37,
  },
  {
    key: 'a4-21',
    name: 'A4, 21 a sheet, 63.5 × 38.1 mm',
    paper: 'a4',
    widthMm: 63.5,
    heightMm: 38.1,
    columns: 3,
    rows: 7,
    leftMm: 7.25,
    topMm: 15.15,
    acrossMm: 66,
    downMm: 38.1,
  },
  {
    key: 'a4-8',
    name: 'A4, 8 a sheet, 99.1 × 67.7 mm',
    paper: 'a4',
    widthMm: 99.1,
    heightMm: 67.7,
    columns: 2,
    rows: 4,
    leftMm: 4.65,
    topMm: 13.1,
    acrossMm: 101.6,
    downMm: 67.7,
  },
  {
    key: 'letter-30',
    name: 'Letter, 30 a sheet, 2⅝ × 1 in',
    paper: 'letter',
    widthMm: 2.625 * IN,
    heightMm: IN,
    columns: 3,
    rows: 10,
    leftMm: 0.1875 * IN,
    topMm: 0.5 * IN,
    acrossMm: 2.75 * IN,
    downMm: IN,
  },
  {
    key: 'letter-10',
    name: 'Letter, 10 a sheet, 4 × 2 in',
    paper: 'letter',
    widthMm: 4 * IN,
    heightMm: 2 * IN,
    columns: 2,
    rows: 5,
    leftMm: 0.15625 * IN,
    topMm: 0.5 * IN,
    acrossMm: 4.1875 * IN,
    downMm: 2 * IN,
  },
  roll('roll-57x32', 'Single, 57 × 32 mm', 57, 32),
  roll('roll-62x29', 'Single, 62 × 29 mm', 62, 29),
  roll('roll-100x62', 'Single, 100 × 62 mm', 100, 62),
  roll('roll-4x6', 'Single, 6 × 4 in', 6 * IN, 4 * IN),
]

/** Where the label of a place stands on its sheet; places count from 0, along the rows. */
export const placeOn = (stock: LabelStock, place: number) => ({
  leftMm: stock.leftMm + (place % stock.columns) * stock.acrossMm,
  topMm: stock.topMm + Math.floor(place / stock.columns) * stock.downMm,
})

/** Labels cut into sheets; the first sheet may have some used already. */
export function labelSheets<L>(labels: readonly L[], stock: LabelStock, used: number) {
  const each = stock.columns * stock.rows
  const first = stock.paper === null ? 0 : Math.min(Math.max(0, used), each - 1)
  return Array.from({ length: Math.ceil((labels.length + first) / each) }, (_, sheet) =>
    labels
      .map((label, at) => ({ label, at: at + first }))
      .filter(({ at }) => Math.floor(at / each) === sheet)
      .map(({ label, at }) => ({ label, place: at % each })),
  )
}
