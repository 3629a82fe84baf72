/** Forgetting a client who asks for it: found, told what goes and what stays, then let go for good. */
import { useState } from 'react'
import { findClients } from '../../state/find-clients'
import type { FoundClient } from '../../state/find-clients'
import { clientToForget, forgetClient } from '../../state/forget-client'
import type { ClientToForget } from '../../state/forget-client'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { Panel } from '../controls/panel'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { goesWords, REACH_WORDS, staysWords } from '../words/forget-words'
import look from './shop.module.css'

export function ForgetClient() {
  const store = useAppStore()
  const repository = useApp((s) => s.repository)
  const [found, setFound] = useState<readonly FoundClient[]>()
  const [asked, setAsked] = useState<{ name: string; all: ClientToForget }>()
  const [said, setSaid] = useState('')
  if (repository === null) return null

  async function find(text: string) {
    setSaid('')
    setFound(text === '' ? undefined : await findClients(store, text))
  }
  async function ask(client: FoundClient) {
    if (repository !== null) setAsked({ name: client.name, all: await clientToForget(repository, client.id) })
  }
  async function forget(all: ClientToForget, reason: string) {
    if (!(await forgetClient(store.getState(), all, reason))) return
    setAsked(undefined)
    setFound(undefined)
    setSaid('Forgotten. Make a new backup now and replace the older ones.')
  }
  return (
    <Panel title="Forget a client" quiet>
      <TextField
        key={said}
        label="Client to forget"
        name="forget"
        hint="name or phone"
        inputMode="search"
        value=""
        onCommit={(text) => void find(text)}
      />
      {found === undefined ? null : (
        <ul className={look.found}>
          {found.length === 0 ? <li>No client of that name.</li> : null}
          {found.map((client) => (
            <li key={client.id} className={look.actions}>
              <Label>{client.name === '' ? 'a client already forgotten' : `${client.name} ${client.phone}`}</Label>
              <Button onClick={() => void ask(client)}>
                Forget<span className="unseen"> {client.name}</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      {asked === undefined ? null : (
        <Asked {...asked} onLeave={() => setAsked(undefined)} onForget={(reason) => void forget(asked.all, reason)} />
      )}
      <Status>{said}</Status>
    </Panel>
  )
}

interface AskedProps {
  name: string
  all: ClientToForget
  onLeave: () => void
  onForget: (reason: string) => void
}

function Asked({ name, all, onLeave, onForget }: AskedProps) {
  const [reason, setReason] = useState('')
  const [isMissing, setMissing] = useState(false)
  return (
    <Dialog
      title={`Forget ${name}?`}
      onClose={onLeave}
      actions={
        <>
          <Button kind="primary" onClick={() => (reason.trim() === '' ? setMissing(true) : onForget(reason.trim()))}>
            Forget for good
          </Button>
          <Button onClick={onLeave}>Keep</Button>
        </>
      }
    >
      <p>
        <Label>{goesWords(all)}</Label>
      </p>
      <p>
        <Label>{staysWords(all)}</Label>
      </p>
      <p>{REACH_WORDS}</p>
      <TextField
        label="Reason"
        name="reason"
        hint="stays in the book; names nobody"
        error={
          isMissing && reason.trim() === '' ? 'Say why, without a name: asked by the client, for instance.' : undefined
        }
        value=""
        onText={setReason}
        onCommit={setReason}
      />
    </Dialog>
  )
}
