/** What stands on a box label and on an arrow's tag: each with the code that finds its record, and enough to stand alone. */
import { renderSVG } from 'uqr'
import type { BenchArrow } from '../../domain/bench/bench'
import { accepted } from '../../domain/bench/bench'
import type { Sheet } from '../../domain/sheet/sheet'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { counted } from '../words/format'
import look from './labels.module.css'
import type { TitleBlockFacts } from './title-block'
import { isHead } from '../../domain/stock/part-places'

const QUIET = 4 // modules of white around the code, ISO/IEC 18004

/** A code as a picture; the library draws it as SVG from the text alone. */
const CodePicture = ({ text }: { text: string }) => (
  <img
    className={look.code}
    src={`data:image/svg+xml,${encodeURIComponent(renderSVG(text, { ecc: 'M', border: QUIET }))}`}
    alt={`Code ${text}`}
  />
)

const SHORT_HASH = 8 // letters

/** @param of the record's code, where the label does not already stand under it */
const Foot = ({ facts, of, at }: { facts: TitleBlockFacts; of?: string; at: string }) => (
  <small className={look.foot}>
    {of} v{facts.version}, {facts.hash?.slice(0, SHORT_HASH)}, <span className={look.whole}>{at}</span>
  </small>
)

const SHORT_NAME = 24 // letters, on one line of the narrowest label or two

const headOf = (sheet: Sheet) =>
  sheet.plan.lines
    .flatMap((line) => sheet.parts.filter(({ id }) => id === line.part).map(({ part }) => part))
    .find(({ kind }) => isHead(kind))?.name

interface BoxLabelProps {
  facts: TitleBlockFacts
  code: string
  sheet: Sheet
  client: string
  arrows: number
  at: string
}

export const BoxLabel = ({ facts, code, sheet, client, arrows, at }: BoxLabelProps) => (
  <>
    <CodePicture text={code} />
    <div className={look.text} data-label="">
      <b>{code}</b>
      <span>{facts.shop}</span>
      {client === '' ? null : <span className={client.length > SHORT_NAME ? look.longName : undefined}>{client}</span>}
      <span>job {sheet.jobCode}</span>
      <span>
        {counted(arrows, 'arrow')}, {sheet.plan.targetGr} gr
      </span>
      <b>Heads off and capped</b>
      <Foot facts={facts} at={at} />
    </div>
  </>
)

interface ArrowTagProps {
  facts: TitleBlockFacts
  sheet: Sheet
  arrow: BenchArrow
  at: string
}

export function ArrowTag({ facts, sheet, arrow, at }: ArrowTagProps) {
  const finished = accepted(arrow, 'finishedWeight')?.reading.value
  return (
    <>
      <CodePicture text={arrow.code} />
      <div className={look.text}>
        <b data-label="">No. {arrow.no}</b>
        <span data-label="">{arrow.code}</span>
        <span>
          {finished === undefined ? (
            <Label>{sheet.plan.targetGr} gr planned</Label>
          ) : (
            <Read name={`tag.${arrow.no}.finished`} value={finished} unit="gr" decimals={1} />
          )}
        </span>
        <span data-label="">{headOf(sheet) ?? 'no head'}</span>
        <span data-label="">
          <Foot facts={facts} of={facts.record} at={at} />
        </span>
      </div>
    </>
  )
}
