/**
 * What changed between two versions of a build, field by field. Both are first laid out by what a builder calls things: a
 * line by its place in the arrow, an arrow by its number; so that a line moved or typed in anew is not taken for a change.
 */
import type { ArrowBuilt, AsBuilt } from '../bench/built'
import { DATA_POINT_NAMES } from '../bench/data-points'
import { differenceOf } from '../records/difference-of'
import { planFields } from '../sheet/plan'
import type { PlanField } from '../sheet/plan'
import type { Sheet } from '../sheet/sheet'
import type { PartKind } from '../stock/part'

/** `of` says which one: the kind of part, a part's name, a lot's code, a step, the number of an arrow. */
export interface VersionChange {
  readonly area: keyof SheetFields | keyof BuiltFields
  readonly of: string
  /** From the outside in; empty where the one named is the field itself. */
  readonly field: readonly string[]
  /** Absent: there was none. */
  readonly before?: Plain
  /** Absent: there is none any more. */
  readonly after?: Plain
}
export type Plain = string | number | boolean

const PLAN_FIELDS = Object.keys(planFields) as readonly PlanField[]

type Fields = Readonly<Record<string, unknown>>
interface SheetFields {
  readonly plan: Fields
  readonly line: Readonly<Record<string, Fields>>
  readonly hunt: Fields
  readonly bow: Fields
  readonly rules: Fields
  readonly part: Readonly<Record<string, Fields>>
  readonly lot: Readonly<Record<string, Fields>>
  readonly learned: Readonly<Record<string, Fields>>
  readonly step: Readonly<Record<string, Fields>>
  readonly record: Fields
}
interface BuiltFields {
  readonly set: Fields
  readonly arrow: Readonly<Record<string, Fields>>
}

/** @param before, after two frozen sheets of one job */
export const sheetChanges = (before: Sheet, after: Sheet): readonly VersionChange[] =>
  changes(...sharing(sheetFields(before), sheetFields(after)))

/** A part, lot or weighing that only one of them has is told by its line already. */
function sharing(a: SheetFields, b: SheetFields): readonly [SheetFields, SheetFields] {
  const shared = (own: SheetFields, other: SheetFields): SheetFields => {
    const kept = (area: 'part' | 'lot' | 'learned') =>
      Object.fromEntries(Object.entries(own[area]).filter(([name]) => Object.hasOwn(other[area], name)))
    return { ...own, part: kept('part'), lot: kept('lot'), learned: kept('learned') }
  }
  return [shared(a, b), shared(b, a)]
}

export interface Built {
  readonly asBuilt: AsBuilt
  readonly arrows: readonly ArrowBuilt[]
  /** The sheet it was built on. */
  readonly sheet: Sheet
}
export const builtChanges = (before: Built, after: Built): readonly VersionChange[] =>
  changes(builtFields(before), builtFields(after))

function changes(before: object, after: object): readonly VersionChange[] {
  return differenceOf(before, after).flatMap(({ path, ...change }): readonly VersionChange[] => {
    const [area, ...rest] = path.map(String) as [VersionChange['area'], ...string[]]
    const [of, ...field] = NAMED.has(area) ? rest : ['', ...rest]
    return leaves(change.before, change.after).map(({ inside, ...values }) => ({
      area,
      of: of ?? '',
      field: [...field, ...inside],
      ...values,
    }))
  })
}

const NAMED: ReadonlySet<string> = new Set(['line', 'part', 'lot', 'learned', 'step', 'arrow'])

/** A thing that came or went as a whole, field by field. */
function leaves(
  before: unknown,
  after: unknown,
): readonly { inside: readonly string[]; before?: Plain; after?: Plain }[] {
  const whole = [before, after].find((each) => typeof each === 'object' && each !== null)
  if (whole === undefined) {
    return [{ inside: [], ...oneSide('before', before as Plain), ...oneSide('after', after as Plain) }]
  }
  const side = before === undefined ? 'after' : 'before'
  return Object.entries(whole as Fields).flatMap(([key, value]) =>
    leaves(side === 'before' ? value : undefined, side === 'after' ? value : undefined).map((leaf) => ({
      ...leaf,
      inside: [key, ...leaf.inside],
    })),
  )
}
const oneSide = (key: 'before' | 'after', value: Plain | undefined) => (value === undefined ? {} : { [key]: value })

function sheetFields(sheet: Sheet): SheetFields {
  const parts = new Map(sheet.parts.map(({ id, part }) => [id, part]))
  const { route: _, scales, places, quarry, builders, jigs, ...rules } = sheet.rules
  const { chronograph, forceDraw, ...bow } = sheet.bow
  const named = <T>(of: readonly T[], name: (each: T) => string, fields: (each: T) => Fields) =>
    Object.fromEntries(of.map((each) => [name(each), fields(each)]))
  return {
    plan: Object.fromEntries(
      PLAN_FIELDS.flatMap((field) => (sheet.plan[field] === undefined ? [] : [[field, sheet.plan[field]]])),
    ),
    line: linesByKind(sheet),
    hunt: sheet.hunt,
    bow: {
      ...bow,
      chronograph: chronograph.map(({ arrowGr, speedFps }) => `${arrowGr} gr ${speedFps} ft/s`).join('; '),
      forceDraw: forceDraw.map(({ drawIn, forceLb }) => `${drawIn} in ${forceLb} lb`).join('; '),
    },
    rules: {
      ...rules,
      builders: builders.join(', '),
      jigs: jigs.join(', '),
      scales: named(
        scales,
        ({ name }) => name,
        ({ name: _name, ...rest }) => rest,
      ),
      quarry: named(
        quarry,
        ({ name }) => name,
        ({ name: _name, ...rest }) => rest,
      ),
      places: named(
        places,
        ({ place, game, instrument }) => `${place}, ${game}, ${instrument}`,
        ({ note: _note, ...rest }) => rest,
      ),
    },
    part: named(
      sheet.parts,
      ({ part }) => part.name,
      ({ part: { alternates: _alternates, ...part } }) => part,
    ),
    lot: named(
      sheet.lots,
      ({ lot }) => lot.code,
      ({ lot: { numbered: _numbered, part: _part, ...lot } }) => lot,
    ),
    learned: Object.fromEntries(
      sheet.learned.map(({ subject, what, weighings }) => [
        `${parts.get(subject)?.name ?? sheet.lots.find(({ id }) => id === subject)?.lot.code ?? ''} ${what}`,
        { weighings: weighings.length },
      ]),
    ),
    step: named(
      sheet.route,
      ({ key }) => key,
      ({ key: _key, points, optional, ...rest }) => ({
        ...rest,
        points: points.join(', '),
        optional: optional.join(', '),
      }),
    ),
    record: { formulas: sheet.formulas, client: sheet.client ?? '' },
  }
}

/** One of a kind stands under its kind; a second, by name, under *glue 2*: the order of the lines says nothing. */
function linesByKind({ plan, parts, lots }: Sheet): Readonly<Record<string, Fields>> {
  const seen = new Map<PartKind, number>()
  const named = plan.lines.flatMap((line) => {
    const record = parts.find(({ id }) => id === line.part)?.part
    return record === undefined ? [] : [{ line, record }]
  })
  return Object.fromEntries(
    named
      .toSorted((a, b) => (a.record.name < b.record.name ? -1 : 1))
      .map(({ line: { lot, count, no }, record }): readonly [string, Fields] => {
        const nth = (seen.get(record.kind) ?? 0) + 1
        seen.set(record.kind, nth)
        const code = lots.find(({ id }) => id === lot)?.lot.code ?? 'unknown'
        const fields = { part: record.name, lot: code, count, ...(no === undefined ? {} : { no }) }
        return [nth === 1 ? record.kind : `${record.kind} ${nth}`, fields]
      }),
  )
}

function builtFields({ asBuilt, arrows, sheet }: Built): BuiltFields {
  return {
    set: {
      sheet: sheet.version,
      ...asBuilt.counts,
      builders: asBuilt.builders.join(', '),
      signedOffBy: asBuilt.signedOffBy,
    },
    arrow: Object.fromEntries(arrows.map((arrow) => [`${arrow.no}`, arrowFields(arrow, sheet)])),
  }
}

function arrowFields({ outcome, cause, readings, fitted, deviations }: ArrowBuilt, sheet: Sheet): Fields {
  const read = DATA_POINT_NAMES.flatMap((point): readonly [string, number][] => {
    const kept = readings.findLast((each) => each.reading.point === point && each.withdrawn === null)
    return kept === undefined ? [] : [[point, kept.reading.value]]
  })
  const parts = fitted.flatMap(({ part, lot, no, copy }): readonly [string, string][] => {
    const record = copy?.part ?? sheet.parts.find(({ id }) => id === part)?.part
    const code = copy?.lot?.code ?? sheet.lots.find(({ id }) => id === lot)?.lot.code ?? 'unknown'
    return record === undefined
      ? []
      : [[record.kind, `${record.name}, lot ${code}${no === undefined ? '' : `, ${no}`}`]]
  })
  return {
    outcome,
    ...(cause === undefined ? {} : { cause }),
    read: Object.fromEntries(read),
    fitted: Object.fromEntries(parts),
    deviations: deviations.length,
  }
}
