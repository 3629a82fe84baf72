/** A kit that went out: the return form, what the client wrote on it, and which shaft the plan goes on with. */
import { useState } from 'react'
import { Link } from 'wouter'
import { valueOf } from '../../domain/call/answers'
import type { Kit } from '../../domain/job/job'
import type { Id } from '../../domain/records/scalars'
import type { KitPoint } from '../../domain/send/kit'
import { kitResults, likedReserve, nearest } from '../../domain/send/kit'
import { report } from '../../state/afterwards-actions'
import { decideOnKit, markAtFullDraw } from '../../state/kit-actions'
import type { OpenJob } from '../../state/open-job'
import { useApp, useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { ChoiceField } from '../controls/choice-field'
import { Notice } from '../controls/notice'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Figure, FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { impactWords, likedWords, nearestWords } from '../words/afterwards-words'
import { showDayAndYear } from '../words/dates'
import look from './send.module.css'

const IMPACT = { unit: 'in', min: -60, max: 60, decimals: 1 } as const
const FIELDS: readonly { point: KitPoint; label: string; hint: string }[] = [
  { point: 'bareHighIn', label: 'Bare shaft, high', hint: 'low with a minus' },
  { point: 'bareLeftIn', label: 'Bare shaft, left', hint: 'right with a minus' },
  { point: 'broadheadHighIn', label: 'Broadhead, high', hint: 'low with a minus' },
  { point: 'broadheadLeftIn', label: 'Broadhead, left', hint: 'right with a minus' },
  { point: 'speedFps', label: 'Speed', hint: 'when it was read' },
]

const MARKS = [
  { question: 'markAtRestIn', label: 'Mark at the rest' },
  { question: 'markAtRiserIn', label: 'Mark at the riser’s front' },
] as const

export function KitReport({ open, kit }: { open: OpenJob; kit: Kit }) {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const { job } = open
  const results = kitResults(job, shelf, kit)
  const [liked, setLiked] = useState<Id>()
  const [reason, setReason] = useState('')
  const [said, setSaid] = useState('')
  const { decided } = kit
  const narrowed = decided === null ? undefined : likedReserve(results, decided.arrow)
  const numberOf = (arrow: Id) => kit.arrows.find((each) => each.arrow === arrow)?.no

  async function decide() {
    if (liked === undefined) return setSaid('Not decided: choose the arrow the client shoots best.')
    if (reason.trim() === '') return setSaid('Not decided: say why, in a few words.')
    if (await decideOnKit(store.getState(), job, kit, liked, reason)) setSaid('')
    return undefined
  }
  return (
    <Panel
      title={<Label>Test kit sent {showDayAndYear(kit.on)}</Label>}
      quiet
      aside={<Link to={`/print/kit/${job.id}`}>Print the return form</Link>}
    >
      <Notice level="look">
        A bare shaft kicks when it is far too soft or too stiff: shoot it close first, a clear butt behind the target,
        nobody near. Flex each arrow before each shot.
      </Notice>
      <div className={look.kit}>
        {results.map((result) => {
          const { arrow, reported, reserve } = result
          return (
            <fieldset key={arrow.arrow} className={look.shaft}>
              <h3>
                <Label>
                  No. {arrow.no}, {shelf.parts.get(arrow.part)?.body.name ?? 'shaft'}: {impactWords(result)}
                </Label>
              </h3>
              <FigureList>
                <Figure
                  name={`kit.${arrow.no}.reserve`}
                  label="Column reserve"
                  of={reserve}
                  unit="1"
                  decimals={2}
                  missing="needs the draw weight"
                />
              </FigureList>
              {FIELDS.map(({ point, label, hint }) => (
                <QuantityField
                  key={point}
                  label={label}
                  name={`${point}.${arrow.no}`}
                  hint={hint}
                  asked={point === 'speedFps' ? { unit: 'ft/s', min: 50, max: 500, decimals: 1 } : IMPACT}
                  value={reported[point]}
                  onCommit={({ value }) => void report(store.getState(), job.id, arrow.arrow, point, value)}
                />
              ))}
            </fieldset>
          )
        })}
      </div>
      <h3>At full draw, marked on a nocked arrow from the throat</h3>
      {MARKS.map(({ question, label }) => (
        <QuantityField
          key={question}
          label={label}
          name={question}
          hint="goes to the call’s answers and the sheet’s clearance"
          asked={{ unit: 'in', min: 15, max: 36, decimals: 2 }}
          value={valueOf(job.answers, question) as number | undefined}
          onCommit={({ value }) => void markAtFullDraw(store.getState(), job.id, question, value)}
        />
      ))}
      {decided === null ? (
        <>
          <p>
            <Label>{nearestWords(nearest(results))}</Label>
          </p>
          <ChoiceField
            label="Go on with"
            name="liked"
            choices={kit.arrows.map(({ arrow, no }) => ({ value: arrow, label: `no. ${no}` }))}
            value={liked}
            onChoose={setLiked}
          />
          <TextField label="Why" name="kitReason" value={reason} onText={setReason} onCommit={setReason} />
          <Button kind="primary" onClick={() => void decide()}>
            Put its shaft on the sheet
          </Button>
        </>
      ) : (
        <p>
          <Label>
            Decided {showDayAndYear(decided.at.slice(0, 10))} by {decided.by}: no. {numberOf(decided.arrow)},{' '}
            {decided.reason}. Its shaft is on the sheet; freeze the next version there.{' '}
            {narrowed === undefined ? '' : likedWords(narrowed)}
          </Label>
        </p>
      )}
      <Status>{said}</Status>
    </Panel>
  )
}
