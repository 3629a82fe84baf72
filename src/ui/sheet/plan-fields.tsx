/** What the arrow is to be: its number, its cut, the set, the fletch. */
import { memo } from 'react'
import { quantity } from '../../core/quantity'
import type { EventBody } from '../../domain/job/events'
import type { Job } from '../../domain/job/job'
import type { Plan } from '../../domain/sheet/plan'
import { setPlan } from '../../state/sheet-actions'
import { useApp, useAppStore } from '../app/use-app'
import { ChoiceField } from '../controls/choice-field'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Was } from '../figures/was'
import type { OpenSheet } from './use-sheet'

const ASKED = {
  targetGr: { unit: 'gr', min: 200, max: 2000, decimals: 1 },
  c2cIn: { unit: 'in', min: 15, max: 36, decimals: 2 },
  quantity: { unit: '1', min: 1, max: 12, decimals: 0, whole: true },
  spares: { unit: '1', min: 0, max: 6, decimals: 0, whole: true },
  vaneTailIn: { unit: 'in', min: 0.3, max: 4, decimals: 2 },
  fletchDegrees: { unit: '°', min: 0, max: 15, decimals: 1 },
  cockVaneDeg: { unit: '°', min: 0, max: 360, decimals: 0 },
} as const
type NumberField = keyof typeof ASKED

const LABEL: Record<NumberField, string> = {
  targetGr: 'Finished weight',
  c2cIn: 'C2C',
  quantity: 'Arrows in the set',
  spares: 'Spares built with it',
  vaneTailIn: 'Vane tail to throat',
  fletchDegrees: 'Offset of the fletch',
  cockVaneDeg: 'Cock vane, from up',
}

interface PlanFieldsProps {
  job: Job
  /** The plan as it was last frozen. */
  frozen: Plan | undefined
  typing: OpenSheet['typing']
}

/** Drawn again only when something is kept: what is typed is the field's own until then. */
export const PlanFields = memo(AllFields)

function AllFields({ job, frozen, typing }: PlanFieldsProps) {
  const store = useAppStore()
  const jigs = useApp((s) => s.shelf.rules.jigs)
  const set = (change: EventBody<'planSet'>) => void setPlan(store.getState(), job.id, change)
  const field = (name: NumberField) => (
    <QuantityField
      key={name}
      label={LABEL[name]}
      name={name}
      asked={ASKED[name]}
      value={job.plan[name]}
      hint={wasHint(name, frozen?.[name], job.plan[name])}
      onText={(entry) => typing(name, entry.kind === 'number' ? entry.value : undefined)}
      onCommit={({ value }) => {
        typing(name, undefined)
        set({ field: name, value } as EventBody<'planSet'>)
      }}
      onClear={() => set({ field: name, value: null } as EventBody<'planSet'>)}
    />
  )
  return (
    <Panel title="The plan" quiet>
      {field('targetGr')}
      {field('c2cIn')}
      {field('quantity')}
      {field('spares')}
      <ChoiceField
        label="Side of the fletch"
        name="fletchSide"
        choices={(['right', 'left', 'straight'] as const).map((value) => ({ value, label: value }))}
        value={job.plan.fletchSide}
        hint={wasWords(frozen?.fletchSide, job.plan.fletchSide)}
        onChoose={(value) => set({ field: 'fletchSide', value })}
      />
      {field('fletchDegrees')}
      {jigs.length === 0 ? null : (
        <ChoiceField
          label="Jig"
          name="jig"
          choices={jigs.map((value) => ({ value, label: value }))}
          value={job.plan.jig === '' ? undefined : job.plan.jig}
          hint={wasWords(frozen?.jig, job.plan.jig)}
          onChoose={(value) => set({ field: 'jig', value })}
        />
      )}
      {field('vaneTailIn')}
      <ChoiceField
        label="Index the head to"
        name="indexPlane"
        choices={(['none', 'spine mark', 'cock vane'] as const).map((value) => ({ value, label: value }))}
        value={job.plan.indexPlane}
        hint={wasWords(frozen?.indexPlane, job.plan.indexPlane)}
        onChoose={(value) => set({ field: 'indexPlane', value })}
      />
      {field('cockVaneDeg')}
      <ChoiceField
        label="FOC counts to the"
        name="frontPoint"
        choices={(['shaft front', 'outsert shoulder'] as const).map((value) => ({ value, label: value }))}
        value={job.plan.frontPoint}
        hint={wasWords(frozen?.frontPoint, job.plan.frontPoint)}
        onChoose={(value) => set({ field: 'frontPoint', value })}
      />
    </Panel>
  )
}

/** Marked where it is otherwise than it was frozen. */
const wasHint = (name: NumberField, was: number | undefined, now: number | undefined) =>
  was === undefined || was === now ? undefined : (
    <Was
      name={`sheet.plan.${name}`}
      of={quantity(was, ASKED[name].unit)}
      now={now === undefined ? undefined : quantity(now, ASKED[name].unit)}
      unit={ASKED[name].unit}
      decimals={ASKED[name].decimals}
    />
  )

const wasWords = (was: string | undefined, now: string) =>
  was === undefined || was === now ? undefined : `changed: was ${was === '' ? 'not chosen' : was} as frozen`
