/** The one page the client gets with the arrows: in plain words, with the envelope, the cautions and how to look after them. */
import { useMemo } from 'react'
import { cutFigures } from '../../domain/sheet/cut-figures'
import { sheetEnvelope } from '../../domain/sheet/sheet-envelope'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import { inspection } from '../../domain/send/inspection'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { EnvelopeTable } from '../sheet/tools/envelope-table'
import { CLIENT_CAUTIONS } from '../words/client-cautions'
import { madeForWords } from '../words/made-for-words'
import { counted } from '../words/format'
import { CARE } from '../words/paper-words'
import { ENVELOPE_WORDS } from '../words/tool-words'
import { jobFacts } from './facts-of'
import look from './papers.module.css'
import { PlainFigure } from './plain-figure'
import { PrintSheet } from './print-sheet'

export function ClientSheetPrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const { job } = open
  const frozen = job.frozen.at(-1)
  const sheet = open.sheets.get(job.bench?.sheet ?? frozen?.sheet ?? '')
  const worked = useMemo(() => (sheet === undefined ? undefined : sheetFigures(sheet)), [sheet])
  if (sheet === undefined || worked === undefined) {
    return (
      <PrintSheet
        paper="a4"
        title="Client sheet"
        facts={jobFacts(job, rules.shopName)}
        sheets={[<p key="none">The sheet is not frozen yet.</p>]}
      />
    )
  }
  const inspected = job.bench === null ? undefined : inspection(job.bench, sheet, worked)
  const mean = inspected?.finished?.ok ? { ...inspected.finished, value: inspected.finished.value.mean } : undefined
  const { figures } = worked
  const whose = [open.client?.['name'], sheet.hunt.quarry]
    .filter((word) => word !== undefined && word !== '')
    .join(', ')
  const within = sheetEnvelope(sheet, worked, cutFigures(sheet, worked))
  const bow = 'your bow was not measured'
  const stretched = 'beyond the weights shot from your bow'
  const page = (
    <div className={look.oneSheet}>
      <h1>Your arrows</h1>
      <p>
        <Label>
          {whose === '' ? '' : `${whose}. `}
          {counted(sheet.plan.quantity, 'arrow')}, cut to {sheet.plan.c2cIn} in of shaft, fletched{' '}
          {sheet.plan.fletchSide}. {madeForWords(sheet.bow)}
        </Label>
      </p>
      <FigureList columns={2}>
        {mean === undefined ? (
          <PlainFigure
            name="client.planned"
            label="Finished weight, as planned"
            of={figures?.finished}
            unit="gr"
            decimals={0}
          />
        ) : (
          <PlainFigure name="client.finished" label="Mean finished weight, as built" of={mean} unit="gr" decimals={1} />
        )}
        <PlainFigure
          name="client.speed"
          label="Speed from your bow"
          of={figures?.speed}
          unit="ft/s"
          decimals={0}
          missing={bow}
          stretched={stretched}
        />
        <PlainFigure
          name="client.energy"
          label="Kinetic energy"
          of={figures?.kineticEnergy}
          unit="ft·lbf"
          decimals={1}
          missing={bow}
        />
        <PlainFigure
          name="client.momentum"
          label="Momentum"
          of={figures?.momentum}
          unit="slug·ft/s"
          decimals={3}
          missing={bow}
        />
        <PlainFigure name="client.foc" label="Front of centre" of={figures?.foc} unit="%" decimals={1} />
        <PlainFigure
          name="client.gpp"
          label="Grains per pound"
          of={figures?.grainsPerPound}
          unit="gr/lb"
          decimals={1}
          missing="your draw weight was not measured"
        />
      </FigureList>
      <h2>How far your bow may change</h2>
      <EnvelopeTable
        name="client.envelope"
        within={within}
        caption="From what the arrows were made for. Past that, ask before you shoot them"
      />
      <p>{ENVELOPE_WORDS.clientNote}</p>
      <h2>Before each shot, the first included</h2>
      <ul className={look.bullets}>
        {CLIENT_CAUTIONS.map((caution) => (
          <li key={caution}>
            <Label>{caution}</Label>
          </li>
        ))}
      </ul>
      <h2>Inspection and care</h2>
      <ul className={look.bullets}>
        {CARE.map((care) => (
          <li key={care}>{care}</li>
        ))}
      </ul>
    </div>
  )
  return <PrintSheet paper="a4" title="Client sheet" facts={jobFacts(job, rules.shopName)} sheets={[page]} />
}
