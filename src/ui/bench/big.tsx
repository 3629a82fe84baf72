/** The figure that matters most at a step, huge: at the grinder what to take off, elsewhere what is expected or heads to. */
import { lazy, Suspense, useEffect } from 'react'
import type { BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import type { DataPoint } from '../../domain/bench/data-points'
import { DATA_POINTS } from '../../domain/bench/data-points'
import { ownSheet } from '../../domain/bench/own-sheet'
import type { Step } from '../../domain/bench/route'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import { grains, inches } from '../../core/quantity'
import type { Sheet } from '../../domain/sheet/sheet'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { Value } from '../figures/value'
import { pointInLine } from '../words/bench-words'
import look from './bench.module.css'
import { SaidUnit } from './said-unit'
import type { BenchWork } from './use-bench'

const loadTakeOff = () => import('./take-off')
const TakeOff = lazy(loadTakeOff)
const loadGlueOn = () => import('./glue-on')
const GlueOn = lazy(loadGlueOn)

interface BigProps {
  step: Step
  arrow: BenchArrow | null
  point: DataPoint | null
  own: ArrowForecast | undefined
  work: BenchWork
  sheet: Sheet
}

export function Big({ step, arrow, point, own, work, sheet }: BigProps) {
  // What the grinder and the bond will need is there before the work comes to it.
  useEffect(() => void Promise.all([loadTakeOff(), loadGlueOn()]), [])
  if (arrow === null || own === undefined) return <Counted sheet={sheet} />
  if (step.key === 'trim' || step.key === 'edge')
    return (
      <Suspense fallback={<div className={look.big} />}>
        <TakeOff arrow={arrow} own={own} work={work} sheet={sheet} />
      </Suspense>
    )
  if (step.key === 'bond' && step.points.includes('bondWeight'))
    return (
      <Suspense fallback={<div className={look.big} />}>
        <GlueOn own={own} work={work} sheet={sheet} />
      </Suspense>
    )
  const read = point === null ? undefined : accepted(arrow, point)
  const cutTo =
    step.key === 'cut' && point === 'c2c' && read === undefined ? ownSheet(arrow, sheet).plan.c2cIn : undefined
  if (cutTo !== undefined) return <CutTo no={arrow.no} c2cIn={cutTo} />
  const expected = point === null ? undefined : work.expected(point, arrow)
  const { unit, decimals } = point === null ? ({ unit: 'gr', decimals: 1 } as const) : DATA_POINTS[point]
  if (point !== null && (read !== undefined || expected === undefined) && (unit !== 'gr' || read !== undefined)) {
    return (
      <div className={look.big}>
        <p>
          <Label>
            no. {arrow.no}, {pointInLine(point)}
          </Label>
        </p>
        <p className={look.live}>
          {read === undefined ? (
            <span className={look.dash}>–</span>
          ) : (
            <Read name={`bench.${arrow.no}.${point}`} value={read.reading.value} unit={unit} decimals={decimals} bare />
          )}
        </p>
        <p>{read === undefined ? 'to be read' : 'as read'}</p>
      </div>
    )
  }
  return (
    <div className={look.big}>
      <p>
        <Label>no. {arrow.no}</Label>, {expected === undefined ? 'heads to' : 'expected about'}
      </p>
      <p className={look.live}>
        {expected === undefined ? (
          own.forecast.ok ? (
            <Value name={`bench.${arrow.no}.headsTo`} of={own.forecast.value.total.value} unit="gr" decimals={1} bare />
          ) : (
            '–'
          )
        ) : (
          <Value name={`bench.${arrow.no}.expected`} of={grains(expected.value)} unit="gr" decimals={1} bare />
        )}
      </p>
      <p>
        <SaidUnit unit="gr" />
      </p>
    </div>
  )
}

/** At the saw, before the shaft is read: the one length nobody can take back. */
function CutTo({ no, c2cIn }: { no: number; c2cIn: number }) {
  return (
    <div className={look.big}>
      <p>
        <Label>no. {no}</Label>, cut to
      </p>
      <p className={look.live}>
        <Value name={`bench.${no}.cutTo`} of={inches(c2cIn)} unit="in" decimals={2} bare />
      </p>
      <p>
        <SaidUnit unit="in" />, carbon to carbon
      </p>
    </div>
  )
}

const Counted = ({ sheet }: { sheet: Sheet }) => (
  <div className={look.big}>
    <p>the whole set</p>
    <p className={look.live}>
      <Label>{sheet.plan.quantity + sheet.plan.spares}</Label>
    </p>
    <p>arrows</p>
  </div>
)
