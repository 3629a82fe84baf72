/** How far draw weight, draw length and head weight may drift from what the sheet stands on, and what is reached first. */
import { useMemo } from 'react'
import { sheetEnvelope } from '../../../domain/sheet/sheet-envelope'
import { FindingList } from '../../controls/finding-list'
import { ENVELOPE_WORDS } from '../../words/tool-words'
import { EnvelopeTable } from './envelope-table'
import type { ToolProps } from './tool'

export function EnvelopeTool({ sheet, worked, cut }: ToolProps) {
  const within = useMemo(
    () => (worked === undefined ? undefined : sheetEnvelope(sheet, worked, cut)),
    [sheet, worked, cut],
  )
  if (within === undefined) return <p>{ENVELOPE_WORDS.nothing}</p>
  const { drawWeight, drawLength, headWeight } = within
  const findings = [drawWeight, drawLength, headWeight].flatMap((each) => each?.findings ?? [])
  return (
    <>
      <EnvelopeTable name="sheet.envelope" within={within} caption="Envelope" captionUnseen />
      <FindingList findings={findings} />
      <p>{ENVELOPE_WORDS.note}</p>
    </>
  )
}
