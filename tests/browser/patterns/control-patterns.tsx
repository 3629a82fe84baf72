import { useState } from 'react'
import { Frame } from '@/ui/app/frame'
import { Page } from '@/ui/app/page'
import { SaveSlot } from '@/ui/app/save-slot'
import { SaveState } from '@/ui/app/save-state'
import { StageBar } from '@/ui/app/stage-bar'
import { Button } from '@/ui/controls/button'
import { ChoiceField } from '@/ui/controls/choice-field'
import { DataTable } from '@/ui/controls/data-table'
import { DayField } from '@/ui/controls/day-field'
import { EmptyState } from '@/ui/controls/empty-state'
import { Notice } from '@/ui/controls/notice'
import type { Pair } from '@/ui/controls/pair-field'
import { PairField } from '@/ui/controls/pair-field'
import { Panel } from '@/ui/controls/panel'
import { QuantityField } from '@/ui/controls/quantity-field'
import { TaskList } from '@/ui/controls/task-list'
import { TextField } from '@/ui/controls/text-field'
import { Figure, FigureList } from '@/ui/figures/figure'
import { Label } from '@/ui/figures/label'
import { speed, weights } from './samples'
import look from './patterns.module.css'

export function ControlPatterns() {
  const [draw, setDraw] = useState<number | undefined>(72)
  const [loose, setLoose] = useState<'release aid' | 'fingers' | undefined>('release aid')
  const [pairs, setPairs] = useState<readonly Pair[]>([
    [452, 268],
    [601, 236.5],
  ])
  const [day, setDay] = useState<string>()
  const [unknown, setUnknown] = useState(true)
  return (
    <SaveSlot
      value={
        <SaveState
          state={{ kind: 'saved', at: '2026-11-25T14:02:00Z' }}
          backup="last backup yesterday, 12 changes since"
          onAgain={() => undefined}
        />
      }
    >
      <Frame>
        <Page
          title="Job 0151 · new call"
          tab="Call"
          about={<Label>11 minutes, 3 open questions</Label>}
          aside={<StageBar job="0151" at="call" />}
        >
          <div className={look.callGrid}>
            <Panel title="Bow">
              <QuantityField
                label="Peak draw weight"
                asked={{ unit: 'lbf', min: 10, max: 150, decimals: 1 }}
                value={draw}
                hint="measured on a bow scale; label says 70"
                onCommit={(entry) => setDraw(entry.value)}
                onClear={() => setDraw(undefined)}
              />
              <QuantityField
                label="Draw length"
                asked={{ unit: 'in', min: 18, max: 36, decimals: 2 }}
                value={undefined}
                hint="grip pivot to string at full draw, plus 1¾"
                unknown={{ said: false, onSay: () => undefined }}
                onCommit={() => undefined}
              />
              <QuantityField
                label="Mark at the rest, full draw"
                asked={{ unit: 'in', min: 15, max: 36, decimals: 2 }}
                value={undefined}
                unknown={{ said: unknown, owed: 'on the measuring sheet, by Friday', onSay: () => setUnknown(true) }}
                onCommit={() => setUnknown(false)}
              />
              <PairField
                label="Chronograph readings"
                name="chronograph"
                columns={[
                  { label: 'Arrow', asked: { unit: 'gr', min: 150, max: 1500, decimals: 0 } },
                  { label: 'Speed', asked: { unit: 'ft/s', min: 80, max: 450, decimals: 1 } },
                ]}
                value={pairs}
                hint="add one more and the band narrows"
                onCommit={setPairs}
              />
              <ChoiceField
                label="Loosed with"
                choices={[
                  { value: 'release aid', label: 'Release aid' },
                  { value: 'fingers', label: 'Fingers' },
                ]}
                value={loose}
                unknown={{ said: false, onSay: () => undefined }}
                onChoose={setLoose}
              />
              <DayField
                label="Travels on"
                value={day}
                today="2026-11-25"
                onCommit={setDay}
                onClear={() => setDay(undefined)}
              />
              <TextField label="What went wrong" value="" long onCommit={() => undefined} />
              <div className={look.notices}>
                <Notice level="look" lead="Present arrow is 27.25 in and he draws 28.5.">
                  Ask where its front sits at full draw.
                </Notice>
                <Notice level="stop" lead="Under 5 gr per pound.">
                  An arrow this light can wreck the bow and hurt the archer. Add weight.
                </Notice>
                <Notice level="note">Bare-shaft tuning on the client’s bow decides.</Notice>
              </div>
            </Panel>
            <div className={look.side}>
              <Panel title="What follows so far" quiet>
                <FigureList>
                  <Figure
                    name="call.weight"
                    label="Finished weight"
                    of={weights}
                    unit="gr"
                    decimals={0}
                    note="the shop’s rule for bison"
                  />
                  <Figure
                    name="call.speed"
                    label="Speed"
                    of={speed}
                    unit="ft/s"
                    decimals={1}
                    note="at the weight asked for"
                  />
                  <Figure
                    name="call.c2c"
                    label="C2C"
                    of={undefined}
                    unit="in"
                    decimals={2}
                    missing="needs the full-draw mark, or the draw length"
                  />
                </FigureList>
              </Panel>
              <Panel title={<Label>Job 0147</Label>} aside={<Button kind="text">All jobs</Button>}>
                <TaskList
                  tasks={[
                    {
                      key: 'call',
                      title: 'Call',
                      to: '/job/1/call',
                      state: '3 open',
                      open: true,
                      note: 'two owed by the client',
                    },
                    { key: 'sheet', title: 'Sheet', to: '/job/1/sheet', state: 'frozen, version 2' },
                    { key: 'bench', title: 'Bench', to: '/job/1/bench', state: 'not begun' },
                  ]}
                />
              </Panel>
              <Panel title="Lots">
                <DataTable
                  caption="Weighed at the shop"
                  columns={[{ head: 'Lot' }, { head: 'n', figures: true }, { head: 'Mean, gr', figures: true }]}
                  rows={[
                    {
                      key: 'a',
                      cells: [<Label key="l">T-31</Label>, <Label key="n">6</Label>, <Label key="m">347.2</Label>],
                    },
                    {
                      key: 'b',
                      cells: [<Label key="l">T-29</Label>, <Label key="n">12</Label>, <Label key="m">344.9</Label>],
                    },
                  ]}
                />
                <EmptyState title="No glue is on the shelf" action={<Button>Add a glue</Button>}>
                  Glues with their cure times; the bench reckons its timers from them.
                </EmptyState>
              </Panel>
            </div>
          </div>
          <div className={look.actions}>
            <Button>Measuring sheet</Button>
            <Button kind="primary">Read back</Button>
          </div>
        </Page>
      </Frame>
    </SaveSlot>
  )
}
