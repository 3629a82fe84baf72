/** A short list of names that a shop keeps: jigs, builders. */
import { useState } from 'react'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import look from './shop.module.css'

interface NamesListProps {
  /** *a jig* */
  one: string
  names: readonly string[]
  most: number
  onNames: (names: readonly string[]) => void
}

export function NamesList({ one, names, most, onNames }: NamesListProps) {
  const [name, setName] = useState('')
  const [said, setSaid] = useState('')
  function add() {
    const wanted = name.trim()
    if (wanted === '') return setSaid(`Give ${one} its name first.`)
    if (names.includes(wanted)) return setSaid('That name is there already.')
    if (names.length >= most) return setSaid('The list is full; take one off first.')
    setSaid('')
    setName('')
    return onNames([...names, wanted])
  }
  return (
    <>
      <ul className={look.rows}>
        {names.map((each) => (
          <li key={each} className={look.row}>
            <Label>{each}</Label>
            <Button
              kind="text"
              onClick={() =>
                names.length === 1 ? setSaid('One has to stay.') : onNames(names.filter((other) => other !== each))
              }
            >
              Take off
              <span className="unseen" data-label="">
                {' '}
                {each}
              </span>
            </Button>
          </li>
        ))}
      </ul>
      <TextField label={`Add ${one}`} name={one} value={name} onText={setName} onCommit={setName} />
      <p className={look.actions}>
        <Button onClick={add}>Add</Button>
        <Status>{said}</Status>
      </p>
    </>
  )
}
