/** What a lot really weighs: against the catalogue, one after another, and how well it keeps inside the maker's tolerance. */
import { controlLimits } from '../../core/statistics/control-limits'
import { lotStatistics } from '../../domain/stock/lot-statistics'
import type { LotView } from '../../domain/stock/lot-view'
import type { Part } from '../../domain/stock/part'
import { ControlChart } from '../figures/charts/control-chart'
import { DotPlot } from '../figures/charts/dot-plot'
import { Figure, FigureList } from '../figures/figure'
import { againstCatalogue, steadyWords, weighingWords } from '../words/stock-words'

interface LotChartsProps {
  name: string
  part: Part
  view: LotView
}

const NEWEST = 60 // weighings drawn; the figures stand on all of them

export function LotCharts({ name, part, view }: LotChartsProps) {
  const { weighed, each, statistics, nominal, tolerance, lower, upper, keeps } = lotStatistics(part, view)
  if (!statistics.ok) return null
  const { mean, sd, count } = statistics.value
  const from = Math.max(0, weighed.length - NEWEST)
  const dots = weighed.slice(from).map((weighing, i) => {
    const value = each[from + i]!
    return {
      key: weighing.event.slice(0, 8) + String(i),
      label: weighingWords(weighing),
      value,
      look: value < lower || value > upper,
    }
  })
  const control = controlLimits(
    dots.map(({ value }) => value),
    'gr',
  )
  return (
    <>
      <FigureList columns={2}>
        <Figure name={`${name}.mean`} label="Mean of one" of={{ ...statistics, value: mean }} unit="gr" decimals={2} />
        {sd === undefined ? null : (
          <Figure
            name={`${name}.sd`}
            label="Standard deviation"
            of={{ ...statistics, value: sd }}
            unit="gr"
            decimals={2}
          />
        )}
        <Figure
          name={`${name}.spread`}
          label="Heaviest less lightest"
          of={{ ...statistics, value: statistics.value.spread }}
          unit="gr"
          decimals={1}
        />
        {keeps === undefined || !keeps.ok ? null : (
          <Figure
            name={`${name}.cpk`}
            label="Keeps the catalogue’s tolerance, Cpk"
            of={{ ...keeps, value: { min: keeps.value.cpkLow, max: keeps.value.cpkHigh } }}
            unit="1"
            decimals={2}
          />
        )}
      </FigureList>
      <DotPlot
        name={`${name}.weighed`}
        label="Weight of one"
        sentence={againstCatalogue(mean, nominal, tolerance, count)}
        dots={dots}
        unit="gr"
        decimals={2}
        wash={{ low: lower, middle: nominal, high: upper }}
      />
      {dots.length < 2 ? null : (
        <ControlChart
          name={`${name}.inTime`}
          label="Weight of one"
          sentence={steadyWords(control, dots.length)}
          dots={dots}
          limits={control}
          unit="gr"
          decimals={2}
        />
      )}
    </>
  )
}
