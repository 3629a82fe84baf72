/** One page for the hunting guide or the outfitter: finished weight, speed, momentum, head, and what these do not say. */
import { useMemo } from 'react'
import { inspection } from '../../domain/send/inspection'
import { sheetFigures } from '../../domain/sheet/sheet-figures'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { FigureList } from '../figures/figure'
import { Label } from '../figures/label'
import { partKindWord } from '../words/part-kind-words'
import { GUIDE_NOTES } from '../words/paper-words'
import { jobFacts } from './facts-of'
import look from './papers.module.css'
import { PlainFigure } from './plain-figure'
import { PrintSheet } from './print-sheet'

export function GuidePrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const { job } = open
  const sheet = open.sheets.get(job.bench?.sheet ?? job.frozen.at(-1)?.sheet ?? '')
  const worked = useMemo(() => (sheet === undefined ? undefined : sheetFigures(sheet)), [sheet])
  const facts = jobFacts(job, rules.shopName)
  if (sheet === undefined || worked === undefined) {
    return (
      <PrintSheet
        paper="a4"
        title="For the guide"
        facts={facts}
        sheets={[<p key="none">The sheet is not frozen yet.</p>]}
      />
    )
  }
  const { figures } = worked
  const inspected = job.bench === null ? undefined : inspection(job.bench, sheet, worked)
  const mean = inspected?.finished?.ok ? { ...inspected.finished, value: inspected.finished.value.mean } : undefined
  const heads = sheet.plan.lines.flatMap((line) =>
    sheet.parts.flatMap(({ id, part }) =>
      id === line.part && (part.kind === 'broadhead' || part.kind === 'field point') ? [part] : [],
    ),
  )
  const bow = 'the archer’s bow was not measured'
  const page = (
    <>
      <h1>For the guide</h1>
      <p>
        <Label>
          {[open.client?.['name'], sheet.hunt.quarry, sheet.hunt.place]
            .filter((word) => word !== undefined && word !== '')
            .join(', ')}
        </Label>
      </p>
      <FigureList>
        {mean === undefined ? (
          <PlainFigure
            name="guide.planned"
            label="Finished weight, as planned"
            of={figures?.finished}
            unit="gr"
            decimals={0}
          />
        ) : (
          <PlainFigure name="guide.finished" label="Mean finished weight, as built" of={mean} unit="gr" decimals={1} />
        )}
        <PlainFigure
          name="guide.speed"
          label="Speed"
          of={figures?.speed}
          unit="ft/s"
          decimals={0}
          missing={bow}
          stretched="beyond the weights shot from this bow"
        />
        <PlainFigure
          name="guide.momentum"
          label="Momentum"
          of={figures?.momentum}
          unit="slug·ft/s"
          decimals={3}
          missing={bow}
        />
        <PlainFigure
          name="guide.energy"
          label="Kinetic energy"
          of={figures?.kineticEnergy}
          unit="ft·lbf"
          decimals={1}
          missing={bow}
        />
        <PlainFigure name="guide.foc" label="Front of centre" of={figures?.foc} unit="%" decimals={1} />
      </FigureList>
      {heads.map((head) => (
        <p key={head.name}>
          <Label>
            {partKindWord(head.kind)}: {head.name}, {head.weightGr} gr
            {head.kind === 'broadhead' ? `, ${head.cuttingWidthIn} in wide, bevel ${head.bevel}` : ''}
          </Label>
        </p>
      ))}
      <p>
        <Label>
          Bow: {sheet.bow.kind}
          {sheet.bow.peakDrawWeightLb === undefined
            ? ', draw weight not measured'
            : `, ${sheet.bow.peakDrawWeightLb} lb`}
        </Label>
      </p>
      <ul className={look.bullets}>
        {GUIDE_NOTES.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </>
  )
  return <PrintSheet paper="a4" title="For the guide" facts={facts} sheets={[page]} />
}
