/** Price, day and the word that makes both a promise. Agreeing takes everything over into the sheet. */
import { useState } from 'react'
import { Link, useLocation } from 'wouter'
import { valueIn } from '../../domain/call/follows'
import { priceOf } from '../../domain/call/price-lines'
import { acceptOpenCall } from '../../state/call-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { showLongDay } from '../words/dates'
import { showMoney } from '../words/call/price-words'
import { NOTHING_CUT } from '../words/call/read-back-words'
import look from './call.module.css'
import { PriceTable } from './price-table'
import type { Call } from './use-call'

export function Promised({ call }: { call: Call }) {
  const store = useAppStore()
  const rules = useApp((s) => s.shelf.rules)
  const [, go] = useLocation()
  const [failed, setFailed] = useState(false)
  const { job, follows, answers, today } = call
  const price = priceOf(answers, rules)
  const ship = valueIn(follows.ship)
  const { accepted } = job

  async function agree() {
    const saved = await acceptOpenCall(store, today)
    setFailed(!saved)
    if (saved) go(`/job/${job.id}/sheet`)
  }

  return (
    <Panel title="Price and day" quiet>
      {price.totalCents === 0 ? (
        <p>
          The shop has no prices yet. <Link to="/shop">Set them in Shop</Link>; the promise is kept as it stands when
          you agree.
        </p>
      ) : null}
      <PriceTable price={price} />
      <p className={look.day} data-label="">
        {ship === undefined
          ? ''
          : `Leaves by ${showLongDay(ship.readyOn)}, with you by ${showLongDay(ship.arrivesOn)}.`}
      </p>
      {accepted === null ? (
        <p>{NOTHING_CUT}</p>
      ) : (
        <p data-label="">
          Agreed before: {showMoney(accepted.priceCents, accepted.currency)}
          {accepted.shipOn === null ? '' : `, leaves by ${showLongDay(accepted.shipOn)}`}.
        </p>
      )}
      <div className={look.end}>
        <Button kind="primary" onClick={() => void agree()}>
          Agreed, plan the arrow
        </Button>
      </div>
      <Status>{failed ? 'Not saved. Nothing was agreed; try again.' : ''}</Status>
    </Panel>
  )
}
