/** The set at a glance: each arrow's weight, bold when it was read, and where it stands. */
import type { Bench, BenchArrow } from '../../domain/bench/bench'
import { building } from '../../domain/bench/bench'
import { Label } from '../figures/label'
import { Value } from '../figures/value'
import { landingStateWords } from '../words/bench-words'
import look from './bench.module.css'
import type { BenchWork } from './use-bench'

interface SetStripProps {
  bench: Bench
  work: BenchWork
  at: BenchArrow | undefined
  onGo: (arrow: BenchArrow) => void
}

export const SetStrip = ({ bench, work, at, onGo }: SetStripProps) => (
  <ol className={look.strip} aria-label="The set">
    {building(bench).map((arrow) => {
      const own = work.landing.arrows.get(arrow.id)
      const open = bench.deviations.some((each) => each.arrow === arrow.id && each.decision === null)
      const off = own?.state === 'light' || own?.state === 'heavy' || open
      return (
        <li key={arrow.id} className={[look.tile, arrow.id === at?.id ? look.at : '', off ? look.amber : ''].join(' ')}>
          <button type="button" aria-current={arrow.id === at?.id ? 'true' : undefined} onClick={() => onGo(arrow)}>
            <Label>no. {arrow.no}</Label>
            <span className={own?.read ? look.readWeight : look.weight}>
              {own?.forecast.ok ? (
                <Value
                  name={`bench.strip.${arrow.no}`}
                  of={own.forecast.value.total.value}
                  unit="gr"
                  decimals={1}
                  bare
                />
              ) : (
                '–'
              )}
            </span>
            <small>
              <Label>
                {own === undefined ? '' : landingStateWords(own)}
                {open ? ' · decide' : ''}
              </Label>
            </small>
          </button>
        </li>
      )
    })}
  </ol>
)
