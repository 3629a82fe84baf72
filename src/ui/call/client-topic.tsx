/** Who it is for: a known client with what was built before, or a new one; how to reach them; consent to keep it. */
import { Suspense, lazy } from 'react'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import type { ClientFields } from '../../domain/call/client'
import type { ClientNow } from '../../domain/call/client-record'
import type { QuestionId } from '../../domain/call/questions'
import { changeClient, clientNow, setClient } from '../../state/call-actions'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { TextField } from '../controls/text-field'
import look from './call.module.css'
import { ClientSearch } from './client-search'
import { PastBuilds } from './past-builds'
import { unknownOf } from './unknown-of'
import type { Call } from './use-call'

const VersionsApart = lazy(() =>
  import('../controls/versions-apart').then(({ VersionsApart: shown }) => ({ default: shown })),
)

interface ClientField {
  readonly field: keyof ClientFields
  readonly label: string
  readonly inputMode?: 'tel' | 'email'
  readonly long?: boolean
  /** What the call calls it while it is owed. */
  readonly question?: QuestionId
}

const FIELDS: readonly ClientField[] = [
  { field: 'name', label: 'Name' },
  { field: 'phone', label: 'Phone', inputMode: 'tel', question: 'clientPhone' },
  { field: 'email', label: 'Email', inputMode: 'email', question: 'clientEmail' },
  { field: 'address', label: 'Send to', long: true, question: 'clientAddress' },
  { field: 'notes', label: 'Notes', long: true },
]

interface ClientTopicProps {
  call: Call
  /** What is kept of the client and not forgotten. */
  fields: Readonly<Record<string, string>> | null
  /** Other questions follow on the same page. */
  hasNext: boolean
  /** Somebody is named now. */
  onNamed: () => void
}

export function ClientTopic({ call, fields, hasNext, onNamed }: ClientTopicProps): ReactNode {
  const store = useAppStore()
  const { job } = call
  const consent = useConsent(call)
  /** What was owed has come. */
  const settled = (question: QuestionId | undefined) => {
    if (question !== undefined && job.answers[question] !== undefined) call.clear(question)
  }
  if (job.client === null) {
    return (
      <ClientSearch
        onPick={(id) => void setClient(store, job.id, id).then(onNamed)}
        hasNext={hasNext}
        onNew={(name, how) => {
          // Entered before other questions, the next of them has the focus already; who left is elsewhere.
          const isAtHand = how === 'left' || (how === 'entered' && hasNext)
          void changeClient(store, job.id, { fields: { name } }).then(isAtHand ? undefined : onNamed)
        }}
      />
    )
  }
  return (
    <>
      <Suspense>
        <VersionsApart kind="client" subject={job.client} what="this client" />
      </Suspense>
      <PastBuilds jobs={call.others} />
      {FIELDS.map(({ field, label, question, inputMode, long }) => (
        <div key={field} data-question={`client.${field}`} className={look.question}>
          <TextField
            label={label}
            wide
            name={`client.${field}`}
            value={fields?.[field] ?? ''}
            {...(inputMode === undefined ? {} : { inputMode })}
            {...(long === undefined ? {} : { long })}
            {...(question === undefined ? {} : { unknown: unknownOf(call, question) })}
            onCommit={(text) => {
              settled(question)
              void changeClient(store, job.id, { fields: { [field]: text } })
            }}
          />
        </div>
      ))}
      <div data-question="client.consent" className={look.question}>
        <ChoiceField
          label="May we keep it"
          name="client.consent"
          hint="for the next order; forgotten on request"
          choices={[
            { value: 'yes', label: 'yes' },
            { value: 'no', label: 'no' },
          ]}
          value={consent === null ? undefined : consent ? 'yes' : 'no'}
          unknown={unknownOf(call, 'clientConsent')}
          onChoose={(value) => {
            settled('clientConsent')
            void changeClient(store, job.id, { consent: value === 'yes' })
          }}
        />
      </div>
      <Button kind="text" onClick={() => void setClient(store, job.id, null)}>
        Not this client
      </Button>
    </>
  )
}

/** Whether the client agreed to be kept; null until asked. Read again after each change. */
function useConsent({ job }: Call): boolean | null {
  const store = useAppStore()
  const version = useApp((s) => s.open?.clientFact)
  const [now, setNow] = useState<ClientNow>()
  useEffect(() => {
    let gone = false
    void clientNow(store, job.client).then((read) => {
      if (!gone) setNow(read)
    })
    return () => {
      gone = true
    }
  }, [store, job.client, version])
  return now?.subject === job.client ? now.consent : null
}
