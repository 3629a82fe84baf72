/** Where the arrow lands: the forecast before trim around its target, what comes off, and the chance that it can. */
import { Landing } from '../figures/landing/landing'
import { Figure, FigureList } from '../figures/figure'
import { partOf } from '../figures/part-of'
import { Panel } from '../controls/panel'
import { Value } from '../figures/value'
import { difference, millimetres } from '../../core/quantity'
import type { SheetFigures } from '../../domain/sheet/sheet-figures'

interface LandingPanelProps {
  worked: SheetFigures
  /** As it was last frozen. */
  was: SheetFigures | undefined
  quantity: number
}

export function LandingPanel({ worked, was, quantity }: LandingPanelProps) {
  const { forecast, landing, trim, chance, chanceAll, expectedHead } = worked
  if (landing === undefined || !forecast.ok) return null
  const { target, tolerance } = landing
  // An arrow that is light has nothing taken off it, so there is nothing to say of how.
  const isLight = trim?.ok === true && trim.value.value < 0
  const trimPlan = worked.trimPlan?.ok && isLight ? { ...worked.trimPlan, findings: [] } : worked.trimPlan
  const all = chanceAll?.ok
    ? { ...chanceAll, value: chanceAll.value.joint }
    : chanceAll?.ok === false
      ? chanceAll
      : undefined
  return (
    <Panel
      quiet
      title={
        <>
          Landing on <Value name="sheet.target" of={target} unit="gr" decimals={1} />,{' '}
          <Value name="sheet.targetLessHead" of={difference(target, expectedHead)} unit="gr" decimals={1} bare /> less
          head
        </>
      }
    >
      <Landing
        name="sheet.landing"
        rows={[{ key: 'planned', label: 'planned', weight: { kind: 'forecast', value: forecast.value.total } }]}
        target={target}
        tolerance={tolerance}
      />
      <FigureList columns={2}>
        <Figure
          name="sheet.forecast"
          label="Before trim"
          of={{ ...forecast, value: forecast.value.total }}
          was={was && partOf(was.forecast, ({ total }) => total)}
          unit="gr"
          decimals={1}
        />
        <Figure
          name="sheet.trim"
          label="To trim"
          of={trim}
          was={was?.trim}
          unit="gr"
          decimals={1}
          missing="needs a target"
        />
        <Figure name="sheet.chance" label="Chance to reach" of={chance} was={was?.chance} unit="%" decimals={0} />
        <Figure
          name="sheet.chanceAll"
          label={quantity > 1 ? 'The whole set' : 'This one'}
          of={all}
          was={was?.chanceAll && partOf(was.chanceAll, ({ joint }) => joint)}
          unit="%"
          decimals={0}
        />
        <Figure
          name="sheet.trimLength"
          label="Post to take off"
          of={trimPlan?.ok ? { ...trimPlan, value: trimPlan.value.length } : trimPlan}
          was={was?.trimPlan && partOf(was.trimPlan, ({ length }) => length)}
          unit="mm"
          decimals={2}
          missing="no post that may be trimmed"
        />
        <Figure
          name="sheet.bondLeft"
          label="Bond left"
          of={
            trimPlan?.ok ? { ...trimPlan, value: trimPlan.value.bondLeft ?? millimetres(0), findings: [] } : undefined
          }
          unit="mm"
          decimals={1}
        />
      </FigureList>
    </Panel>
  )
}
