/** The bench before a set is under way: how to start one, or what is missing. */
import { Link, useLocation } from 'wouter'
import type { OpenJob } from '../../state/open-job'
import { beginSet } from '../../state/sheet-actions'
import { BenchBar } from '../app/bench-bar'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { jobTab, jobTitle } from '../words/job-words'
import look from './bench.module.css'

export default function NoSet({ open }: { open: OpenJob }) {
  const store = useAppStore()
  const [, go] = useLocation()
  const { job } = open
  const name = open.client?.['name']
  const frozen = job.frozen.at(-1)
  const sheet = frozen === undefined ? undefined : open.sheets.get(frozen.sheet)
  return (
    <>
      <title>{`Bench, ${jobTab(job, name)} · Grainwright`}</title>
      <BenchBar job={job.id} title={jobTitle(job, name)} />
      <main className={look.empty}>
        {sheet === undefined ? (
          <EmptyState
            isPage
            title="Nothing to build yet"
            action={<Link to={`/job/${job.id}/sheet`}>Go to the sheet</Link>}
          >
            The bench builds what a frozen sheet says. Plan the arrow and freeze it first.
          </EmptyState>
        ) : (
          <EmptyState
            isPage
            title="No set is under way"
            action={
              <Button
                kind="primary"
                broad
                onClick={() =>
                  void beginSet(store.getState(), job, sheet).then((saved) => {
                    if (saved) go(`/job/${job.id}/bench`)
                  })
                }
              >
                Start the set
              </Button>
            }
          >
            <span data-label="">
              {sheet.plan.quantity + sheet.plan.spares} arrows on version {frozen?.version} of the sheet.
            </span>
          </EmptyState>
        )}
      </main>
    </>
  )
}
