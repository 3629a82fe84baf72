/** Building a past build again: what changed since, what survives; then the rebuild sheet on today's shelf. */
import { useState } from 'react'
import { Link, useLocation } from 'wouter'
import { builtWeightGr } from '../../domain/book/rebuild'
import { codeOf } from '../../domain/records/code'
import { openRebuild } from '../../state/book-actions'
import type { OpenBuild } from '../../state/open-build'
import { Page } from '../app/page'
import type { PageParams } from '../app/routes'
import { useAppStore } from '../app/use-app'
import { Button } from '../controls/button'
import { EmptyState } from '../controls/empty-state'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { Label } from '../figures/label'
import { builtWords } from '../words/book-words'
import look from './book.module.css'
import { TodaysWay } from './todays-way'
import { useBuild } from './use-build'
import { useRebuilt } from './use-rebuilt'
import { WhatSurvives } from './what-survives'

export default function AgainPage({ params }: { params: PageParams }) {
  const build = useBuild(params['build'] ?? '')
  if (build === undefined) return null
  if (build === null) {
    return (
      <Page title="No such build" tab="No such build">
        <EmptyState title="This book has no such build" action={<Link to="/book">Go to the book</Link>} />
      </Page>
    )
  }
  return <AgainOf build={build} />
}

function AgainOf({ build }: { build: OpenBuild }) {
  const store = useAppStore()
  const [, go] = useLocation()
  const { sheet, hash, arrows, asBuilt, survivors } = build
  const built = builtWeightGr(arrows)
  const [quantity, setQuantity] = useState(sheet.plan.quantity)
  const [targetGr, setTargetGr] = useState(built)
  const rebuilt = useRebuilt({ past: sheet, builtGr: targetGr, quantity })
  const [waiting, setWaiting] = useState(false)
  async function open() {
    const { client, answers } = build
    const again = { job: asBuilt.job, asBuilt: hash, sheet, client, answers, quantity, targetGr }
    setWaiting(true)
    const { sheet: today } = await rebuilt.whenKnown
    const id = await openRebuild(store.getState(), again, today.plan)
    setWaiting(false)
    if (id !== null) go(`/job/${id}/sheet`)
  }
  return (
    <Page title={`Build ${codeOf(hash)} again`} tab="Build again" about={<Label>{build.clientName}</Label>}>
      <div className={look.page}>
        <Panel title="What has changed since" quiet>
          <QuantityField
            label="Arrows this time"
            name="quantity"
            asked={{ unit: '1', min: 1, max: 12, decimals: 0, whole: true }}
            value={quantity}
            onCommit={({ value }) => setQuantity(value)}
          />
          <QuantityField
            label="Finished weight to match"
            name="survivors"
            hint={targetGr === built ? 'as built' : <Label>{builtWords(built)}</Label>}
            asked={{ unit: 'gr', min: 200, max: 2000, decimals: 1 }}
            value={targetGr}
            onCommit={({ value }) => setTargetGr(value)}
          />
          <p className={look.after}>
            Another head, another length, other vanes: change them on the sheet, and then and now stand side by side.
          </p>
          <p className={look.offers}>
            <Button kind="primary" onClick={() => void open()}>
              Open the rebuild sheet
            </Button>
            <Status>{waiting ? 'Waiting for today’s way to it.' : ''}</Status>
          </p>
        </Panel>
        {survivors === undefined ? null : (
          <WhatSurvives survivors={survivors} onWeight={setTargetGr} onQuantity={setQuantity} />
        )}
        <TodaysWay rebuilt={rebuilt.known} />
      </div>
    </Page>
  )
}
