/** The bench route on paper, a line to write on for every reading of every arrow, so that a dead tablet stops nobody. */
import type { FactOf } from '../../domain/records/read-fact'
import { DATA_POINTS } from '../../domain/bench/data-points'
import { Label } from '../figures/label'
import { pointWord, stepWords } from '../words/bench-words'
import { sheetFacts } from './facts-of'
import { PrintSheet } from './print-sheet'
import look from './route-card.module.css'
import type { RouteStep } from './route-sheets'
import { routeSheets, routeSteps } from './route-sheets'

const MOST_COLUMNS = 12 // arrows beside one another on the width of the paper

export function RouteCardPrint({ fact }: { fact: FactOf<'sheet'> }) {
  const { plan, rules, ...sheet } = fact.body
  const numbers = Array.from({ length: plan.quantity + plan.spares }, (_, i) => i + 1)
  const groups = Array.from({ length: Math.ceil(numbers.length / MOST_COLUMNS) }, (_, at) =>
    numbers.slice(at * MOST_COLUMNS, (at + 1) * MOST_COLUMNS),
  )
  const sheets = routeSheets(routeSteps({ plan, rules, ...sheet }))
  const pages = groups.flatMap((group) =>
    sheets.map((steps) => (
      <div key={`${group[0]!}.${steps[0]!.at}`} data-label="">
        <p className={look.first}>
          <b>
            Target {plan.targetGr} gr, ± {rules.toleranceGr} gr. C2C {plan.c2cIn} in.
          </b>
          <Blank of="Day" /> <Blank of="from" /> <Blank of="to" /> <Blank of="by" />
        </p>
        <StepsTable numbers={group} steps={steps} />
      </div>
    )),
  )
  return <PrintSheet paper="a4" title="Route card" facts={sheetFacts(fact)} sheets={pages} />
}

const Blank = ({ of }: { of: string }) => (
  <span className={look.blank}>
    {of} <i />
  </span>
)

const StepsTable = ({ numbers, steps }: { numbers: readonly number[]; steps: readonly RouteStep[] }) => (
  <table className={look.card}>
    <caption>
      Every reading of every step, in bold those that must be taken. Entered at the bench page afterwards, with this day
      and time.
    </caption>
    <thead>
      <tr>
        <th scope="col">Step and reading</th>
        {numbers.map((no) => (
          <th key={no} scope="col">
            No. {no}
          </th>
        ))}
      </tr>
    </thead>
    {steps.map(({ step, at, said, rows }) => (
      <tbody key={step.key}>
        <tr className={step.confirm === 'none' ? look.step : `${look.step} ${look.write}`}>
          <th scope="rowgroup" colSpan={step.confirm === 'none' ? numbers.length + 1 : 1}>
            {at}. {stepWords(step.key).title}
          </th>
          {step.confirm === 'arrow' ? numbers.map((no) => <Tick key={no} of={`No. ${no} done`} />) : null}
          {step.confirm === 'set' ? <Tick of="The whole set done" columns={numbers.length} /> : null}
        </tr>
        {said.map(([of, words]) => (
          <tr key={words} className={look.said}>
            <td colSpan={numbers.length + 1}>
              {of === '' ? null : <b>{of}: </b>}
              {words}
            </td>
          </tr>
        ))}
        {rows.map(({ key, point, required, again }) => (
          <tr key={key} className={look.write}>
            <th scope="row" className={required ? look.must : undefined}>
              <Label>
                {pointWord(point)}, {DATA_POINTS[point].unit}
                {again ? ', again' : ''}
              </Label>
            </th>
            {numbers.map((no) => (
              <td key={no}>{''}</td>
            ))}
          </tr>
        ))}
      </tbody>
    ))}
  </table>
)

const Tick = ({ of, columns = 1 }: { of: string; columns?: number }) => (
  <td colSpan={columns}>
    <span className={look.tick} />
    <span className={columns === 1 ? 'unseen' : undefined}>{of}</span>
  </td>
)
