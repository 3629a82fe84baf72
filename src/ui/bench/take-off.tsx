/** At the grinder: what is to come off one arrow, huge; the scale, what it should come down to, and the bond it leaves. */
import { lazy, Suspense } from 'react'
import { grains, greatest, inGrains } from '../../core/quantity'
import type { BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import { trimAdvice } from '../../domain/bench/trim-advice'
import type { Sheet } from '../../domain/sheet/sheet'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { Value } from '../figures/value'
import { adviceWords, LIGHT_WORDS } from '../words/trim-words'
import look from './bench.module.css'
import { SaidUnit } from './said-unit'
import type { BenchWork } from './use-bench'

const Found = lazy(() => import('./found'))

export default function TakeOff({
  arrow,
  own,
  work,
  sheet,
}: {
  arrow: BenchArrow
  own: ArrowForecast
  work: BenchWork
  sheet: Sheet
}) {
  const advice = trimAdvice(own, work.worked, sheet)
  const scale = (accepted(arrow, 'edgeWeight') ?? accepted(arrow, 'trimWeight') ?? accepted(arrow, 'dryWeight'))
    ?.reading
  const isLight = own.state === 'light'
  const { length } = advice
  return (
    <div className={look.big}>
      <p>
        <Label>no. {arrow.no}</Label>, {isLight ? 'light by' : 'take off'}
      </p>
      <p className={look.live}>
        <Value
          name={`bench.${arrow.no}.takeOff`}
          of={isLight ? grains(Math.abs(inGrains(own.over))) : greatest(grains(0), advice.remaining)}
          unit="gr"
          decimals={1}
          bare
        />
      </p>
      <p>
        <SaidUnit unit="gr" />
        {!isLight && length?.ok ? (
          <>
            , <Value name={`bench.${arrow.no}.postOff`} of={length.value.length} unit="mm" decimals={2} /> of post in
            all
          </>
        ) : null}
      </p>
      <dl className={look.trio}>
        <div>
          <dt>on the scale</dt>
          <dd>
            {scale === undefined ? (
              '–'
            ) : (
              <Read name={`bench.${arrow.no}.scale`} value={scale.value} unit="gr" decimals={1} bare />
            )}
          </dd>
        </div>
        <div>
          <dt>down to</dt>
          <dd>
            <Value name={`bench.${arrow.no}.downTo`} of={advice.downTo} unit="gr" decimals={1} bare />
          </dd>
        </div>
        <div className={look.minor}>
          <dt>bond, mm</dt>
          <dd>
            {length?.ok ? (
              <Value name={`bench.${arrow.no}.bondLeft`} of={length.value.bondLeft} unit="mm" decimals={0} bare />
            ) : (
              '–'
            )}
          </dd>
        </div>
      </dl>
      {isLight ? (
        <p className={look.advice}>{LIGHT_WORDS}</p>
      ) : advice.advice?.ok ? (
        <p className={look.advice} data-label="">
          {adviceWords(advice.advice.value, inGrains(advice.usual), inGrains(advice.chamfer))}
        </p>
      ) : null}
      {length?.ok === false ? (
        <Suspense>
          <Found findings={length.findings} />
        </Suspense>
      ) : null}
    </div>
  )
}
