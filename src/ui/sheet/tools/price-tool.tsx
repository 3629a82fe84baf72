/** What the set costs by the shop's prices, and whether the shelf has enough for it, line by line. */
import { priceOf } from '../../../domain/call/price-lines'
import { PriceTable } from '../../call/price-table'
import { useApp } from '../../app/use-app'
import { DataTable } from '../../controls/data-table'
import { Label } from '../../figures/label'
import { STOCK_WORDS } from '../../words/tool-words'
import look from './sheet-tools.module.css'
import type { ToolProps } from './tool'

export function PriceTool({ open, sheet }: ToolProps) {
  const lotViews = useApp((s) => s.shelf.lotViews)
  const { quantity, spares, lines } = sheet.plan
  const told = (value: number) => ({ value, how: 'told' as const, by: '', at: '' })
  const price = priceOf({ ...open.job.answers, quantity: told(quantity), spares: told(spares) }, sheet.rules)
  return (
    <div className={look.price}>
      <PriceTable price={price} />
      <DataTable
        caption="Stock for the set"
        columns={[
          { head: 'Part' },
          { head: 'Needed', figures: true },
          { head: 'Free', figures: true },
          { head: 'Is it enough' },
        ]}
        rows={lines.flatMap((line) => {
          const part = sheet.parts.find(({ id }) => id === line.part)?.part
          if (part === undefined || part.kind === 'glue') return []
          const view = line.lot === null ? undefined : lotViews.get(line.lot)
          const lot = sheet.lots.find(({ id }) => id === line.lot)?.lot.code
          const needed = line.count * (quantity + spares)
          const free = view === undefined ? undefined : view.onHand - view.reserved
          return [
            {
              key: line.id,
              cells: [
                <Label key="part">{lot === undefined ? part.name : `${part.name}, lot ${lot}`}</Label>,
                <Label key="needed">{needed}</Label>,
                <Label key="free">{free ?? '–'}</Label>,
                <Label key="enough">
                  {free === undefined
                    ? STOCK_WORDS.lotUnknown
                    : free < needed
                      ? STOCK_WORDS.notEnough
                      : STOCK_WORDS.enough}
                </Label>,
              ],
            },
          ]
        })}
      />
    </div>
  )
}
