/** The earliest day the order can leave, against the day of travel. */
import { inUnit } from '../../core/quantity'
import type { Follows } from '../../domain/call/follows'
import type { ShipDates } from '../../domain/call/ship-dates'
import { Label } from '../figures/label'
import { ShowWorking } from '../figures/working/show-working'
import { showDay } from '../words/dates'
import { toSpareWords } from '../words/call/follows-words'
import look from './call.module.css'

export function ShipLine({ ship }: { ship: Follows<ShipDates> }) {
  if (ship.kind === 'needs' || !ship.outcome.ok) return null
  const { value, derivation } = ship.outcome
  const { readyOn, arrivesOn, travelOn, toSpare } = value
  return (
    <div className={look.line}>
      <dt>
        <ShowWorking name="call.ship" label="Earliest to ship" derivation={derivation} />
      </dt>
      <dd className={look.lineValue} data-label="">
        {showDay(readyOn)}
      </dd>
      <dd className={look.lineNote}>
        <Label>
          {travelOn === null || toSpare === null
            ? `arrives ${showDay(arrivesOn)}`
            : toSpareWords(travelOn, Math.round(inUnit(toSpare, 'day')))}
        </Label>
      </dd>
    </div>
  )
}
