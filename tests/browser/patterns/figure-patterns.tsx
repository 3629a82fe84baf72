import { useState } from 'react'
import { grains, inches, inGrains, ratio } from '@/core/quantity'
import { Frame } from '@/ui/app/frame'
import { Page } from '@/ui/app/page'
import { StageBar } from '@/ui/app/stage-bar'
import { Panel } from '@/ui/controls/panel'
import { Clearance } from '@/ui/figures/clearance/clearance'
import { DotPlot } from '@/ui/figures/charts/dot-plot'
import { LineChart } from '@/ui/figures/charts/line-chart'
import { Elevation } from '@/ui/figures/elevation/elevation'
import { Figure, FigureList } from '@/ui/figures/figure'
import { Label } from '@/ui/figures/label'
import { Landing } from '@/ui/figures/landing/landing'
import { SideView } from '@/ui/figures/side-view/side-view'
import { around, CLEARANCE_AT, PIECES, speed, weights } from './samples'
import look from './patterns.module.css'

const ROWS = [
  ['head', 'Head', 'two-blade 250, h-14', '250.0', '± 1.0', 'catalogue'],
  ['collar', 'Collar', 'ring 42', '42.0', '± 0.3', '12 weighed'],
  ['insert', 'Insert', 'steel post 158, to 132 at most', '158.0', '± 0.8', 'catalogue'],
  ['shaft', 'Shaft', 'Tern 200, lot T-31, C2C 28.00', '347.2', '± 2.5', '4 of 6 read'],
  ['wrap', 'Wrap', 'none', '', '', ''],
  ['vanes', 'Vanes', 'broad 2.6, four, right 3°', '28.8', '± 0.4', '40 weighed'],
  ['nock', 'Nock', 'clip 11', '11.0', '± 0.2', '24 weighed'],
  ['glue', 'Glue', 'vanes 1.2, post 1.8, collar 0.8', '3.8', '± 0.5', '31 joints'],
] as const

const steps = Array.from({ length: 21 }, (_, i) => 300 + i * 20)

export function FigurePatterns() {
  const [chosen, setChosen] = useState<string | null>('insert')
  return (
    <Frame>
      <Page
        title="Job 0147 · Oduya · bison, six arrows"
        tab="Sheet"
        about={<Label>sheet, version 2, not frozen</Label>}
        aside={<StageBar job="0147" at="sheet" />}
      >
        <div className={look.sheetGrid}>
          <Panel title="The arrow" quiet>
            <Elevation
              name="sheet.elevation"
              pieces={PIECES}
              chosen={chosen}
              onChoose={setChosen}
              rows={ROWS.map(([id, label, part, weight, spread, from]) => ({
                id,
                label,
                content: (
                  <div className={look.line} data-label="">
                    <span>{part}</span>
                    <span className={look.weight}>{weight}</span>
                    <span className={look.soft}>{spread}</span>
                    <span className={look.soft}>{from}</span>
                  </div>
                ),
              }))}
            />
          </Panel>
          <div className={look.side}>
            <Panel title={<Label>Landing on 832.0 gr, 582.0 less head</Label>} quiet>
              <Landing
                name="sheet.landing"
                target={grains(832)}
                tolerance={grains(0.5)}
                chosen="n4"
                rows={[
                  { key: 'plan', label: 'planned', weight: { kind: 'forecast', value: around(840.8, 3.2) } },
                  { key: 'n1', label: 'no. 1', weight: { kind: 'read', value: grains(832.1) } },
                  { key: 'n2', label: 'no. 2', weight: { kind: 'forecast', value: around(838.6, 1.6) } },
                  { key: 'n3', label: 'no. 3', weight: { kind: 'forecast', value: around(830.9, 1.6) }, look: true },
                  { key: 'n4', label: 'no. 4', weight: { kind: 'forecast', value: around(841.2, 1.6) } },
                  { key: 'n5', label: 'no. 5', weight: { kind: 'forecast', value: around(840.8, 3) } },
                ]}
              />
            </Panel>
            <Panel title="At full draw" quiet>
              <Clearance
                name="sheet.clearance"
                pieces={PIECES}
                {...CLEARANCE_AT}
                spans={[
                  {
                    key: 'front',
                    label: 'shaft front ahead of the rest',
                    drawn: { fromIn: 27.25, toIn: 28.55 },
                    of: inches(1.3),
                    least: inches(1),
                  },
                  {
                    key: 'blades',
                    label: 'blades ahead of the riser',
                    drawn: { fromIn: 28.15, toIn: 28.85 },
                    of: inches(0.7),
                    least: inches(0.75),
                  },
                ]}
                note="estimated from the draw length; a nocked arrow marked at the rest would settle it"
              />
            </Panel>
            <Panel title="Figures" quiet>
              <FigureList columns={2}>
                <Figure name="a" label="Speed" of={speed} unit="ft/s" decimals={1} note="beyond the arrows measured" />
                <Figure name="b" label="Finished weight" of={weights} unit="gr" decimals={0} />
                <Figure name="c" label="Column reserve" of={undefined} unit="1" decimals={2} missing="needs the C2C" />
                <Figure name="d" label="Speed again" of={speed} unit="ft/s" decimals={1} />
              </FigureList>
            </Panel>
            <Panel title="Set" quiet>
              <DotPlot
                name="set"
                label="Finished weight"
                sentence="Six arrows within 0.9 gr; one is light."
                unit="gr"
                decimals={1}
                wash={{ low: grains(824.5), middle: grains(825), high: grains(825.5) }}
                dots={[825, 825.1, 825.1, 825.4, 824.9, 824.2].map((n, i) => ({
                  key: `n${i}`,
                  label: `no. ${i + 1}`,
                  value: grains(n),
                  look: n < 824.5,
                }))}
              />
            </Panel>
            <Panel title="What if" quiet>
              <LineChart
                name="whatif"
                sentence="The reserve leaves its band above 560 gr in front."
                x={{ label: 'Weight in front', unit: 'gr', decimals: 0 }}
                y={{ label: 'Column reserve', unit: '1', decimals: 2 }}
                wash={{ low: ratio(0.75), high: ratio(1.3) }}
                at={grains(440)}
                series={[
                  {
                    key: 'now',
                    label: '28.0 in',
                    points: steps.map((n) => ({
                      x: grains(n),
                      y: ratio(460 / (n + 60)),
                      low: ratio(430 / (n + 60)),
                      high: ratio(490 / (n + 60)),
                    })),
                  },
                  {
                    key: 'long',
                    label: '29.0 in',
                    points: steps.map((n) => ({
                      x: grains(n),
                      y: ratio((430 - inGrains(grains(n)) * 0.05) / (n + 60)),
                    })),
                  },
                ]}
              />
            </Panel>
            <Panel title="Side view" quiet>
              <SideView
                name="side"
                pieces={PIECES}
                spans={[
                  { key: 'c2c', label: 'C2C', fromIn: 0.55, toIn: 28.55, of: inches(28) },
                  { key: 'balance', label: 'balance point', fromIn: 0, toIn: 21.7, of: inches(21.7) },
                  { key: 'all', label: 'overall', fromIn: 0, toIn: 30.8, of: inches(30.8) },
                ]}
              />
            </Panel>
          </div>
        </div>
      </Page>
    </Frame>
  )
}
