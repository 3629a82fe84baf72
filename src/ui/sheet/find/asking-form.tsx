/** What the search is asked: the wishes, which limits count, which kinds may be used, what stays as it is. */
import type { AskedNumbers, Asking, Limit } from '../../../domain/search/asking'
import { LIMITS, SEARCHED_KINDS } from '../../../domain/search/asking'
import type { Unit } from '../../../core/quantity'
import type { Sheet } from '../../../domain/sheet/sheet'
import type { PartKind } from '../../../domain/stock/part'
import { QuantityField } from '../../controls/quantity-field'
import { limitWord } from '../../words/find-words'
import { partKindWord } from '../../words/part-kind-words'
import look from './find.module.css'

interface AskingFormProps {
  sheet: Sheet
  asking: Asking
  /** Kinds of which something is on the shelf. */
  onShelf: readonly PartKind[]
  onAsk: (asking: Asking) => void
}

// What a field takes; the search itself says what is beyond sense.
const field = (label: string, unit: Unit, decimals: number, whole = false) => ({
  label,
  asked: { unit, decimals, min: -100, max: 10_000, ...(whole ? { whole } : {}) },
})
const FIELDS: Readonly<Record<keyof AskedNumbers, ReturnType<typeof field>>> = {
  targetGr: field('Weight wished', 'gr', 1),
  toleranceGr: field('Either side of it', 'gr', 1),
  overMinGr: field('Planned over it, from', 'gr', 0),
  overMaxGr: field('Planned over it, to', 'gr', 0),
  quantity: field('Arrows with spares', '1', 0, true),
  c2cMinIn: field('C2C from', 'in', 2),
  c2cMaxIn: field('C2C to', 'in', 2),
  c2cStepIn: field('C2C in steps of', 'in', 2),
  c2cAimIn: field('C2C nearest to', 'in', 2),
  focMin: field('FOC from', '%', 1),
  focMax: field('FOC to', '%', 1),
  focAim: field('FOC nearest to', '%', 1),
  reserveMin: field('Reserve from', '1', 2),
  reserveMax: field('Reserve to', '1', 2),
  leastChance: field('Chance at least', '%', 0),
  leastSpeedFps: field('Speed at least', 'ft/s', 0),
  most: field('Arrows to show', '1', 0, true),
}
const ALWAYS = [
  'targetGr',
  'toleranceGr',
  'overMinGr',
  'overMaxGr',
  'c2cMinIn',
  'c2cMaxIn',
  'c2cStepIn',
  'c2cAimIn',
  'leastSpeedFps',
  'quantity',
  'most',
] as const
const OF_LIMIT: Readonly<Record<Limit, readonly (keyof AskedNumbers)[]>> = {
  FOC: ['focMin', 'focMax', 'focAim'],
  reserve: ['reserveMin', 'reserveMax'],
  clearance: [],
  chance: ['leastChance'],
}
const OPTIONAL: ReadonlySet<keyof AskedNumbers> = new Set(['focAim', 'c2cAimIn', 'leastSpeedFps'])

const without = <T,>(list: readonly T[], item: T) => list.filter((each) => each !== item)
const toggled = <T,>(list: readonly T[], item: T) => (list.includes(item) ? without(list, item) : [...list, item])

export function AskingForm({ sheet, asking, onShelf, onAsk }: AskingFormProps) {
  const { numbers, on, kinds, held } = asking
  const set = (name: keyof AskedNumbers, value: number | undefined) => {
    const { [name]: _, ...rest } = numbers
    onAsk({ ...asking, numbers: value === undefined ? rest : { ...rest, [name]: value } })
  }
  const fields = (names: readonly (keyof AskedNumbers)[]) =>
    names.map((name) => (
      <QuantityField
        key={name}
        {...FIELDS[name]}
        name={name}
        {...(OPTIONAL.has(name) ? { hint: 'or left open' } : {})}
        value={numbers[name]}
        onText={(entry) => set(name, entry.kind === 'number' ? entry.value : undefined)}
        onCommit={({ value }) => set(name, value)}
        onClear={() => set(name, undefined)}
      />
    ))
  return (
    <div className={look.form}>
      <div className={look.fields}>{fields(ALWAYS)}</div>
      <div className={look.limits}>
        {LIMITS.map((limit) => (
          <fieldset key={limit}>
            <legend className="unseen">{limitWord(limit)}</legend>
            <Tick
              label={limitWord(limit)}
              isOn={on.includes(limit)}
              onToggle={() => onAsk({ ...asking, on: toggled(on, limit) })}
            />
            {on.includes(limit) ? <div className={look.fields}>{fields(OF_LIMIT[limit])}</div> : null}
          </fieldset>
        ))}
      </div>
      <fieldset className={look.ticks}>
        <legend>Kinds that may be used</legend>
        {SEARCHED_KINDS.filter((kind) => onShelf.includes(kind)).map((kind) => (
          <Tick
            key={kind}
            label={partKindWord(kind)}
            isOn={kinds.includes(kind)}
            onToggle={() => onAsk({ ...asking, kinds: toggled(kinds, kind) })}
          />
        ))}
      </fieldset>
      {sheet.plan.lines.length === 0 ? null : (
        <fieldset className={look.ticks}>
          <legend>Stays as it is on the sheet</legend>
          {sheet.plan.lines.map((line) => {
            const part = sheet.parts.find(({ id }) => id === line.part)?.part
            return part === undefined || part.kind === 'glue' ? null : (
              <Tick
                key={line.id}
                label={part.name}
                isOn={held.includes(line.id)}
                onToggle={() => onAsk({ ...asking, held: toggled(held, line.id) })}
              />
            )
          })}
        </fieldset>
      )}
    </div>
  )
}

const Tick = ({ label, isOn, onToggle }: { label: string; isOn: boolean; onToggle: () => void }) => (
  <label className={look.tick} data-label="">
    <input type="checkbox" checked={isOn} onChange={onToggle} />
    <span>{label}</span>
  </label>
)
