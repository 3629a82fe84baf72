/** What a check of the whole book found, in plain words; it can be taken along as a text. */
import type { BookReport } from '../../domain/records/book-report'
import { Button } from '../controls/button'
import { Notice } from '../controls/notice'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { bookProblemWords, checkedWords, foundWords } from '../words/book-report-words'
import { download } from './download'
import look from './shop.module.css'

const SHOWN = 20 // on the page; the text holds all

export function BookCheck({ report }: { report: BookReport }) {
  const { problems } = report
  const lines = () => [checkedWords(report), foundWords(report), ...problems.map(bookProblemWords)]
  const take = () => download(new Blob([lines().join('\n')], { type: 'text/plain' }), 'grainwright-book-check.txt')
  return (
    <section className={look.found} aria-label="Check of the whole book">
      <p>
        <Label>{checkedWords(report)}</Label>
      </p>
      <Status>
        <Label>{foundWords(report)}</Label>
      </Status>
      {problems.slice(0, SHOWN).map((problem, at) => (
        // A report never changes, so a problem's place is its key.
        <Notice key={at} level="stop">
          <Label>{bookProblemWords(problem)}</Label>
        </Notice>
      ))}
      {problems.length === 0 ? null : (
        <p>
          <Button onClick={take}>The whole report as a text</Button>
        </p>
      )}
    </section>
  )
}
