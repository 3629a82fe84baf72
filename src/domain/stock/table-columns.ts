/** What a column of a parts table may hold, how its heading tells it, and in which unit its numbers are. */
import { entryDimension } from '../entry/convert-entry'
import type { EntryUnit } from '../entry/unit-names'
import { UNIT_NAMES } from '../entry/unit-names'
import { PART_KINDS } from './part'
import type { PartKind } from './part'
import { PART_FIELDS } from './part-fields'
import type { PartField } from './part-fields'

/** Beside the fields of the kinds. */
export const OWN_COLUMNS = ['kind', 'name', 'price', 'lot', 'pieces'] as const
export type ColumnTarget = (typeof OWN_COLUMNS)[number] | (string & {})

export interface ColumnUse {
  /** Undefined: the column is left out. */
  readonly target: ColumnTarget | undefined
  /** Of a number without a unit of its own; the field's when neither cell nor heading names one. */
  readonly unit?: EntryUnit | undefined
  /** Neither the heading nor anybody has said the unit yet. */
  readonly isUnitAssumed: boolean
}

/** Every field of every kind once. */
export const ALL_FIELDS: ReadonlyMap<string, PartField> = new Map(
  PART_KINDS.flatMap((kind) => PART_FIELDS[kind].map((field) => [field.field, field] as const)),
)

export const fieldOf = (kind: PartKind, target: string): PartField | undefined =>
  PART_FIELDS[kind].find(({ field }) => field === target)

const plain = (text: string) =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .trim()

/** What headings say instead of our own words; common practice, no source [CP]. */
const ALIASES: Readonly<Record<string, ColumnTarget>> = {
  type: 'kind',
  category: 'kind',
  part: 'name',
  description: 'name',
  item: 'name',
  model: 'name',
  weight: 'weightGr',
  mass: 'weightGr',
  tolerance: 'toleranceGr',
  gpi: 'weightPerInchGr',
  spine: 'staticSpineIn',
  od: 'outerDiameterMm',
  'outside diameter': 'outerDiameterMm',
  id: 'innerDiameterMm',
  'inside diameter': 'innerDiameterMm',
  straightness: 'straightnessIn',
  'tip length': 'tipLengthIn',
  sweep: 'sweepIn',
  'cutting diameter': 'cuttingWidthIn',
  width: 'cuttingWidthIn',
  qty: 'pieces',
  quantity: 'pieces',
  stock: 'pieces',
  'on hand': 'pieces',
  'lot code': 'lot',
  batch: 'lot',
  'price each': 'price',
  cost: 'price',
}

/** The unit at the end of a heading: `Length (mm)`, `Length, mm`, `Length [in]`, `Length mm`. */
function unitIn(heading: string): { readonly rest: string; readonly unit: EntryUnit | undefined } {
  const found = /^(.*?)[\s,]*[([]?\s*([^\s()[\],]+)\s*[)\]]?\s*$/.exec(heading.trim())
  const named = found?.[2]?.toLowerCase() ?? ''
  if (found === null || found[1] === '' || !Object.hasOwn(UNIT_NAMES, named)) return { rest: heading, unit: undefined }
  return { rest: found[1]!, unit: UNIT_NAMES[named]![0] }
}

/** @param label what our own pages call a field, so that a table we wrote is read back as it is */
export function guessColumn(heading: string, label: (field: string) => string): ColumnUse {
  const { rest, unit } = unitIn(heading)
  const [whole, bare] = [plain(heading), plain(rest)]
  const labelled = new Map([...ALL_FIELDS.keys()].map((field) => [plain(label(field)), field]))
  const target =
    labelled.get(bare) ??
    labelled.get(whole) ??
    (OWN_COLUMNS as readonly string[]).find((own) => own === whole || own === bare) ??
    ALIASES[whole] ??
    ALIASES[bare] ??
    [...ALL_FIELDS.keys()].find((field) => plain(field) === whole.replaceAll(' ', ''))
  return target === undefined ? { target, isUnitAssumed: false } : columnUse(target, unit)
}

/** A column put to a use by hand, or by its heading. */
export function columnUse(target: ColumnTarget, unit?: EntryUnit): ColumnUse {
  const field = ALL_FIELDS.get(target)
  if (field?.shape !== 'number') return { target, isUnitAssumed: false }
  const fits = unit !== undefined && entryDimension(unit) === entryDimension(field.unit)
  return { target, unit: fits ? unit : field.unit, isUnitAssumed: !fits }
}
