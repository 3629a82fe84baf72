/** The tools of the sheet: one open at a time, each fetched when it is first wanted. */
import type { ComponentType } from 'react'
import { lazy, memo, Suspense, useDeferredValue, useMemo, useState } from 'react'
import { Panel } from '../../controls/panel'
import type { Candidate } from '../compare/candidate'
import look from './sheet-tools.module.css'
import type { ToolProps } from './tool'
import { UnitSwitch } from './unit-switch'

const TOOLS: readonly { readonly name: string; readonly tool: ComponentType<ToolProps> }[] = [
  { name: 'Find parts', tool: lazy(async () => ({ default: (await import('../find/find-parts')).FindParts })) },
  { name: 'What if', tool: lazy(async () => ({ default: (await import('./what-if-tool')).WhatIfTool })) },
  { name: 'Compare', tool: lazy(async () => ({ default: (await import('./compare-tool')).CompareTool })) },
  { name: 'Flight', tool: lazy(async () => ({ default: (await import('./flight-tool')).FlightTool })) },
  { name: 'Envelope', tool: lazy(async () => ({ default: (await import('./envelope-tool')).EnvelopeTool })) },
  { name: 'Law', tool: lazy(async () => ({ default: (await import('./law-tool')).LawTool })) },
  { name: 'Price and stock', tool: lazy(async () => ({ default: (await import('./price-tool')).PriceTool })) },
]

const MOST_KEPT = 2

/** Drawn again only when the sheet has changed. */
export const SheetTools = memo(AllTools)

function AllTools(given: Omit<ToolProps, 'kept' | 'onKeep'>) {
  const [chosen, setChosen] = useState<string>()
  const [kept, setKept] = useState<readonly Candidate[]>([])
  const open = TOOLS.find(({ name }) => name === chosen)
  const Tool = open?.tool
  // A tool follows the sheet a moment later: the figures of the page come first, and the next keystroke before it.
  const late = useDeferredValue(given)
  const tool = useMemo(
    () =>
      Tool === undefined ? null : (
        <Tool
          {...late}
          kept={kept}
          onKeep={(candidate) =>
            setKept((all) => [...all.filter(({ sheet }) => sheet !== candidate.sheet), candidate].slice(-MOST_KEPT))
          }
        />
      ),
    [Tool, late, kept],
  )
  return (
    <div className={look.tools}>
      <ul aria-label="Tools of the sheet" className={look.bar}>
        {TOOLS.map(({ name }) => (
          <li key={name}>
            <button
              type="button"
              className={look.choice}
              aria-expanded={name === chosen}
              onClick={() => setChosen(name === chosen ? undefined : name)}
            >
              {name}
            </button>
          </li>
        ))}
        <li className={look.units}>
          <UnitSwitch />
        </li>
      </ul>
      {open === undefined ? null : (
        <Panel title={open.name} quiet>
          <div className={look.open}>
            <Suspense fallback={null}>{tool}</Suspense>
          </div>
        </Panel>
      )}
    </div>
  )
}
