/** How far draw weight, draw length and head weight may drift, each alone, and what is reached first. */
import type { Envelope, EnvelopeSide } from '../../../core/envelope/envelope'
import type { Outcome } from '../../../core/outcome'
import type { Dimension, UnitOf } from '../../../core/quantity'
import type { SheetEnvelope, SheetLimit } from '../../../domain/sheet/sheet-envelope'
import { DataTable } from '../../controls/data-table'
import { Label } from '../../figures/label'
import { Value } from '../../figures/value'
import { ShowWorking } from '../../figures/working/show-working'
import { ENVELOPE_WORDS, envelopeEndWords } from '../../words/tool-words'

interface EnvelopeTableProps {
  /** The figures are called after it: `sheet.envelope`. */
  name: string
  within: SheetEnvelope
  caption: string
  captionUnseen?: boolean
}

export const EnvelopeTable = ({ name, within, caption, captionUnseen = false }: EnvelopeTableProps) => (
  <DataTable
    caption={caption}
    captionUnseen={captionUnseen}
    blocks
    columns={[
      { head: 'What may move' },
      { head: 'May fall by', figures: true },
      { head: 'Then' },
      { head: 'May rise by', figures: true },
      { head: 'Then' },
    ]}
    rows={[
      rowOf(`${name}.drawWeight`, 'Draw weight', within.drawWeight, 'lbf', 1),
      rowOf(`${name}.drawLength`, 'Draw length', within.drawLength, 'in', 2),
      rowOf(`${name}.headWeight`, 'Head weight', within.headWeight, 'gr', 0),
    ]}
  />
)

function rowOf<D extends Dimension>(
  name: string,
  label: string,
  of: Outcome<Envelope<D, SheetLimit>> | undefined,
  unit: UnitOf<D>,
  decimals: number,
) {
  if (of?.ok !== true) {
    return {
      key: name,
      cells: [<Label key="what">{label}</Label>, '–', of === undefined ? ENVELOPE_WORDS.missing : '', '–', ''],
    }
  }
  const side = (which: 'down' | 'up', { change }: EnvelopeSide<D, SheetLimit>) => (
    <Value key={which} name={`${name}.${which}`} of={change} unit={unit} decimals={decimals} />
  )
  const { down, up } = of.value
  return {
    key: name,
    cells: [
      <ShowWorking key="what" name={name} label={label} derivation={of.derivation} />,
      side('down', down),
      <Label key="downEnd">{envelopeEndWords(down.end)}</Label>,
      side('up', up),
      <Label key="upEnd">{envelopeEndWords(up.end)}</Label>,
    ],
  }
}
