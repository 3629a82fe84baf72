/** What the law of a place asks, as it was read, with instrument and date. Guidance only; every row is the shop's to edit. */
import { useState } from 'react'
import type { Rules } from '../../domain/shop/rules'
import { readPlaces } from '../../domain/shop/read-places'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { DataTable } from '../controls/data-table'
import { DayField } from '../controls/day-field'
import { Dialog } from '../controls/dialog'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { Status } from '../controls/status'
import { TextField } from '../controls/text-field'
import { Label } from '../figures/label'
import { LAW_CAUTION } from '../words/law-caution'
import { placeFigures } from '../words/shop-words'
import look from './shop.module.css'

type Row = Rules['places'][number]

interface PlacesPanelProps {
  places: readonly Row[]
  onPlaces: (places: Row[]) => void
}

const isAlike = (a: Row, b: Row) => a.place === b.place && a.game === b.game && a.instrument === b.instrument

export function PlacesPanel({ places, onPlaces }: PlacesPanelProps) {
  const [edited, setEdited] = useState<{ at: number; row: Row }>()
  const today = useApp((s) => s.now)().slice(0, 10)
  const missing = readPlaces().filter((row) => !places.some((each) => isAlike(each, row)))
  const keep = (at: number, row: Row) =>
    onPlaces(at < places.length ? places.map((each, i) => (i === at ? row : each)) : [...places, row])
  return (
    <Panel title="Place rules" quiet>
      <p>{LAW_CAUTION}</p>
      {places.length === 0 ? null : (
        <DataTable
          caption="Rows as they were read"
          captionUnseen
          columns={[
            { head: 'Place' },
            { head: 'Game' },
            { head: 'Asks at least' },
            { head: 'Instrument' },
            { head: 'Read on' },
            { head: 'Where it is wrong' },
          ]}
          rows={places.map((row, at) => ({
            key: String(at),
            cells: [
              <Label key="p">{row.place}</Label>,
              <Label key="g">{row.game}</Label>,
              <Label key="f">{placeFigures(row)}</Label>,
              <Label key="i">{row.instrument}</Label>,
              <Label key="r">{row.readOn}</Label>,
              <Button key="e" kind="text" onClick={() => setEdited({ at, row })}>
                Change
                <span className="unseen" data-label="">
                  {' '}
                  {row.place}, {row.game}
                </span>
              </Button>,
            ],
          }))}
        />
      )}
      <p className={look.actions}>
        <Button
          onClick={() =>
            setEdited({ at: places.length, row: { place: '', game: 'any', instrument: '', readOn: today } })
          }
        >
          Add a row
        </Button>
        {missing.length === 0 ? null : (
          <Button onClick={() => onPlaces([...places, ...missing])}>
            <Label>Take over {missing.length} rows that were read</Label>
          </Button>
        )}
      </p>
      {edited === undefined ? null : (
        <EditRow
          row={edited.row}
          today={today}
          onKeep={(row) => {
            keep(edited.at, row)
            setEdited(undefined)
          }}
          onRemove={
            edited.at < places.length
              ? () => {
                  onPlaces(places.filter((_, i) => i !== edited.at))
                  setEdited(undefined)
                }
              : undefined
          }
          onClose={() => setEdited(undefined)}
        />
      )}
    </Panel>
  )
}

const FIGURES = [
  ['leastDrawWeightLb', 'Draw weight', { unit: 'lbf', min: 0, max: 200, decimals: 0 }],
  ['leastArrowGr', 'Arrow weight', { unit: 'gr', min: 0, max: 2000, decimals: 0 }],
  ['leastArrowPerLbGr', 'Grains per pound', { unit: 'gr/lb', min: 0, max: 30, decimals: 1 }],
  ['leastArrowLengthIn', 'Arrow length', { unit: 'in', min: 0, max: 40, decimals: 1 }],
  ['leastHeadWidthIn', 'Broadhead width', { unit: 'in', min: 0, max: 5, decimals: 3 }],
] as const

interface EditRowProps {
  row: Row
  today: string
  onKeep: (row: Row) => void
  onRemove: (() => void) | undefined
  onClose: () => void
}

function EditRow({ row: before, today, onKeep, onRemove, onClose }: EditRowProps) {
  const [row, setRow] = useState<Row>(before)
  const [said, setSaid] = useState('')
  const set = (change: Partial<Row>) => setRow((now) => ({ ...now, ...change }))
  return (
    <Dialog
      title="A rule of a place"
      onClose={onClose}
      actions={
        <>
          <Button
            kind="primary"
            onClick={() =>
              row.place === '' || row.instrument === ''
                ? setSaid('A row needs its place and the instrument it was read in.')
                : onKeep(row)
            }
          >
            Keep
          </Button>
          {onRemove === undefined ? null : <Button onClick={onRemove}>Take the row off</Button>}
          <Button onClick={onClose}>Cancel</Button>
        </>
      }
    >
      <TextField
        label="Place"
        value={row.place}
        onText={(place) => set({ place })}
        onCommit={(place) => set({ place })}
      />
      <TextField
        label="Game"
        value={row.game}
        hint="any, or names"
        onText={(game) => set({ game })}
        onCommit={(game) => set({ game })}
      />
      <TextField
        label="Instrument"
        value={row.instrument}
        hint="law, code, section"
        onText={(instrument) => set({ instrument })}
        onCommit={(instrument) => set({ instrument })}
      />
      <DayField label="Read on" value={row.readOn} today={today} onCommit={(readOn) => set({ readOn })} />
      {FIGURES.map(([key, label, asked]) => (
        <QuantityField
          key={key}
          label={`${label}, at least`}
          asked={asked}
          value={row[key]}
          onText={(entry) => {
            if (entry.kind === 'number') set({ [key]: entry.value })
          }}
          onCommit={({ value }) => set({ [key]: value })}
          onClear={() =>
            setRow((now) => {
              const { [key]: _, ...rest } = now
              return rest as Row
            })
          }
        />
      ))}
      <TextField
        label="Note"
        value={row.note ?? ''}
        onText={(note) => set({ note })}
        onCommit={(note) => set({ note })}
      />
      <Status>{said}</Status>
    </Dialog>
  )
}
