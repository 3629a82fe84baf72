/** Finds a known client by the beginning of a name, a phone number or a label's code; or makes a new one. */
import type { KeyboardEvent } from 'react'
import { useEffect, useEffectEvent, useId, useRef, useState } from 'react'
import type { FoundClient } from '../../state/find-clients'
import { findClients } from '../../state/find-clients'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { FieldRow } from '../controls/field-row'
import inputs from '../controls/input.module.css'
import { Status } from '../controls/status'
import { NAMELESS, foundClientWords, newClientWords } from '../words/call/client-words'
import { counted } from '../words/format'
import look from './call.module.css'

export type NamedHow = 'entered' | 'tapped' | 'left'

interface ClientSearchProps {
  onPick: (client: string) => void
  /** The text becomes the name of a new client. `left`: the builder went on to other questions with the name typed. */
  onNew: (name: string, how: NamedHow) => void
  /** Enter goes on to the question after this one. */
  hasNext: boolean
}

export function ClientSearch({ onPick, onNew, hasNext }: ClientSearchProps) {
  const store = useAppStore()
  const id = useId()
  const [text, setText] = useState('')
  const [found, setFound] = useState<readonly FoundClient[]>([])
  const [searched, setSearched] = useState('')
  const list = useRef<HTMLUListElement>(null)
  useEffect(() => {
    let gone = false
    void findClients(store, text).then((clients) => {
      if (gone) return
      setFound(clients)
      setSearched(text)
    })
    return () => {
      gone = true
    }
  }, [store, text])
  const name = text.trim()

  const isNamed = useRef(false)
  function beNew(how: NamedHow) {
    if (isNamed.current) return
    isNamed.current = true
    onNew(name, how)
  }
  const leave = useEffectEvent(() => {
    if (name === '') return
    void findClients(store, text).then((clients) => (clients.length === 0 ? beNew('left') : undefined))
  })
  // A name that was typed and not entered is not lost with the topic; which of several known clients it is, nobody guesses.
  useEffect(() => () => leave(), [])

  /** Nobody known by that: a new client, at once or as soon as the search has said so. Known ones are picked by hand. */
  function enter(event: KeyboardEvent) {
    const isKnown = searched === text && found.length > 0
    if (isKnown || !hasNext) event.stopPropagation()
    if (isKnown) list.current?.querySelector<HTMLElement>('[data-client]')?.focus()
    else if (searched === text) beNew('entered')
    else void findClients(store, text).then((clients) => (clients.length === 0 ? beNew('entered') : undefined))
  }

  return (
    <div data-question="clientSearch" className={look.question}>
      <FieldRow label="Who is calling" id={id} hint="name, phone or label code; three letters will do">
        <span className={inputs.box}>
          <input
            id={id}
            className={inputs.input}
            name="clientSearch"
            type="text"
            autoComplete="off"
            maxLength={200}
            value={text}
            aria-describedby={`${id}-hint`}
            onChange={(event) => {
              isNamed.current = false
              setText(event.target.value)
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter' && name !== '') enter(event)
            }}
          />
        </span>
      </FieldRow>
      <Status unseen>{name === '' ? '' : counted(found.length, 'known client')}</Status>
      {name === '' ? null : (
        <ul ref={list} className={look.found}>
          {/* First, so that nothing moves under a finger when the search answers. */}
          <li>
            <Button kind="text" data-label="" onClick={() => beNew('tapped')}>
              {newClientWords(name)}
            </Button>
          </li>
          {found.map((client) => (
            <li key={client.id}>
              <button
                type="button"
                className={look.foundClient}
                data-client={client.id}
                data-label=""
                onClick={() => {
                  isNamed.current = true
                  onPick(client.id)
                }}
              >
                <b>{client.name === '' ? NAMELESS : client.name}</b>
                <span>{foundClientWords(client)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
