import { describe, expect, it } from 'vitest'
import { DEMO_PARTS } from '@/demo/demo-parts'
import { csvRow } from '@/domain/records/csv'
import { readCsv } from '@/domain/records/read-csv'
import { entriesFromPart } from '@/domain/stock/part-fields'
import type { Part, PartKind } from '@/domain/stock/part'
import { cellOf, readPartTable } from '@/domain/stock/read-part-table'
import type { TableRow } from '@/domain/stock/read-part-table'
import { ALL_FIELDS, guessColumn } from '@/domain/stock/table-columns'
import { columnWord, rowProblemWords } from '@/ui/words/part-table-words'
import { writtenUnit } from '@/ui/words/unit-words'

function read(text: string, more: { kind?: PartKind; shelf?: readonly Part[] } = {}): readonly TableRow[] {
  const table = readCsv(text)
  if (table.kind !== 'rows') throw new Error('no table')
  const [head, ...rows] = table.rows
  const columns = head!.cells.map((heading) => guessColumn(heading, columnWord))
  const work = readPartTable(rows, { columns, kind: more.kind, shelf: more.shelf ?? [] })
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}
const wordsOf = (row: TableRow | undefined) =>
  row?.kind === 'problems' ? row.problems.map(rowProblemWords).join(' ') : row?.kind

const HEAD = 'Kind;Part;Weight (g);Tolerance;Length, mm;Height;Price;Qty;Lot'

describe('a table of parts', () => {
  it('is read with decimal commas, quotes, and the units of its headings and cells', () => {
    const [row] = read(`${HEAD}\nvane;"Vane, ""broad""";0,467;0,2;66;14 mm;$0,90;200;V-7\n`)
    if (row?.kind !== 'new' || row.part.kind !== 'vane') throw new Error(wordsOf(row))
    expect(row.part.name).toBe('Vane, "broad"')
    expect(row.part.weightGr).toBeCloseTo(0.467 / 0.064_798_91, 9) // 64.79891 mg to the grain [SP811]
    expect(row.part.lengthIn).toBeCloseTo(66 / 25.4, 12)
    expect(row.part.heightIn).toBeCloseTo(14 / 25.4, 12)
    expect([row.part.priceCents, row.part.toleranceGr]).toEqual([90, 0.2])
    expect(row.lot).toEqual({ code: 'V-7', pieces: 200 })
  })

  it.each([
    ['winglet;A;0,4;;66;0.5;;;', 'Kind: “winglet” is none of'],
    ['vane;;0,4;;66;0.5;;;', 'Name: nothing entered'],
    ['vane;A;heavy;;66;0.5;;;', 'Catalogue weight, each'],
    ['vane;A;0,4 lb/ft;;66;0.5;;;', 'Catalogue weight, each'],
    ['vane;A;0,4;;;0.5;;;', 'Length: nothing entered yet'],
    ['vane;A;0,4;;66;0.5;free;;', 'Price, each'],
    ['vane;A;0,4;;66;0.5;;many;', 'Pieces received'],
    ['vane;A;0,4;;9999;0.5;;;', 'Length'],
  ])('says in words what is wrong with %s', (line, words) => {
    const rows = read(`${HEAD}\n${line}\n`)
    expect(rows).toHaveLength(1)
    expect(wordsOf(rows[0])).toContain(words)
  })

  it('holds a shaft’s weight, where the table gives it, against its weight per inch and length', () => {
    const head =
      'Kind,Name,Weight (gr),Weight per inch (gr/in),Static spine,Outer diameter (mm),Inner diameter (mm),Raw length (in)'
    const row = (gr: string) => wordsOf(read(`${head}\nshaft,S,${gr},11.8,200,7.2,5.28,32\n`)[0])
    expect(row('377.6')).toBe('new')
    expect(row('398')).toContain('398.0 gr is not 11.80 gr/in over 32.00 in, which is 377.6 gr')
  })

  it('asks where a number has two readings that both fit, instead of picking one', () => {
    const [row] = read('Kind,Name,Weight (gr),Length,Diameter\nfield point,FP,"1,000",1,8.7', {})
    expect(row?.kind).toBe('problems')
  })

  it('holds a part that is on two lines, that is on the shelf, and that is there with other figures', () => {
    const [first] = read(`${HEAD}\nvane;A;0,4;;66;0.5;;;\n`)
    if (first?.kind !== 'new') throw new Error('no part')
    const rows = read(
      `${HEAD}\nvane;A;0,4;;66;0.5;;;\nvane;B;0,4;;66;0.5;;;\nVane;b ;0,5;;66;0.5;;;\nvane;C;0,5;;66;0.5;;;\n`,
      {
        shelf: [first.part, { ...first.part, name: 'C' }],
      },
    )
    expect(rows.map(({ kind }) => kind)).toEqual(['there', 'new', 'problems', 'problems'])
    expect(wordsOf(rows[2])).toContain('stand on line 3')
    expect(wordsOf(rows[3])).toContain('with other figures')
  })

  it('takes the kind that was chosen where no column says it', () => {
    expect(read('Name,Length\nFilm,4', { kind: 'wrap' })[0]?.kind).toBe('problems')
    expect(read('Name,Length,Weight\nFilm,4,8', { kind: 'wrap' })[0]?.kind).toBe('new')
  })

  it('reads the whole demo shelf back from the table it was saved as', () => {
    const targets = ['kind', 'name', 'price', ...ALL_FIELDS.keys()]
    const heading = (target: string) => {
      const field = ALL_FIELDS.get(target)
      const unit = field?.shape === 'number' && field.unit !== '1' ? ` (${writtenUnit(field.unit)})` : ''
      return columnWord(target) + unit
    }
    const lines = DEMO_PARTS.map((part) => {
      const entries = entriesFromPart(part)
      return csvRow(targets.map((target) => cellOf(part, entries, target)))
    })
    const rows = read([csvRow(targets.map(heading)), ...lines].join(''))
    expect(rows.map(wordsOf)).toEqual(DEMO_PARTS.map(() => 'new'))
    const parts = rows.flatMap((row) => (row.kind === 'new' ? [row.part] : []))
    // What glue scatters is not in the table: it follows from its weight, as on the form.
    const told = (part: Part) => (part.kind === 'glue' ? { ...part, joints: null } : part)
    expect(parts.map(told)).toEqual(DEMO_PARTS.map(told))
  })
})
