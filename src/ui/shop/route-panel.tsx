/** The bench route: its order, what is switched off, and the shop's own steps. Jobs under way keep the route they have. */
import { useState } from 'react'
import { DEFAULT_ROUTE } from '../../domain/bench/route'
import type { Route } from '../../domain/shop/route-changes'
import { frontFirst, moved, switchedOff, withOwn, without, withUsual } from '../../domain/shop/route-changes'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { stepWords } from '../words/bench-words'
import look from './shop.module.css'

interface RoutePanelProps {
  route: Route
  /** What *Back to the usual route* goes back to. */
  usual?: Route
  /** What the changes are for. */
  about?: string
  onRoute: (route: Route) => void
}

export function RoutePanel({ route, usual = DEFAULT_ROUTE, about = FROM_NOW_ON, onRoute }: RoutePanelProps) {
  const off = switchedOff(route)
  return (
    <Panel title="Bench route" quiet>
      <p>{about}</p>
      <ol className={look.rows}>
        {route.map(({ key }, at) => {
          const { title } = stepWords(key)
          return (
            <li key={key} className={look.row}>
              <Label>
                {at + 1}. {title}
              </Label>
              <span className={look.actions}>
                <Button kind="text" aria-label={`${title}: earlier`} onClick={() => onRoute(moved(route, key, -1))}>
                  Earlier
                </Button>
                <Button kind="text" aria-label={`${title}: later`} onClick={() => onRoute(moved(route, key, 1))}>
                  Later
                </Button>
                <Button kind="text" aria-label={`${title}: off`} onClick={() => onRoute(without(route, key))}>
                  Off
                </Button>
              </span>
            </li>
          )
        })}
      </ol>
      {off.length === 0 ? null : (
        <>
          <h3 className={look.sub}>Switched off</h3>
          <ul className={look.rows}>
            {off.map(({ key }) => (
              <li key={key} className={look.row}>
                <Label>{stepWords(key).title}</Label>
                <Button
                  kind="text"
                  aria-label={`${stepWords(key).title}: on`}
                  onClick={() => onRoute(withUsual(route, key))}
                >
                  On
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
      <p className={look.actions}>
        <Button onClick={() => onRoute(frontFirst(route))}>Bond the front before fletching</Button>
        <Button onClick={() => onRoute(usual)}>Back to the usual route</Button>
      </p>
      <OwnStep route={route} onRoute={onRoute} />
    </Panel>
  )
}

const FROM_NOW_ON = 'The steps of sheets frozen from now on. A set under way keeps the route it was started on.'

function OwnStep({ route, onRoute }: Pick<RoutePanelProps, 'route' | 'onRoute'>) {
  const [name, setName] = useState('')
  const [what, setWhat] = useState('')
  const [confirm, setConfirm] = useState<'arrow' | 'set'>('arrow')
  const [said, setSaid] = useState('')
  function add() {
    const next = withOwn(route, name, confirm, what)
    if (next === route) return setSaid('A step of your own needs a name that no other has.')
    setSaid('')
    setName('')
    setWhat('')
    return onRoute(next)
  }
  return (
    <>
      <h3 className={look.sub}>A step of your own</h3>
      <TextField label="Name of the step" name="own step" value={name} onText={setName} onCommit={setName} />
      <TextField label="What to do" name="own what" value={what} onText={setWhat} onCommit={setWhat} />
      <ChoiceField
        label="Confirmed"
        name="own confirm"
        choices={[
          { value: 'arrow', label: 'for each arrow' },
          { value: 'set', label: 'once for the set' },
        ]}
        value={confirm}
        onChoose={setConfirm}
      />
      <p className={look.actions}>
        <Button onClick={add}>Add the step</Button>
        <Status>{said}</Status>
      </p>
    </>
  )
}
