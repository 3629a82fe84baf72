/** Arrows side by side: their parts, then their figures, each opening to its working. What differs is set bold. */
import type { ReactNode } from 'react'
import { difference, inches } from '../../../core/quantity'
import { AXIS_NAMES } from '../../../domain/search/axes'
import { partsCents, partsInPlaces } from '../../../domain/sheet/parts-in-places'
import type { PartInPlace } from '../../../domain/sheet/parts-in-places'
import type { SheetFigures } from '../../../domain/sheet/sheet-figures'
import { DataTable } from '../../controls/data-table'
import { Label } from '../../figures/label'
import { Value } from '../../figures/value'
import { WorkingValue } from '../../figures/working/working-value'
import { showMoney } from '../../words/call/price-words'
import { axisWord, partInPlaceWords } from '../../words/compare-words'
import type { Candidate } from './candidate'
import look from './candidate-table.module.css'
import { useWorked } from './use-worked'

interface CandidateTableProps {
  caption: string
  candidates: readonly Candidate[]
  /** Under each candidate's title: what can be done with it. */
  actions?: (candidate: Candidate, at: number) => ReactNode
  /** Rows that only this table has, after the figures. */
  rows?: readonly { readonly key: string; readonly label: string; readonly cell: (at: number) => ReactNode }[]
}

export function CandidateTable({ caption, candidates, actions, rows = [] }: CandidateTableProps) {
  const worked = useWorked(candidates.map(({ sheet }) => sheet))
  const places = candidates.map(({ sheet }) => partsInPlaces(sheet))
  const axes = AXIS_NAMES.filter((axis) => places.some((parts) => parts.has(axis)))
  return (
    <DataTable
      caption={caption}
      captionUnseen
      columns={[
        { head: 'Of the arrow' },
        ...candidates.map((candidate, at) => ({
          head: (
            <span className={look.head}>
              <b>{candidate.title}</b>
              {actions?.(candidate, at)}
            </span>
          ),
        })),
      ]}
      rows={[
        ...axes.map((axis) => {
          const told = places.map((parts) => partInPlaceWords(parts.get(axis) ?? NOTHING))
          const isSame = new Set(told).size === 1
          return {
            key: axis,
            cells: [
              <Label key="axis">{axisWord(axis)}</Label>,
              ...told.map((words, at) => (
                <span key={candidates[at]!.key} className={isSame ? look.same : look.differs}>
                  <Label>{words}</Label>
                </span>
              )),
            ],
          }
        }),
        ...FIGURES.map(({ key, label, cell }) => ({
          key,
          cells: [
            <Label key="label">{label}</Label>,
            ...candidates.map((candidate, at) => {
              const own = worked[at]
              return (
                <span key={candidate.key}>
                  {own === undefined ? '…' : own === null ? 'open' : cell(own, `${candidate.key}.${key}`, label)}
                </span>
              )
            }),
          ],
        })),
        {
          key: 'parts',
          cells: [
            <Label key="label">Parts of one arrow</Label>,
            ...candidates.map(({ key, sheet }) => (
              <Label key={key}>{showMoney(partsCents(sheet), sheet.rules.currency)}</Label>
            )),
          ],
        },
        ...rows.map(({ key, label, cell }) => ({
          key,
          cells: [
            <Label key="label">{label}</Label>,
            ...candidates.map((each, at) => <span key={each.key}>{cell(at)}</span>),
          ],
        })),
      ]}
    />
  )
}

const NOTHING: readonly PartInPlace[] = []

interface FigureRow {
  readonly key: string
  readonly label: string
  readonly cell: (worked: SheetFigures, name: string, label: string) => ReactNode
}

const FIGURES: readonly FigureRow[] = [
  {
    key: 'c2c',
    label: 'C2C',
    cell: ({ geometry }, name) => (
      <Value
        name={name}
        of={difference(inches(geometry.shaftFrontIn), inches(geometry.shaftRearIn))}
        unit="in"
        decimals={2}
      />
    ),
  },
  {
    key: 'forecast',
    label: 'Before trim',
    cell: ({ forecast }, name, label) => (
      <WorkingValue
        name={name}
        label={label}
        of={forecast.ok ? { ...forecast, value: forecast.value.total } : forecast}
        unit="gr"
        decimals={1}
      />
    ),
  },
  {
    key: 'trim',
    label: 'To trim',
    cell: ({ trim }, name, label) => <WorkingValue name={name} label={label} of={trim} unit="gr" decimals={1} />,
  },
  {
    key: 'chance',
    label: 'Chance for the set',
    cell: ({ chanceAll }, name, label) => (
      <WorkingValue
        name={name}
        label={label}
        of={chanceAll?.ok ? { ...chanceAll, value: chanceAll.value.joint } : chanceAll}
        unit="%"
        decimals={0}
      />
    ),
  },
  {
    key: 'finished',
    label: 'Finished, once trimmed',
    cell: ({ figures }, name, label) => (
      <WorkingValue name={name} label={label} of={figures?.finished} unit="gr" decimals={1} />
    ),
  },
  {
    key: 'foc',
    label: 'FOC',
    cell: ({ figures }, name, label) => (
      <WorkingValue name={name} label={label} of={figures?.foc} unit="%" decimals={1} />
    ),
  },
  {
    key: 'columnReserve',
    label: 'Column reserve',
    cell: ({ figures }, name, label) => (
      <WorkingValue name={name} label={label} of={figures?.columnReserve} unit="1" decimals={2} />
    ),
  },
  {
    key: 'speed',
    label: 'Speed',
    cell: ({ figures }, name, label) => (
      <WorkingValue name={name} label={label} of={figures?.speed} unit="ft/s" decimals={1} />
    ),
  },
  {
    key: 'momentum',
    label: 'Momentum',
    cell: ({ figures }, name, label) => (
      <WorkingValue name={name} label={label} of={figures?.momentum} unit="slug·ft/s" decimals={3} />
    ),
  },
]
