/** On a phone one strip stays in sight: weight, speed, C2C and the day it can ship. */
import type { Implications } from '../../domain/call/implications'
import { valueIn } from '../../domain/call/follows'
import { RangeValue, Value } from '../figures/value'
import { showDay } from '../words/dates'
import look from './call.module.css'

export function PinnedStrip({ follows }: { follows: Implications }) {
  const weight = valueIn(follows.weight)
  const speed = valueIn(follows.flight.speed)
  const shortest = valueIn(follows.shortest)
  const ship = valueIn(follows.ship)
  return (
    <section className={look.strip} aria-label="What follows so far, in short">
      <dl className={look.stripList}>
        <div>
          <dt>Weight</dt>
          <dd>
            {weight === undefined ? (
              'open'
            ) : (
              <RangeValue name="strip.weight" low={weight.low} high={weight.high} unit="gr" decimals={0} />
            )}
          </dd>
        </div>
        <div>
          <dt>Speed</dt>
          <dd>
            {speed === undefined ? (
              'open'
            ) : (
              <Value name="strip.speed" of={speed.speed.value} unit="ft/s" decimals={0} />
            )}
          </dd>
        </div>
        <div>
          <dt>C2C from</dt>
          <dd>
            {shortest === undefined ? 'open' : <Value name="strip.c2c" of={shortest.c2c} unit="in" decimals={1} />}
          </dd>
        </div>
        <div>
          <dt>Ships</dt>
          <dd data-label="">{ship === undefined ? 'open' : showDay(ship.readyOn)}</dd>
        </div>
      </dl>
    </section>
  )
}
