/** The field that a chart draws into, 100 wide and 100 high however large it is shown, between its two axes. */
import type { ScaleLinear } from 'd3-scale'
import type { ReactNode } from 'react'
import { ChartAxis } from './chart-axis'
import look from './plot-area.module.css'
import { tickTexts } from './tick-text'

interface PlotAreaProps {
  heightPx: number
  across: ScaleLinear<number, number>
  ticksAcross: readonly number[]
  titleAcross: string
  down: ScaleLinear<number, number>
  children: ReactNode
}

export const TICKS_DOWN = 4

export function PlotArea({ heightPx, across, ticksAcross, titleAcross, down, children }: PlotAreaProps) {
  const ticks = down.ticks(TICKS_DOWN)
  const texts = tickTexts(ticks)
  return (
    <div className={look.chart}>
      <div className={look.yAxis} aria-hidden="true" data-label="">
        {ticks.map((tick, i) => (
          <span key={tick} style={{ top: `${down(tick)}%` }}>
            {texts[i]}
          </span>
        ))}
      </div>
      <svg
        className={look.plot}
        width="100%"
        height={heightPx}
        viewBox="0 0 100 100"
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {children}
      </svg>
      <ChartAxis at={across} ticks={ticksAcross} title={titleAcross} />
    </div>
  )
}
