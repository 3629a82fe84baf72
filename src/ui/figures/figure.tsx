/**
 * One answer of the core as a line of a sheet: its name, which opens the working, its value, its band, a note, and what
 * the core has to say about it. An answer that is not there says what is missing.
 */
import type { ReactNode } from 'react'
import type { Bounds, Estimate, Outcome } from '../../core/outcome'
import type { Dimension, Quantity, UnitOf } from '../../core/quantity'
import { FindingList } from '../controls/finding-list'
import { Band } from './band'
import look from './figure.module.css'
import { RangeValue, Value } from './value'
import { Was } from './was'
import { ShowWorking } from './working/show-working'

/** A number, a number with its band, or two ends. */
export type FigureValue<D extends Dimension> = Quantity<D> | Estimate<Quantity<D>> | Bounds<Quantity<D>>

export interface FigureProps<D extends Dimension> {
  /** Where it belongs and what it is: `sheet.speed`. */
  name: string
  label: string
  /** Undefined while nothing that it needs is known. */
  of: Outcome<FigureValue<D>> | undefined
  unit: UnitOf<D>
  decimals: number
  note?: ReactNode
  /** What it was when the sheet was last frozen: marked where it reads otherwise now. */
  was?: Outcome<FigureValue<D>> | undefined
  /** Said when there is no answer to show: *needs the draw weight*. */
  missing?: ReactNode
}

export function Figure<D extends Dimension>({ name, label, of, note, was, missing, ...shown }: FigureProps<D>) {
  const known = of?.ok ? of : undefined
  const band = known !== undefined && isEstimate(known.value) ? known.value : undefined
  const says = of !== undefined && of.findings.length > 0
  return (
    <div className={says ? look.saying : look.figure}>
      <dt className={look.name}>
        {known === undefined ? (
          <span data-label="">{label}</span>
        ) : (
          <ShowWorking name={name} label={label} derivation={known.derivation} />
        )}
      </dt>
      <dd className={known === undefined ? look.open : look.value}>
        {known === undefined ? 'open' : <FigureNumber name={name} of={known.value} {...shown} />}
      </dd>
      {band === undefined && note === undefined && (known !== undefined || missing === undefined) ? null : (
        <dd className={look.note}>
          {band === undefined ? null : <Band name={name} of={band} {...shown} />}
          {band === undefined || note === undefined ? null : ', '}
          {known === undefined && missing !== undefined ? <span data-label="">{missing}</span> : note}
        </dd>
      )}
      {was?.ok !== true ? null : (
        <dd className={look.note}>
          <Was name={name} of={middleOf(was.value)} now={known && middleOf(known.value)} {...shown} />
        </dd>
      )}
      {!says ? null : (
        <dd className={look.findings}>
          <FindingList findings={of.findings} />
        </dd>
      )}
    </div>
  )
}

/** The figures of a sheet, one under another or in two columns where there is room. */
export const FigureList = ({ children, columns = 1 }: { children: ReactNode; columns?: 1 | 2 }) => (
  <dl className={columns === 2 ? look.twoColumns : look.list}>{children}</dl>
)

/** A range is told by its lower end. */
const middleOf = <D extends Dimension>(value: FigureValue<D>): Quantity<D> =>
  typeof value === 'number' ? value : 'sd' in value ? value.value : value.min

const isEstimate = <D extends Dimension>(value: FigureValue<D>): value is Estimate<Quantity<D>> =>
  typeof value !== 'number' && 'sd' in value

interface NumberProps<D extends Dimension> {
  name: string
  of: FigureValue<D>
  unit: UnitOf<D>
  decimals: number
}

function FigureNumber<D extends Dimension>({ of, ...rest }: NumberProps<D>) {
  if (typeof of === 'number') return <Value of={of} {...rest} />
  return 'sd' in of ? <Value of={of.value} {...rest} /> : <RangeValue low={of.min} high={of.max} {...rest} />
}
