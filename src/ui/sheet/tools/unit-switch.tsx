/** Trade or metric for the whole app, at hand where numbers are weighed up; the same rule as in Shop. */
import { changeRules } from '../../../state/shop-actions'
import { useApp, useAppStore } from '../../app/use-app'
import { Button } from '../../controls/button'

export function UnitSwitch() {
  const store = useAppStore()
  const rules = useApp((s) => s.shelf.rules)
  const other = rules.units === 'trade' ? 'metric' : 'trade'
  return (
    <Button kind="text" onClick={() => void changeRules(store.getState(), { ...rules, units: other })}>
      {other === 'metric' ? 'Metric units' : 'Trade units'}
    </Button>
  )
}
