/** The numbers along the foot of a chart. */
import look from './chart-axis.module.css'
import { tickTexts } from './tick-text'

interface ChartAxisProps {
  /** Percent of the width. */
  at: (tick: number) => number
  ticks: readonly number[]
  /** What runs along it, with its unit. */
  title: string
}

export function ChartAxis({ at, ticks, title }: ChartAxisProps) {
  const texts = tickTexts(ticks)
  return (
    <div className={look.axis} aria-hidden="true" data-label="">
      {ticks.map((tick, i) => (
        <span key={tick} className={look.tick} style={{ insetInlineStart: `${at(tick)}%` }}>
          {texts[i]}
        </span>
      ))}
      <span className={look.title}>{title}</span>
    </div>
  )
}
