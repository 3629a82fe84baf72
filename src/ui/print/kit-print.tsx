/** The return form of a test kit: what to shoot, in which order, and where to write it. Complete without the app. */
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { DataTable } from '../controls/data-table'
import { Label } from '../figures/label'
import { KIT_STEPS } from '../words/paper-words'
import { jobFacts } from './facts-of'
import look from './papers.module.css'
import { PrintSheet } from './print-sheet'

const COLUMNS = [
  'Bare shaft, in high or low',
  'Bare shaft, in left or right',
  'Broadhead, in high or low',
  'Broadhead, in left or right',
  'Speed, ft/s',
  'How it flew',
] as const

export function KitPrint({ open }: { open: OpenJob }) {
  const shelf = useApp((s) => s.shelf)
  const { job } = open
  const kit = job.kits.at(-1)
  const page =
    kit === undefined ? (
      <p key="none">No test kit has been sent yet.</p>
    ) : (
      <>
        <h1>Test kit: please shoot and send back</h1>
        <ol className={look.numbered}>
          {KIT_STEPS.map((step) => (
            <li key={step}>
              <Label>{step}</Label>
            </li>
          ))}
        </ol>
        <div className={look.tall}>
          <DataTable
            caption="One line an arrow; impacts from the middle of the fletched field points"
            columns={[{ head: 'Arrow' }, ...COLUMNS.map((head) => ({ head }))]}
            rows={kit.arrows.map(({ arrow, no, code, part, c2cIn }) => ({
              key: arrow,
              cells: [
                <Label key="no">
                  no. {no}, {code}
                  <br />
                  {shelf.parts.get(part)?.body.name ?? ''}, cut to {c2cIn} in
                </Label>,
                ...COLUMNS.map(() => ''),
              ],
            }))}
          />
        </div>
        <p className={look.write}>At full draw, marked on a nocked arrow: from the throat to the rest, in</p>
        <p className={look.write}>From the throat to the riser’s front, in</p>
        <p className={look.write}>Which one you would hunt with, and why</p>
        <p className={look.write}>Name and day</p>
      </>
    )
  return (
    <PrintSheet paper="a4" title="Test kit return form" facts={jobFacts(job, shelf.rules.shopName)} sheets={[page]} />
  )
}
