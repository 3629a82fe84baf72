/** After the set has left: each arrow's own story, and what can happen to it: weighed again, repaired, retired. */
import { useState } from 'react'
import { Link } from 'wouter'
import type { BenchArrow } from '../../domain/bench/bench'
import { building } from '../../domain/bench/bench'
import { builtWeight, retirements, survivorWeights } from '../../domain/send/in-use'
import { openRepair, repairsOf } from '../../domain/send/repairs'
import type { Sheet } from '../../domain/sheet/sheet'
import type { OpenJob } from '../../state/open-job'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { Read } from '../figures/read'
import { repairStoryWords, retirementWords } from '../words/afterwards-words'
import { isFletch } from '../words/repair-words'
import { RecordBehind } from './record-behind'
import { RepairAtWork } from './repair-at-work'
import { RefletchDialog, RepairDialog } from './repair-dialog'
import { RetireDialog } from './retire-dialog'
import look from './send.module.css'
import { WeighedDialog } from './weighed-dialog'

type Doing = { readonly what: keyof typeof DIALOGS; readonly arrow: BenchArrow }
const DIALOGS = {
  weighed: WeighedDialog,
  repair: RepairDialog,
  refletch: RefletchDialog,
  retire: RetireDialog,
} as const

export function Afterwards({ open, sheet }: { open: OpenJob; sheet: Sheet }) {
  const [doing, setDoing] = useState<Doing>()
  const { job } = open
  if (job.bench === null) return null
  const retired = retirements(job)
  const weights = survivorWeights(job)
  // Those of before repairs were begun have no beginning, only what was done.
  const repairs = (arrow: BenchArrow) => [
    ...job.afterwards.flatMap(({ what, arrow: of, body }) =>
      what === 'repaired' && of === arrow.id && 'what' in body && body.repair === undefined
        ? [`${body.what}: ${body.reason}`]
        : [],
    ),
    ...repairsOf(job)
      .filter((each) => each.arrow === arrow.id)
      .map(repairStoryWords),
  ]
  const hasFletch = sheet.plan.lines.some(({ part }) => isFletch(sheet.parts.find(({ id }) => id === part)?.part.kind))
  const Dialog = doing === undefined ? undefined : DIALOGS[doing.what]
  return (
    <Panel title="Afterwards" quiet aside={<Link to={`/job/${job.id}/kit`}>Test kit</Link>}>
      <RecordBehind open={open} sheet={sheet} />
      {building(job.bench).flatMap((arrow) => {
        const repair = openRepair(job, arrow.id)
        return repair === undefined
          ? []
          : [<RepairAtWork key={repair.repair} open={open} sheet={sheet} repair={repair} arrow={arrow} />]
      })}
      <DataTable
        caption="What became of each arrow"
        captionUnseen
        columns={[
          { head: 'Arrow' },
          { head: 'As built, gr', figures: true },
          { head: 'Now, gr', figures: true },
          { head: 'Stands' },
          { head: 'What happens to it' },
        ]}
        blocks
        rows={building(job.bench).map((arrow) => {
          const gone = retired.get(arrow.id)
          const built = builtWeight(job, arrow)
          const now = weights.get(arrow.id)
          const story = [...repairs(arrow), ...(gone === undefined ? [] : [retirementWords(gone)])]
          const act = (what: Doing['what'], words: string) => (
            <Button key={what} kind="text" onClick={() => setDoing({ what, arrow })}>
              {words}
              <span className="unseen" data-label="">
                {' '}
                no. {arrow.no}
              </span>
            </Button>
          )
          const weight = (name: string, value: number | undefined) =>
            value === undefined ? (
              '–'
            ) : (
              <Read key={name} name={`after.${arrow.no}.${name}`} value={value} unit="gr" decimals={1} bare />
            )
          return {
            key: arrow.id,
            cells: [
              <Label key="no">
                no. {arrow.no}, {arrow.code}
              </Label>,
              weight('built', built),
              weight('now', now),
              <Label key="stands">{story.length === 0 ? 'in use' : story.join('; ')}</Label>,
              gone === undefined ? (
                <span key="acts" className={look.acts}>
                  {openRepair(job, arrow.id) === undefined ? (
                    <>
                      {act('weighed', 'Weighed again')}
                      {act('repair', 'Repair')}
                      {hasFletch ? act('refletch', 'Refletch') : null}
                    </>
                  ) : null}
                  {act('retire', 'Retire')}
                </span>
              ) : (
                ''
              ),
            ],
          }
        })}
      />
      {Dialog === undefined ? null : (
        <Dialog open={open} sheet={sheet} arrow={doing!.arrow} onClose={() => setDoing(undefined)} />
      )}
    </Panel>
  )
}
