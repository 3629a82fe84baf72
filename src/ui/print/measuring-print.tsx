/** The measuring sheet: exactly what the client still owes, a drawing of how to take each, and a line to write it on. */
import { measuringItems } from '../../domain/call/open-questions'
import type { OpenJob } from '../../state/open-job'
import { useApp } from '../app/use-app'
import { Label } from '../figures/label'
import { MEASURING_CAUTION, MEASURE_STEPS, sendBackWords } from '../words/call/measuring-words'
import { MEASURE_WORDS } from '../words/call/open-words'
import { QUESTION_WORDS, unitOfQuestion } from '../words/call/question-words'
import { jobFacts } from './facts-of'
import { MeasureDrawing } from './measure-drawing'
import look from './measuring.module.css'
import { PrintSheet } from './print-sheet'

const FEW = 4 // more than these take three columns

/** A line each for two arrows: weight and speed. */
const SpeedLines = () =>
  [1, 2].map((line) => (
    <p key={line} className={look.entry}>
      <span className={look.blank} /> gr at <span className={look.blank} /> ft/s
    </p>
  ))

export function MeasuringPrint({ open }: { open: OpenJob }) {
  const rules = useApp((s) => s.shelf.rules)
  const { job, client } = open
  const items = measuringItems(job.answers)
  const due = items.flatMap((item) => item.open.flatMap((each) => each.due ?? [])).toSorted()[0] ?? null
  const name = client?.['name'] ?? ''
  const page = (
    <>
      <h1>What we still need to measure</h1>
      {items.length === 0 ? (
        <p>
          Nothing was left to be measured: a question put off on the call, with who owes it and by when, comes onto this
          sheet.
        </p>
      ) : (
        <p>
          <Label>{[name === '' ? '' : `For ${name}.`, sendBackWords(due)].join(' ')}</Label>
        </p>
      )}
      <p className={look.caution}>{MEASURING_CAUTION}</p>
      <ol className={items.length > FEW ? look.many : look.items}>
        {items.map(({ measure, open: owed }) => (
          <li key={measure} className={look.item}>
            <h2>{MEASURE_WORDS[measure]}</h2>
            <MeasureDrawing measure={measure} />
            <p>
              <Label>{MEASURE_STEPS[measure]}</Label>
            </p>
            {owed.map(({ question }) =>
              question.shape.kind === 'speeds' ? (
                <SpeedLines key={question.id} />
              ) : (
                <p key={question.id} className={look.entry}>
                  <Label>{QUESTION_WORDS[question.id].label}</Label>
                  <span className={look.blank} />
                  <Label>{unitOfQuestion(question)}</Label>
                </p>
              ),
            )}
          </li>
        ))}
      </ol>
    </>
  )
  return <PrintSheet paper="a4" title="Measuring sheet" facts={jobFacts(job, rules.shopName)} sheets={[page]} />
}
