/** The coach at the bond: how much glue lands this arrow, and what to wipe or add while it is open. */
import { magnitude } from '../../core/quantity'
import { accepted } from '../../domain/bench/bench'
import { glueAdvice } from '../../domain/bench/glue-advice'
import type { ArrowForecast } from '../../domain/bench/set-forecast'
import type { Sheet } from '../../domain/sheet/sheet'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { Value } from '../figures/value'
import { glueHead, glueWords } from '../words/glue-words'
import look from './bench.module.css'
import Found from './found'
import { SaidUnit } from './said-unit'
import type { BenchWork } from './use-bench'

export default function GlueOn({ own, work, sheet }: { own: ArrowForecast; work: BenchWork; sheet: Sheet }) {
  const { arrow } = own
  const glue = glueAdvice(own, work.worked, sheet)
  const wet = accepted(arrow, 'bondWeight')?.reading
  const at = `bench.${arrow.no}`
  if (glue === undefined)
    return (
      <div className={look.big}>
        <p>
          <Label>no. {arrow.no}</Label>, heads to
        </p>
        <p className={look.live}>
          {own.forecast.ok ? (
            <Value name={`${at}.headsTo`} of={own.forecast.value.total.value} unit="gr" decimals={1} bare />
          ) : (
            '–'
          )}
        </p>
        <p>
          <SaidUnit unit="gr" />
        </p>
      </div>
    )
  const { advice, on, change, weighs } = glue
  if (!advice.ok)
    return (
      <div className={look.big}>
        <Found findings={advice.findings} />
      </div>
    )
  const { next, over } = advice.value
  return (
    <div className={look.big}>
      <p>
        <Label>no. {arrow.no}</Label>, {glueHead(advice.value)}
      </p>
      <p className={look.live}>
        {next === 'done' && wet !== undefined ? (
          <Read name={`${at}.bondWeight`} value={wet.value} unit="gr" decimals={1} bare />
        ) : next === 'question' ? (
          <Value name={`${at}.glueOff`} of={magnitude(over)} unit="gr" decimals={1} bare />
        ) : (
          <Value name={`${at}.glueChange`} of={change} unit="gr" decimals={1} bare />
        )}
      </p>
      <p>
        <SaidUnit unit="gr" />
      </p>
      <dl className={look.trio}>
        <div>
          <dt>wet, on the scale</dt>
          <dd>
            {wet === undefined ? '–' : <Read name={`${at}.scale`} value={wet.value} unit="gr" decimals={1} bare />}
          </dd>
        </div>
        <div>
          <dt>should show</dt>
          <dd>
            <Value name={`${at}.glueWeighs`} of={weighs} unit="gr" decimals={1} bare />
          </dd>
        </div>
        <div className={look.minor}>
          <dt>glue on it</dt>
          <dd>{on === undefined ? '–' : <Value name={`${at}.glueOn`} of={on} unit="gr" decimals={1} bare />}</dd>
        </div>
      </dl>
      <p className={look.advice} data-label="">
        {glueWords(advice.value)}
      </p>
    </div>
  )
}
