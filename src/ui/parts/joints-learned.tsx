/** What a glue really left in the joints of past arrows: this takes the place of the catalogue's figure on every sheet. */
import { grains } from '../../core/quantity'
import { controlLimits } from '../../core/statistics/control-limits'
import { setStatistics } from '../../core/statistics/set-statistics'
import type { Id } from '../../domain/records/scalars'
import type { LotView } from '../../domain/stock/lot-view'
import type { Weighing } from '../../domain/stock/weighing'
import { Panel } from '../controls/panel'
import { ControlChart } from '../figures/charts/control-chart'
import { Figure, FigureList } from '../figures/figure'
import { jointWords, steadyWords, weighingWords } from '../words/stock-words'

const JOINTS = ['vanes joint', 'post joint', 'collar joint'] as const

export function JointsLearned({ part, view }: { part: Id; view: LotView | undefined }) {
  return JOINTS.map((what) => {
    const weighed = (view?.weighed ?? []).filter((each) => each.what === what)
    return weighed.length === 0 ? null : (
      <Joint key={what} name={`glue.${part}.${what}`} what={what} weighed={weighed} />
    )
  })
}

function Joint({ name, what, weighed }: { name: string; what: (typeof JOINTS)[number]; weighed: readonly Weighing[] }) {
  const values = weighed.map(({ weightGr }) => grains(weightGr))
  const statistics = setStatistics(values, 'gr')
  const control = controlLimits(values, 'gr')
  if (!statistics.ok) return null
  const { mean, sd } = statistics.value
  return (
    <Panel title={jointWords(what)} quiet>
      <FigureList columns={2}>
        <Figure
          name={`${name}.mean`}
          label="Mean of one joint"
          of={{ ...statistics, value: mean }}
          unit="gr"
          decimals={2}
        />
        {sd === undefined ? null : (
          <Figure
            name={`${name}.sd`}
            label="Standard deviation"
            of={{ ...statistics, value: sd }}
            unit="gr"
            decimals={2}
          />
        )}
      </FigureList>
      <ControlChart
        name={name}
        label="Glue of one joint"
        sentence={steadyWords(control, values.length)}
        dots={weighed.map((each, i) => ({ key: String(i), label: weighingWords(each), value: values[i]! }))}
        limits={control}
        unit="gr"
        decimals={2}
      />
    </Panel>
  )
}
