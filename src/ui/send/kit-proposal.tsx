/** The fewest shafts of the shelf that bracket the stiffness called for, taken into the kit at one tap. */
import { useMemo, useState } from 'react'
import { KIT_REACH, testKit } from '../../domain/search/test-kit'
import type { KitSample } from '../../domain/search/test-kit'
import { draftSheet } from '../../domain/sheet/draft-sheet'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Label } from '../figures/label'
import { PlainValue } from '../figures/value'
import { kitRefusalWords, sampleWords } from '../words/afterwards-words'
import look from './send.module.css'

export function KitProposal({ open, onTake }: { open: OpenJob; onTake: (samples: readonly KitSample[]) => void }) {
  const shelf = useApp((s) => s.shelf)
  const [isAsked, setAsked] = useState(false)
  const { job, clientFact } = open
  const kit = useMemo(
    () => (isAsked ? testKit(draftSheet(job, shelf, clientFact), shelf) : undefined),
    [isAsked, job, shelf, clientFact],
  )
  if (kit === undefined) {
    return (
      <p>
        <Button onClick={() => setAsked(true)}>Propose a kit</Button>
      </p>
    )
  }
  if (typeof kit === 'string') return <Notice level="look">{kitRefusalWords(kit)}</Notice>
  const { samples, called, open: stretches } = kit
  const reserve = (name: string, of: number) => (
    <PlainValue name={`kit.proposed.${name}`} of={of} unit="1" decimals={2} />
  )
  return (
    <div className={look.proposal}>
      <p>
        The column reserve called for is {reserve('called.min', called.min)} to {reserve('called.max', called.max)}. An
        arrow speaks for reserves up to {reserve('reach', KIT_REACH)} times its own, and as far below.
      </p>
      <ol className={look.samples}>
        {samples.map((sample) => (
          <li key={`${sample.part} ${sample.c2cIn}`}>
            <Label>{sampleWords(sample)}</Label>, column reserve {reserve(sample.name, sample.reserve)}
          </li>
        ))}
      </ol>
      {stretches.map(({ min, max }) => (
        <Notice key={min} level="look">
          Nothing on the shelf speaks for {reserve('open.min', min)} to {reserve('open.max', max)}.
        </Notice>
      ))}
      <p>
        <Button onClick={() => onTake(samples)}>Take these into the kit</Button>
      </p>
    </div>
  )
}
