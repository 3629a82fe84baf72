/** What one pass at the grinder takes off: the shop's figure, beside what its own passes really took. */
import { grains } from '../../core/quantity'
import { setStatistics } from '../../core/statistics/set-statistics'
import type { Rules } from '../../domain/shop/rules'
import { RULES_SUBJECT } from '../../domain/shop/rules-subject'
import { passesLearned } from '../../domain/stock/passes-learned'
import { useApp } from '../app/use-app'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { counted } from '../words/format'

interface PassesPanelProps {
  rules: Rules
  onRules: (change: Partial<Rules>) => void
}

const KEY = { light: 'lightGr', usual: 'usualGr', heavy: 'heavyGr' } as const
const LABEL = { light: 'A light pass', usual: 'A usual pass', heavy: 'A heavy pass' } as const
const ASKED = { unit: 'gr', min: 0.05, max: 20, decimals: 1 } as const

export function PassesPanel({ rules, onRules }: PassesPanelProps) {
  const view = useApp((s) => s.shelf.lotViews.get(RULES_SUBJECT))
  const learned = passesLearned(view?.weighed ?? [], rules)
  return (
    <Panel title="Passes at the grinder" quiet>
      {learned.map(({ pass, saidGr }) => (
        <QuantityField
          key={pass}
          label={LABEL[pass]}
          hint="off a steel post; trim advice at the bench"
          asked={ASKED}
          value={saidGr}
          onCommit={({ value }) => onRules({ passes: { ...rules.passes, [KEY[pass]]: value } })}
        />
      ))}
      <FigureList columns={2}>
        {learned.map(({ pass, removedGr }) => {
          const statistics = setStatistics(removedGr.map(grains), 'gr')
          if (!statistics.ok) return null
          return (
            <Figure
              key={pass}
              name={`shop.passes.${pass}`}
              label={`${LABEL[pass]}, as weighed here`}
              of={{ ...statistics, value: statistics.value.mean }}
              unit="gr"
              decimals={2}
              note={<Label>{counted(removedGr.length, 'pass', 'passes')}</Label>}
            />
          )
        })}
      </FigureList>
    </Panel>
  )
}
