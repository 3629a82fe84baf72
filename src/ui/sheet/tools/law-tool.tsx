/** The shop's rows for the place and game, each demand beside the sheet's own figure. Guidance, never a verdict. */
import { inGrains } from '../../../core/quantity'
import { lawRows } from '../../../domain/call/law-rows'
import { LawList } from '../../call/law-list'
import { LAW_CAUTION } from '../../words/law-caution'
import look from './sheet-tools.module.css'
import type { ToolProps } from './tool'

export function LawTool({ open, sheet, worked }: ToolProps) {
  const finished = worked?.figures?.finished
  const head = sheet.parts.find(({ part }) => part.kind === 'broadhead')?.part
  const { answers } = open.job
  const width = head?.kind === 'broadhead' ? head.cuttingWidthIn : undefined
  const known =
    width === undefined
      ? answers
      : { ...answers, cuttingWidthIn: { value: width, how: 'told' as const, by: '', at: '' } }
  const rows = lawRows(known, sheet.rules, {
    arrowGr: finished?.ok ? inGrains(finished.value) : null,
    arrowIn: worked?.geometry.shaftFrontIn ?? null,
  })
  if (rows.length > 0) {
    return (
      <div className={look.law}>
        <LawList rows={rows} />
      </div>
    )
  }
  return (
    <p>
      The shop has no row for {sheet.hunt.place === undefined ? 'a place that is not named yet' : 'this place and game'}
      . {LAW_CAUTION}
    </p>
  )
}
