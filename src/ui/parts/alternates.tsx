/** The parts that may stand in for this one. A rebuild takes them, in this order, where this one is no longer made. */
import { useState } from 'react'
import { Link } from 'wouter'
import type { Id } from '../../domain/records/scalars'
import type { Part } from '../../domain/stock/part'
import type { Standing } from '../../domain/stock/shelf'
import { partsOfKind } from '../../domain/stock/shelf'
import { changePart } from '../../state/shop-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { FieldRow } from '../controls/field-row'
import input from '../controls/input.module.css'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import look from './parts.module.css'

const MOST = 20
const OFFERED = 50 // names; more are found by typing

export function Alternates({ part }: { part: Standing<Part> }) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const [chosen, setChosen] = useState('')
  const [said, setSaid] = useState('')
  const { alternates } = part.body
  const others = partsOfKind(shelf, part.body.kind).filter(({ id }) => id !== part.id && !alternates.includes(id))
  const put = (ids: readonly Id[]) =>
    void changePart(store.getState(), part, { ...part.body, alternates: [...ids] }, 'what may stand in for it')
  function add() {
    const other = others.find(({ body }) => body.name === chosen.trim())
    if (other === undefined) return setSaid('Choose a part of the same kind from the list.')
    if (alternates.length >= MOST) return setSaid('The list is full; take one off first.')
    setSaid('')
    setChosen('')
    return put([...alternates, other.id])
  }
  return (
    <Panel title="What may stand in for it" quiet>
      <p>Where this part is no longer made, a rebuild takes the first of these that is; without any, the nearest.</p>
      <ol className={look.builds}>
        {alternates.map((id) => (
          <li key={id}>
            <Link to={`/parts/${part.body.kind.replace(' ', '-')}/${id}`}>
              <Label>{shelf.parts.get(id)?.body.name ?? 'a part that is not in this book'}</Label>
            </Link>{' '}
            <Button kind="text" onClick={() => put(alternates.filter((each) => each !== id))}>
              Take off
              <span className="unseen" data-label="">
                {' '}
                {shelf.parts.get(id)?.body.name}
              </span>
            </Button>
          </li>
        ))}
      </ol>
      <FieldRow label="Another part of this kind" id="alternate">
        <span className={input.box}>
          <input
            id="alternate"
            className={input.input}
            name="alternate"
            list="alternates"
            autoComplete="off"
            value={chosen}
            onChange={(event) => setChosen(event.target.value)}
          />
        </span>
        <datalist id="alternates">
          {others
            .filter(({ body }) => body.name.toLowerCase().includes(chosen.trim().toLowerCase()))
            .slice(0, OFFERED)
            .map(({ id, body }) => (
              <option key={id} value={body.name}>
                {body.name}
              </option>
            ))}
        </datalist>
      </FieldRow>
      <p className={look.actions}>
        <Button onClick={add}>Add it</Button>
        <Status>{said}</Status>
      </p>
    </Panel>
  )
}
