/** Labels laid out on their stock, to the tenth of a millimetre; or a test print on plain paper to hold against it. */
import type { ReactNode } from 'react'
import '../look/print.css'
import type { LabelStock } from './label-stock'
import { labelSheets, placeOn } from './label-stock'
import look from './labels.module.css'

const PAPER_MM = { a4: [210, 297], letter: [215.9, 279.4] } as const
const RULER_MM = { sheet: 100, label: 50 } as const

interface LabelSheetsProps {
  stock: LabelStock
  labels: readonly { readonly key: string; readonly content: ReactNode }[]
  /** Places of the first sheet that are used up. */
  used: number
  /** Outlines and a ruler instead of labels. */
  test: boolean
}

export function LabelSheets({ stock, labels, used, test }: LabelSheetsProps) {
  const [wide, high] = stock.paper === null ? [stock.widthMm, stock.heightMm] : PAPER_MM[stock.paper]
  const paper = { page: stock.paper ?? stock.key, width: `${wide}mm`, height: `${high}mm` }
  const box = (place: number) => {
    const { leftMm, topMm } = placeOn(stock, place)
    return {
      left: `${leftMm}mm`,
      top: `${topMm}mm`,
      width: `${stock.widthMm}mm`,
      height: `${stock.heightMm}mm`,
      '--high': `${stock.heightMm}mm`,
      '--wide': `${stock.widthMm}mm`,
    }
  }
  if (test) {
    const long = stock.paper === null ? RULER_MM.label : RULER_MM.sheet
    return (
      <section className={look.paper} style={paper} aria-label="Test print">
        {Array.from({ length: stock.columns * stock.rows }, (_, place) => (
          <div key={place} className={`${look.label} ${look.outline}`} style={box(place)} />
        ))}
        <div className={look.across} style={{ width: `${long}mm` }} data-label="">
          <span>{long} mm</span>
        </div>
        {stock.paper === null ? null : (
          <div className={look.down} style={{ height: `${long}mm` }} data-label="">
            <span>{long} mm</span>
          </div>
        )}
      </section>
    )
  }
  return labelSheets(labels, stock, used).map((sheet, at, all) => (
    <section key={at} className={look.paper} style={paper} aria-label={`Sheet ${at + 1} of ${all.length}`}>
      {sheet.map(({ label, place }) => (
        <div key={label.key} className={look.label} style={box(place)} data-part="label">
          {label.content}
        </div>
      ))}
    </section>
  ))
}
