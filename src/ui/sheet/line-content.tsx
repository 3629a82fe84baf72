/** One line of the sheet: which part and lot, what it is expected to weigh, known from what, and the way to take it off. */
import { memo } from 'react'
import { inches } from '../../core/quantity'
import type { Job } from '../../domain/job/job'
import type { Id } from '../../domain/records/scalars'
import type { LinePlace } from '../../domain/sheet/line-places'
import type { PlanLine } from '../../domain/sheet/plan'
import type { LineWeight } from '../../domain/sheet/line-weights'
import type { NamedLine } from '../../domain/sheet/lines-since'
import type { Part } from '../../domain/stock/part'
import { removeLine } from '../../state/sheet-actions'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { Label } from '../figures/label'
import { RangeValue, Value } from '../figures/value'
import { lineKnownWords, lineSinceWords } from '../words/sheet-words'
import look from './line-content.module.css'

interface LineContentProps {
  job: Job
  line: PlanLine
  part: Part | undefined
  lotCode: string | undefined
  weight: LineWeight | undefined
  place: LinePlace | undefined
  /** What it was when last frozen, null where it is new; undefined where it is as it was. */
  since: NamedLine | null | undefined
  onChange: (line: Id) => void
}

/** Drawn again only when its own numbers have changed: a key typed elsewhere leaves it alone. */
export const LineContent = memo(OneLine, isUnchanged)

function OneLine({ job, line, part, lotCode, weight, place, since, onChange }: LineContentProps) {
  const store = useAppStore()
  return (
    <div className={look.line}>
      <span className={look.part}>
        <Label>
          {line.count > 1 ? `${line.count} × ` : ''}
          {part?.name ?? 'a part that is not in this book'}
        </Label>
        <small className={look.known}>
          <Label>{lotCode === undefined ? 'lot unknown' : `lot ${lotCode}`}</Label>
          {weight === undefined ? null : <Label>, {lineKnownWords(weight)}</Label>}
        </small>
        {place === undefined ? null : (
          <small className={look.known}>
            at{' '}
            <RangeValue
              name={`sheet.line.${line.id}.at`}
              low={inches(place.fromIn)}
              high={inches(place.toIn)}
              unit="in"
              decimals={2}
            />
            {part !== undefined && isTrimmable(part) ? ', may be trimmed' : ''}
          </small>
        )}
        {since === undefined ? null : (
          <small className={look.since}>
            <Label>{lineSinceWords(since)}</Label>
          </small>
        )}
      </span>
      {weight === undefined ? null : (
        <span className={look.weight}>
          <Value name={`sheet.line.${line.id}`} of={weight.value} unit="gr" decimals={1} />
          <small className={look.known}>
            ± <Value name={`sheet.line.${line.id}.band`} of={weight.half} unit="gr" decimals={1} bare />
          </small>
        </span>
      )}
      <span className={look.acts}>
        <Button kind="text" onClick={() => onChange(line.id)}>
          Change
          <span className="unseen" data-label="">
            {' '}
            {part?.name}
          </span>
        </Button>
        <Button kind="text" onClick={() => void removeLine(store.getState(), job.id, line.id)}>
          Remove
          <span className="unseen" data-label="">
            {' '}
            {part?.name}
          </span>
        </Button>
      </span>
    </div>
  )
}

/** A post, and a weight stacked on one: what grains come off from. */
const isTrimmable = (part: Part): boolean =>
  part.kind === 'insert' || part.kind === 'half-out' ? part.trimmable : part.kind === 'rear weight'

function isUnchanged(was: LineContentProps, is: LineContentProps): boolean {
  const sameWeight =
    was.weight?.value === is.weight?.value &&
    was.weight?.half === is.weight?.half &&
    was.weight?.origin === is.weight?.origin
  const samePlace = was.place?.fromIn === is.place?.fromIn && was.place?.toIn === is.place?.toIn
  const sameLine = was.line === is.line && was.part === is.part && was.lotCode === is.lotCode
  return sameWeight && samePlace && sameLine && was.since === is.since && was.job.id === is.job.id
}
