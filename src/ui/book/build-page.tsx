/** A build: its versions as a line, plan beside as-built, and every reading of every arrow with who, when and how. */
import { Link } from 'wouter'
import { codeOf } from '../../domain/records/code'
import type { OpenBuild } from '../../state/open-build'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { buttonLook } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { Panel } from '../controls/panel'
import { Label } from '../figures/label'
import { showDayAndYear } from '../words/dates'
import { partKindWord } from '../words/part-kind-words'
import { madeWords, versionName } from '../words/version-words'
import { ArrowPanel } from './arrow-panel'
import look from './book.module.css'
import { PlanBesideBuilt } from './plan-beside-built'
import { useBuild } from './use-build'
import { VersionDifference } from './version-difference'

export default function BuildPage({ params }: { params: PageParams }) {
  const build = useBuild(params['build'] ?? '')
  if (build === undefined) return null
  if (build === null) {
    return (
      <Page title="No such build" tab="No such build">
        <EmptyState title="This book has no such build" action={<Link to="/book">Go to the book</Link>}>
          It may be in another book, or in a backup that is not here yet.
        </EmptyState>
      </Page>
    )
  }
  return <BuildOf build={build} />
}

function BuildOf({ build }: { build: OpenBuild }) {
  const { asBuilt, arrows, sheet, hash, versions, sheets } = build
  const code = codeOf(hash)
  return (
    <Page
      title={`Build ${code}`}
      tab={`Build ${code}`}
      about={
        <Label>
          {build.clientName || 'no client'}, {sheet.hunt.quarry ?? 'no quarry named'}, job {asBuilt.jobCode}
        </Label>
      }
      aside={
        <Link to={`/book/${hash}/again`} className={buttonLook('primary')}>
          Build this again
        </Link>
      }
    >
      <div className={look.page}>
        <Panel title="Versions" quiet>
          <ol className={look.line}>
            {[...sheets, ...versions].map((fact) => (
              <li key={fact.hash} aria-current={fact.hash === hash ? 'true' : undefined}>
                <Version fact={fact} isThis={fact.hash === hash} />
              </li>
            ))}
          </ol>
        </Panel>
        <Panel title="Plan" quiet>
          <p>
            <Label>
              {sheet.plan.targetGr} gr finished, C2C {sheet.plan.c2cIn} in, {sheet.plan.quantity} arrows, fletch{' '}
              {sheet.plan.fletchSide} {sheet.plan.fletchDegrees}°. Started {asBuilt.counts.started}, scrapped{' '}
              {asBuilt.counts.scrapped}, accepted {asBuilt.counts.accepted}.
            </Label>
          </p>
          <ul>
            {sheet.plan.lines.map((line) => {
              const part = sheet.parts.find(({ id }) => id === line.part)?.part
              const lot = sheet.lots.find(({ id }) => id === line.lot)?.lot
              return (
                <li key={line.id}>
                  <Label>
                    {part === undefined ? '' : `${partKindWord(part.kind)}: ${part.name}`}
                    {line.count > 1 ? `, ${line.count} of them` : ''},{' '}
                    {lot === undefined ? 'lot unknown' : `lot ${lot.code}`}
                  </Label>
                </li>
              )
            })}
          </ul>
        </Panel>
        <VersionDifference build={build} />
        <PlanBesideBuilt sheet={sheet} arrows={arrows} />
        {arrows.map((arrow) => (
          <ArrowPanel key={arrow.arrow} arrow={arrow} />
        ))}
        <p>
          <Label>
            Record {code}, made {showDayAndYear(build.fact.at.slice(0, 10))} by {build.fact.by}.
          </Label>{' '}
          <Link to={`/print/build-sheet/${asBuilt.sheet}`}>Print its build sheet</Link>
        </p>
      </div>
    </Page>
  )
}

/** Its name leads to it; who, when and why beside it. */
function Version({ fact, isThis }: { fact: OpenBuild['sheets' | 'versions'][number]; isThis: boolean }) {
  const to = fact.kind === 'sheet' ? `/print/build-sheet/${fact.hash}` : `/book/${fact.hash}`
  return (
    <>
      {isThis ? (
        <b>
          <Label>{versionName(fact)}</Label>
        </b>
      ) : (
        <Link to={to}>
          <Label>{versionName(fact)}</Label>
        </Link>
      )}
      <Label>{madeWords(fact)}</Label>
    </>
  )
}
